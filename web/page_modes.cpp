#include "page_modes.hpp"

#include "app/state/update.hpp"

namespace gusset {

void keepReading(Page& page) {
    const AppState& state = page.state;
    const bool reads = isAtWorking(state) && readsApart(page.viewport);
    if (reads != state.notebook.reading) {
        update(page.state, {Read{reads}});
    }
}

} // namespace gusset
