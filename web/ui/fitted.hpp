#pragma once
// Words and numbers drawn in a box that may be too narrow for them (ui/fit decides how).

#include "ui/theme.hpp"

#include <string_view>

namespace gusset {

enum class Align { Left, Right };

struct FittedLook {
    ImVec2 low; // the room for the text itself, device px; it stands in the middle of the height
    ImVec2 high;
    Align align = Align::Left;
    bool isNumber = false; // is never cut; words end in dots
    const ImFont* font = nullptr;
    ImU32 ink = 0;
};
// Gives back its width, device px.
float putFitted(ImDrawList&, const Ui&, std::string_view, const FittedLook&);
// Whether it has room in a face that can be read well.
[[nodiscard]] bool fitsWhole(const Ui&, const ImFont&, std::string_view, float room);

} // namespace gusset
