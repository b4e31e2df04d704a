#pragma once
// Marked sheets in sentences and tables.

#include "classroom/marking/marking.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

// How marks are given, a sentence each.
[[nodiscard]] std::vector<std::string> markingRule(const PhraseBook&);
[[nodiscard]] std::string slipName(const PhraseBook&, std::optional<SlipKind>);
// What is to be said of a sheet, a sentence for each answer that is not simply right. Only answers
// that are asked for.
[[nodiscard]] std::vector<std::string> feedback(const Writer&, const Marking&, const Answers&);

struct MarkedSheet {
    std::string code;
    Answers answers;
    Marking marking;
};
// For people, and for spreadsheets: a row for each sheet, then how often each slip was made, then
// the rule of marks. Text that a spreadsheet would run as a formula is escaped.
// Code, marks, marks of all, slips and feedback of one sheet: what classCsv has in a row, without
// the end of the line.
[[nodiscard]] std::string sheetCells(const Writer&, const MarkedSheet&);
[[nodiscard]] std::string classText(const Writer&, const std::vector<MarkedSheet>&);
[[nodiscard]] std::string classCsv(const Writer&, const std::vector<MarkedSheet>&);

} // namespace gusset
