#pragma once
// Words and numbers drawn in a box that may be too narrow for them (ui/fit decides how).

#include "ui/theme.hpp"

#include <string_view>

namespace gusset {

enum class Align { Left, Right };

struct FittedLook {
    ImVec2 low; // the room for the text, device px; it is centred vertically
    ImVec2 high;
    Align align = Align::Left;
    bool isNumber = false; // never truncated; words end in "…"
    bool wraps = false;    // into several small lines, if there is room for them, before that
    int decimals = 0;      // if it has fewer, it keeps the room of the others, if there is enough
    const ImFont* font = nullptr;
    ImU32 ink = 0;
};
// Returns its width, device px.
float putFitted(ImDrawList&, const Ui&, std::string_view, const FittedLook&);
// Whether it fits in a legible face.
[[nodiscard]] bool fitsWhole(const Ui&, const ImFont&, std::string_view, float room);

} // namespace gusset
