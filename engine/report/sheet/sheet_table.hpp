#pragma once
// Tables on a sheet: numbers aligned at the decimal sign, and a caption that is repeated with the
// head on every page that a table continues on. Private to report/sheet.

#include "report/results/table.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

// Nothing for a table without rows. Narrow tables stand beside each other; a long one goes on
// beside itself.
inline constexpr std::size_t kNarrowColumns = 6; // at most
[[nodiscard]] std::string sheetTableHtml(const Writer&, const TextTable&,
                                         std::size_t narrow = kNarrowColumns);
[[nodiscard]] std::string sheetTablesHtml(const Writer&, const std::vector<TextTable>&,
                                          std::size_t narrow = kNarrowColumns);
[[nodiscard]] std::string sheetHeading(const PhraseBook&, Phrase<>);
// A number of the model in up to six significant figures; one that follows from others in four.
[[nodiscard]] std::string sheetNumber(const Truss&, double);
[[nodiscard]] std::string derivedNumber(const Truss&, double);

} // namespace gusset
