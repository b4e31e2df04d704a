#pragma once
// Buttons, words to choose from, lists and paragraphs in our own dress: ruled paper, ink, no boxes
// but around what is pressed. Labels are "text##id" as in Dear ImGui. Everything to be pressed is
// at least kTouchTarget in its smaller side where fingers are used, is pressed on the up event, and
// shows being chosen by more than colour.

#include "ui/icons.hpp"
#include "ui/theme.hpp"

#include <span>
#include <string_view>

namespace gusset {

struct ButtonLook {
    Icon icon = Icon::None;
    bool showText = true; // with false the text is still its name and its tip
    bool selected = false;
    bool enabled = true;
    bool primary = false; // filled: the one thing to do here
    bool full = false;    // as wide as the column
};
[[nodiscard]] bool button(const Ui&, const char* label, const ButtonLook& look = {});
[[nodiscard]] float targetHeight(const Ui&); // of a button or a tick, device px
[[nodiscard]] float buttonWidth(const Ui&, const char* label, const ButtonLook& look = {});
// A large sign with its word under it; chosen: on a patch, framed, and underlined.
[[nodiscard]] bool toolButton(const Ui&, const char* label, Icon icon, bool selected, ImVec2 size);

// A word in small type on a patch as large as it is told, for rows of such.
[[nodiscard]] bool cellButton(const Ui&, const char* label, ImVec2 size);
// A line of a menu; `lit` when the keyboard is on it.
[[nodiscard]] bool menuRow(const Ui&, const char* label, ImVec2 size, bool lit);

// A box that is ticked or not, and its words. True when pressed.
[[nodiscard]] bool toggle(const Ui&, const char* label, bool on);
// Words in rows, the chosen one bold and underlined; gives back the choice. Spread over the width
// of the column when `spread`.
[[nodiscard]] int wordChoice(const Ui&, const char* id, std::span<const char* const> words,
                             int chosen, bool spread = false);
// A line of a list that leads somewhere.
[[nodiscard]] bool listRow(const Ui&, const char* label, std::string_view aside = {});

// The same with a sentence under its words.
[[nodiscard]] bool listEntry(const Ui&, const char* label, const char* under);

void rule(const Ui&);
void gap(const Ui&, double css);
void sectionHeading(const Ui&, std::string_view text);
void paragraph(const Ui&, std::string_view text, Ink ink = Ink::Plain);
void besideButtons(const Ui&, std::string_view text); // small, in the middle of their height
void smallPrint(const Ui&, std::string_view text);
// How far a long calculation is: in words, and by a bar under them. `share`: done, of 1.
void progressLine(const Ui&, std::string_view says, double share);

// A window of the page at a place in CSS px, without any of ImGui's own frames. Pair with endSheet.
struct SheetLook {
    bool filled = true; // on notebook paper
    ImVec2 padding{20, 16};
};
void beginSheet(const Ui&, const char* id, const Rect& place, const SheetLook& look = {});
void endSheet();
// The rest of the window, scrolled by wheel and by a dragging finger. Pair with endScroll.
void beginScroll(const Ui&, const char* id);
void endScroll();
// A finger that drags across the last item, within a scroll, goes on reading it and doesn't scroll.
void keepFinger();
// Within beginScroll: 1 when a finger has just been drawn across it to the left, which is one leaf
// on, −1 to the right, 0 otherwise.
[[nodiscard]] int leafedByFinger(const Ui&);

// What the pointer is on and what the keyboard is on, for items that draw themselves.
void drawFocus(const Ui&);

[[nodiscard]] std::string_view visiblePart(const char* label); // before ##

} // namespace gusset
