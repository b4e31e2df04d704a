#pragma once
// The sheet as the page's scripts ask for it (site/sheet.js).

#include "app/state/state.hpp"
#include "report/sheet/sheet.hpp"

#include <string>
#include <string_view>

namespace gusset {

// The board's truss as a document for paper. `wish` has a line for each choice, named as on the
// command line: "parts=drawing,forces", "paper=A4", "across=", "project=…", "author=…", "date=…",
// "case=…" or "combination=…"; with neither, every load. `address`: of this page, without fragment;
// empty for a sheet without a link.
[[nodiscard]] std::string sheetOf(const AppState&, std::string_view wish, std::string_view address,
                                  const SheetStyles&);

[[nodiscard]] std::string sheetTablesOf(const AppState&, std::string_view wish); // as CSV

// The loads that a sheet may be under, a line each: the choice as in a wish (a case, a combination,
// or nothing for every load), a tab, and its name. First comes the board's choice, or, if the board
// has every load, what the command line takes.
[[nodiscard]] std::string sheetLoadsOf(const AppState&);

} // namespace gusset
