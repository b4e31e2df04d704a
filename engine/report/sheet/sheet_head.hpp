#pragma once
// What a sheet begins with, and its paper.

#include "report/sheet/sheet_choices.hpp"

#include <string>

namespace gusset {

// The title, for whom and by whom it is, and the truss as a link and a QR code; its <header> is
// left open.
[[nodiscard]] std::string sheetHead(const Writer&, const SheetChoices&);
// @page: the size, and what stands at the foot of every page.
[[nodiscard]] std::string pageRule(const Writer&, const SheetChoices&);

} // namespace gusset
