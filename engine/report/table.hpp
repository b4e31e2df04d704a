#pragma once
// A table of text, and its renderings.

#include <string>
#include <vector>

namespace gusset {

struct TextTable {
    std::string caption;
    std::vector<std::string> head;
    std::vector<std::vector<std::string>> rows; // the first cell names the row
    std::vector<bool> numeric;                  // by column: set to the right
};

[[nodiscard]] std::string tableText(const TextTable&); // columns lined up by spaces
[[nodiscard]] std::string
tableHtml(const TextTable&); // caption and scoped headings, everything escaped

} // namespace gusset
