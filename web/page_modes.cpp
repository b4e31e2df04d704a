#include "page_modes.hpp"

#include "app/state/update.hpp"

#include <algorithm>

namespace gusset {

void keepReading(Page& page) {
    const AppState& state = page.state;
    const bool reads = isAtWorking(state) && readsApart(page.viewport) && !state.view.presenting;
    if (reads != state.notebook.reading) {
        update(page.state, {Read{reads}});
    }
}

void keepScrolls(Page& page, bool presenting) {
    if (!page.renderer || presenting == (page.pageLook && page.pageLook->presenting)) {
        return;
    }
    if (presenting) {
        page.panelScrolls.keep();
    } else {
        page.panelScrolls.bringBack();
        page.framesWanted = std::max(page.framesWanted, 2);
    }
}

} // namespace gusset
