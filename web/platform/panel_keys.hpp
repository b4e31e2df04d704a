#pragma once
// The keyboard in the panels: F6 goes from the board into them and on from one to the next, Tab and
// the arrows from item to item, Escape back to the board. Dear ImGui moves the focus; drawFocus
// (ui/widgets) shows it.

#include "platform/platform.hpp"

namespace gusset {

class PanelKeys {
public:
    [[nodiscard]] bool inPanel() const { return panel_ >= 0; } // keys go there, not to the board
    void take(PanelKey);
    // Closes whichever menu is open, however it was opened. False: there was none.
    static bool closeMenu();
    void pointerCame() { panel_ = -1; } // a pointer needs no focus
    // Call just after ImGui has begun a frame: it discards a focus request made before that.
    void beginFrame();

private:
    void toNextPanel();
    void leave(); // gives the keys back to the board

    bool goesOn_ = false;
    int panel_ = -1; // index of the panel in order; -1: the board
};

} // namespace gusset
