// What the keyboard does, for those who have one.
#include "panels/frame/parts.hpp"
#include "panels/frame/tabs.hpp"

#include <array>

namespace gusset {
namespace {

struct KeyEntry {
    const char* keys;
    const char* does;
};
constexpr std::array kKeys{
    KeyEntry{"Space, Page Down", "next step of the working"},
    KeyEntry{"Page Up", "step back"},
    KeyEntry{"Digits while drawing", "length, length @ angle, dx, dy"},
    KeyEntry{"Shift and a drag", "pick in a box or a loop"},
    KeyEntry{"Right button, Menu key", "what can be done there"},
    KeyEntry{"Arrows", "move what is picked, or leaf"},
    KeyEntry{"Delete", "remove what is picked"},
    KeyEntry{"Escape", "let go"},
    KeyEntry{"Ctrl Z, Ctrl Y", "undo, redo"},
    KeyEntry{"Ctrl A", "pick everything"},
    KeyEntry{"Home, Ctrl 0", "fit the drawing"},
    KeyEntry{"Tab, Enter in a table", "next cell, cell below"},
    KeyEntry{"F6", "into the panels, and on"},
    KeyEntry{"Tab, arrows, Enter there", "go about, press"},
    KeyEntry{"Escape there", "back to the board"},
};

} // namespace

void keyOverview(PanelContext& context) {
    const Ui& ui = context.ui;
    if (ui.coarse) {
        return;
    }
    sectionHeading(ui, "Keys");
    constexpr std::array kColumns{Column{"key", 150, 0}, Column{"on the board", 100, 1}};
    Table table(ui, "keys", kColumns);
    table.header();
    for (int i = 0; i < static_cast<int>(kKeys.size()); ++i) {
        table.row({.id = i});
        const KeyEntry& entry = kKeys[static_cast<std::size_t>(i)];
        table.text(0, entry.keys, {ui.palette->ink, ui.fonts.small});
        table.text(1, entry.does, {ui.palette->ink, ui.fonts.small});
    }
}

} // namespace gusset
