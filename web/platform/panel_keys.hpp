#pragma once
// The keyboard in the panels: F6 goes from the board into them and on from one to the next, Tab and
// the arrows from item to item, Escape back to the board. Dear ImGui moves the focus; drawFocus
// (ui/widgets) shows it.

#include "platform/platform.hpp"

#include <cstddef>
#include <optional>

namespace gusset {

class PanelKeys {
public:
    [[nodiscard]] bool inPanel() const {
        return panel_.has_value();
    } // keys go there, not to the board
    void take(PanelKey);
    // Closes whichever menu is open, however it was opened. False: there was none.
    static bool closeMenu();
    void pointerCame() { panel_.reset(); } // a pointer needs no focus
    // Call just after ImGui has begun a frame: it discards a focus request made before that.
    void beginFrame();

private:
    void toNextPanel();
    void leave(); // gives the keys back to the board

    bool goesOn_ = false;
    std::optional<std::size_t> panel_{}; // index of the panel in order; none: the board
};

} // namespace gusset
