#pragma once
// A table of text, and its renderings.

#include "report/text/phrases.hpp"

#include <string>
#include <vector>

namespace gusset {

struct TextTable {
    std::string caption;
    std::vector<RichLine> head;
    std::vector<std::vector<Words>> rows; // the first cell names the row
    std::vector<bool> numeric;            // by column: right-aligned
};

// The heading of a column whose numbers have a unit; the name alone if there is none.
[[nodiscard]] RichLine headed(const PhraseBook&, RichLine name, const std::string& unit);

[[nodiscard]] std::string tableText(const TextTable&); // columns aligned with spaces
[[nodiscard]] std::string
tableHtml(const TextTable&); // caption and scoped headings, everything escaped

} // namespace gusset
