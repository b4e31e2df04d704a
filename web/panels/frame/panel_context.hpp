#pragma once
// What several panels need: fields that can be edited, and the two-way highlighting between table
// rows and the board.

#include "app/fields/cells.hpp"
#include "panels/frame/panels.hpp"
#include "ui/icons.hpp"
#include "ui/table.hpp"
#include "ui/widgets.hpp"

#include <algorithm>
#include <array>
#include <string>

namespace gusset {

struct FieldLook {
    FieldId field;
    std::string name; // for screen readers
    std::string text; // the text when typing begins
    std::string look; // the text at rest
    std::string hint; // shown muted when it is empty
    Align align = Align::Left;
    bool numeric = true;
    const ImFont* font = nullptr; // null: the text face
    bool framed = false;          // drawn as a box even at rest
    bool wraps = false;           // words too long for one line
    bool marked = false;          // by a pencil after the words, where nobody expects a field
    int decimals = 0;             // Column::decimals
};
// In a box of the screen, device px. True in the frame in which it was pressed.
bool field(PanelContext&, const Table::Box&, const FieldLook&);
// At the cursor, as wide as the column.
bool fieldLine(PanelContext&, const FieldLook&);
// A cell of the model's tables.
bool cellField(PanelContext&, const Table&, int column, const Cell&);

// One paragraph per line; warnings, and reasons why there are no figures, look the same on every
// page.
void sentences(const PanelContext&, const std::vector<std::string>& lines,
               const std::vector<std::string>& warnings);
// What the truss is and why it can't be solved, shown in place of figures.
void verdictInstead(const PanelContext&);

void hoverRow(PanelContext&, const ThingId&); // highlighted on the board too
// A row for a thing on the board: each highlights the other, and pressing the row selects it.
void pressableRow(PanelContext&, Table&, const ThingId&);

// The line by which the board shows a force, from its left end: one line for tension, two for
// compression, a thin dashed one for zero.
void drawForceSign(ImDrawList&, const Ui&, Ink, ImVec2 at, float length);

// Removes the row of a table, in its last cell. `label` is its name, with ## and a unique suffix.
[[nodiscard]] bool cellButton(const Ui&, const Table::Box&, const std::string& label, Icon);
[[nodiscard]] inline bool trashButton(const Ui& ui, const Table::Box& box,
                                      const std::string& label) {
    return cellButton(ui, box, label, Icon::Trash);
}

// How far the page's content has got.
template <class Shown>
void progressOf(const PanelContext& context, const Making<Shown>& making) {
    progressLine(context.ui, saysOf(*context.state.book, making),
                 making.made ? making.job.share() : 0);
}
// A phrase in the page's language; with a Dear ImGui id after it, as in "##fit".
[[nodiscard]] const char* words(const PanelContext&, Phrase<>);
[[nodiscard]] std::string wordsAs(const PanelContext&, Phrase<>, const char* id);
template <std::size_t Count>
[[nodiscard]] std::array<const char*, Count> words(const PanelContext& context,
                                                   const std::array<Phrase<>, Count>& phrases) {
    std::array<const char*, Count> said{};
    std::transform(phrases.begin(), phrases.end(), said.begin(),
                   [&](Phrase<> phrase) { return words(context, phrase); });
    return said;
}
// "force, kN", or only the name if the model has no units.
struct UnitHeading {
    std::string words;
    const char* name = ""; // without the unit

    operator Heading() const { return {words, name}; }
};
[[nodiscard]] UnitHeading headOf(const PanelContext&, Phrase<>, const std::string& unit);
void countedHeading(const PanelContext&, Phrase<>, int count); // of a section of the page

} // namespace gusset
