#pragma once
// What several panels need: fields that are typed into, and the pointer's and the selection's way
// between table rows and the board.

#include "app/fields/cells.hpp"
#include "panels/frame/panels.hpp"
#include "ui/table.hpp"
#include "ui/widgets.hpp"

#include <algorithm>
#include <array>
#include <string>

namespace gusset {

struct FieldLook {
    FieldId field;
    std::string name; // for those who hear it
    std::string text; // what typing begins with
    std::string look; // what stands there meanwhile
    std::string hint; // in muted ink when nothing does
    Align align = Align::Left;
    bool numeric = true;
    const ImFont* font = nullptr; // the text face
    bool framed = false;          // drawn as a box even at rest
};
// In a box of the screen, device px. True in the frame in which it was pressed.
bool field(PanelContext&, const Table::Box&, const FieldLook&);
// At the cursor, as wide as the column.
bool fieldLine(PanelContext&, const FieldLook&);
// A cell of the model's tables.
bool cellField(PanelContext&, const Table&, int column, const Cell&);

// A paragraph each; those that must be known beside figures, or that tell why there are none, in
// the same look on every page.
void sentences(const PanelContext&, const std::vector<std::string>& lines,
               const std::vector<std::string>& warnings);
// What the truss is and why it can't be solved, where that stands instead of figures.
void verdictInstead(const PanelContext&);

void hoverRow(PanelContext&, const ThingId&); // lit on the board too
// A row that stands for a thing of the board: each lights the other, pressing picks it.
void pressableRow(PanelContext&, Table&, const ThingId&);

// The sign by which the board draws a force, from its left end: tension one line, compression two,
// zero a thin dashed one.
void drawForceSign(ImDrawList&, const Ui&, Ink, ImVec2 at, float length);

// Removes the row of a table, in its last cell. `label` is its name, with ## and what tells it from
// others.
[[nodiscard]] bool trashButton(const Ui&, const Table::Box&, const std::string& label);

// "4.00 m" with the thin space of print; the number alone when the model is in plain numbers.
[[nodiscard]] std::string quantity(const std::string& number, const char* unit);
// How far it is with what the page is to show.
template <class Shown>
void progressOf(const PanelContext& context, const Making<Shown>& making) {
    progressLine(context.ui, saysOf(*context.state.book, making),
                 making.made ? making.job.share() : 0);
}
// What is read on the page, in its language; with an id of Dear ImGui behind it, as "##fit".
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
[[nodiscard]] std::string headOf(const PanelContext&, Phrase<>, const char* unit); // "force, kN"
// "heading, kN", or the heading alone when the model is in plain numbers.
[[nodiscard]] std::string withUnit(const char* heading, const char* unit);

} // namespace gusset
