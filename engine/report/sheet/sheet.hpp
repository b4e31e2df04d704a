#pragma once
// The sheet: drawings, tables, checks and the working of a truss as a document for paper, the same
// from the page and from the command line.

#include "report/sheet/sheet_choices.hpp"

#include <string>

namespace gusset {

// What is not in the program of the page, which has these files beside it.
struct SheetStyles {
    std::string sheet{};    // sheet.css
    std::string typeface{}; // of the working's formulas, if there is one
};
[[nodiscard]] SheetStyles embeddedStyles(const SheetChoices&);

// A whole page of HTML. Says why where there is nothing to draw or no forces.
[[nodiscard]] std::string sheetHtml(const Writer&, const SheetChoices&, const SheetStyles&);
// Its tables for a spreadsheet (core/csv), each under its caption, which says under which loads;
// numbers as they are printed.
[[nodiscard]] std::string sheetCsv(const Writer&, const SheetChoices&);

} // namespace gusset
