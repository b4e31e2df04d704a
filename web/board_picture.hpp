#pragma once
// The board as a standalone drawing, for files and for the list of recent boards.

#include "page.hpp"

#include <string>
#include <string_view>

namespace gusset {

[[nodiscard]] MeasureText measuring(const Ui&); // labels in the page's own typeface
// What the board shows, as SVG. Precondition: the page draws.
[[nodiscard]] std::string pictureOf(const Page&);
// Saved work (app/state/session) or a model, as a small SVG without words; empty if it can't be
// read.
[[nodiscard]] std::string smallPicture(PaletteName, std::string_view text);

} // namespace gusset
