#pragma once
// A formula parsed from a line of plain text, as a reader does.

#include "report/text/rich_text.hpp"

#include <string>
#include <vector>

namespace gusset::support {

struct PrintedWords {
    std::vector<std::string> names; // of forces, as printed: "F_AB", "A_x", "n1–n2"
    std::string unit;               // of forces; may be empty
};
[[nodiscard]] Formula formulaOfText(const std::string& line, const PrintedWords&);

} // namespace gusset::support
