// The keyboard shortcuts, shown if there is a keyboard.
#include "phrases/keys.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"

#include <array>

namespace gusset {
namespace {

struct KeyEntry {
    Phrase<> keys;
    Phrase<> does;
};
constexpr std::array kKeys{
    KeyEntry{phrase::kKeyNext, phrase::kDoesNext},
    KeyEntry{phrase::kKeyBack, phrase::kDoesBack},
    KeyEntry{phrase::kKeyDigits, phrase::kDoesDigits},
    KeyEntry{phrase::kKeyShift, phrase::kDoesShift},
    KeyEntry{phrase::kKeyMenu, phrase::kDoesMenu},
    KeyEntry{phrase::kKeyPick, phrase::kDoesPick},
    KeyEntry{phrase::kKeyArrows, phrase::kDoesArrows},
    KeyEntry{phrase::kKeyDelete, phrase::kDoesDelete},
    KeyEntry{phrase::kKeyEscape, phrase::kDoesEscape},
    KeyEntry{phrase::kKeyUndo, phrase::kDoesUndo},
    KeyEntry{phrase::kKeySave, phrase::kDoesSave},
    KeyEntry{phrase::kKeyAll, phrase::kDoesAll},
    KeyEntry{phrase::kKeyFit, phrase::kDoesFit},
    KeyEntry{phrase::kKeyCells, phrase::kDoesCells},
    KeyEntry{phrase::kKeyPanels, phrase::kDoesPanels},
    KeyEntry{phrase::kKeyThere, phrase::kDoesThere},
    KeyEntry{phrase::kKeyEscapeThere, phrase::kDoesEscapeThere},
};

} // namespace

void keyOverview(PanelContext& context) {
    const Ui& ui = context.ui;
    if (ui.coarse) {
        return;
    }
    sectionHeading(ui, words(context, phrase::kKeys));
    const std::array columns{Column{{words(context, phrase::kColumnKey)}, 150, 0},
                             Column{{words(context, phrase::kColumnOnBoard)}, 100, 1}};
    Table table(ui, "keys", columns);
    table.header();
    for (int i = 0; i < static_cast<int>(kKeys.size()); ++i) {
        table.row({.id = i});
        const KeyEntry& entry = kKeys[static_cast<std::size_t>(i)];
        table.text(0, words(context, entry.keys), {ui.palette->ink, ui.fonts.small});
        table.text(1, words(context, entry.does), {ui.palette->ink, ui.fonts.small});
    }
}

} // namespace gusset
