#pragma once
// Buttons, word choices, lists and paragraphs in this project's own style: ruled paper, ink, boxes
// only around what is pressed. Labels are "text##id" as in Dear ImGui. Everything that can be
// pressed is at least kTouchTarget on its smaller side where fingers are used, acts on the up
// event, and shows that it is chosen by more than colour.

#include "ui/icons.hpp"
#include "ui/theme.hpp"

#include <span>
#include <string_view>

namespace gusset {

struct ButtonLook {
    Icon icon = Icon::None;
    bool showText = true; // if false the text is still its name and its tooltip
    bool selected = false;
    bool enabled = true;
    bool primary = false; // filled: the main action here
    bool full = false;    // as wide as the column
    float side = 0;       // of a square one, device px; 0: the usual size
};
[[nodiscard]] bool button(const Ui&, const char* label, const ButtonLook& look = {});
[[nodiscard]] float targetHeight(const Ui&); // of a button or a tick box, device px
[[nodiscard]] float buttonWidth(const Ui&, const char* label, const ButtonLook& look = {});
// A large icon with its word below; when chosen: on a patch, framed and underlined.
[[nodiscard]] bool toolButton(const Ui&, const char* label, Icon icon, bool selected, ImVec2 size);

// A word in small type on a patch of the given size, for rows of such buttons.
[[nodiscard]] bool cellButton(const Ui&, const char* label, ImVec2 size);
// A line of a menu; `lit` if it has the keyboard focus.
[[nodiscard]] bool menuRow(const Ui&, const char* label, ImVec2 size, bool lit);

// A tick box and its label. True when pressed.
[[nodiscard]] bool toggle(const Ui&, const char* label, bool on);
// Words in rows, the chosen one bold and underlined; returns the choice. With `spread`, spaced over
// the width of the column.
[[nodiscard]] int wordChoice(const Ui&, const char* id, std::span<const char* const> words,
                             int chosen, bool spread = false);
// A line of a list that opens something.
[[nodiscard]] bool listRow(const Ui&, const char* label, std::string_view aside = {});

// The same with a sentence below it.
[[nodiscard]] bool listEntry(const Ui&, const char* label, const char* under);

void rule(const Ui&);
void gap(const Ui&, double css);
void sectionHeading(const Ui&, std::string_view text);
void paragraph(const Ui&, std::string_view text, Ink ink = Ink::Plain);
void besideButtons(const Ui&, std::string_view text); // small, vertically centred beside them
void smallPrint(const Ui&, std::string_view text);
// The progress of a long calculation: in words, with a bar below. `share`: fraction done.
void progressLine(const Ui&, std::string_view says, double share);

// A window of the page at a place in CSS px, without any of ImGui's frames. Pair with endSheet.
struct SheetLook {
    bool filled = true; // on notebook paper
    ImVec2 padding{20, 16};
};
void beginSheet(const Ui&, const char* id, const Rect& place, const SheetLook& look = {});
void endSheet();
// The rest of the window, scrolled by the wheel or by a dragging finger. Pair with endScroll.
void beginScroll(const Ui&, const char* id);
void endScroll();
// A finger dragging across the last item, inside a scroll, goes on reading it and doesn't scroll.
void keepFinger();
// Inside beginScroll: 1 if a finger has just swiped left, which is one page forward, −1 if it has
// swiped right, else 0.
[[nodiscard]] int leafedByFinger(const Ui&);

// For items that draw themselves: the mark of the keyboard's focus around the last item, which is
// noted for screen readers under this name if it has the focus.
void drawFocus(const Ui&, std::string_view name, ItemState state = ItemState::Plain);
[[nodiscard]] bool showsFocus(); // the last item has it

[[nodiscard]] std::string_view visiblePart(const char* label); // before ##

} // namespace gusset
