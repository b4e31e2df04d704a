#pragma once
// Where a model comes from: a path, a link, or standard input with either in it.

#include "exchange/json.hpp"

#include <string>

namespace gusset::cli {

[[nodiscard]] bool isPath(const std::string& input);
// Faults of a path as such stand at it; those of what it holds at their place within.
[[nodiscard]] Outcome<Reading> readInput(const std::string& input);

} // namespace gusset::cli
