#pragma once
// The messages of the JSON parser, which it words in English, as statements.

#include "core/statement.hpp"

#include <string_view>

namespace gusset {

// In English always the same text; what the parser says in some other way stays in its words.
[[nodiscard]] Statement saidByParser(std::string_view message);

} // namespace gusset
