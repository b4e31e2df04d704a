#pragma once
// Faults in English, for tests that compare them with text.

#include "core/outcome.hpp"

#include <string>

namespace gusset::support {

[[nodiscard]] inline std::string english(const Statement& statement) {
    return said(englishPhrases(), statement);
}

// "members[3].b: there is no such joint"
[[nodiscard]] inline std::string english(const Issue& issue) {
    return english(issue.at) + ": " + english(issue.says);
}

} // namespace gusset::support
