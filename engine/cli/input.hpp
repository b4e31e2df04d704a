#pragma once
// Where a model comes from: a path, a link, or standard input with either in it.

#include "exchange/files/model_file.hpp"

#include <string>
#include <string_view>

namespace gusset::cli {

[[nodiscard]] bool isPath(const std::string& input);
// Faults of a path as such stand at it; those of what it holds at their place within.
[[nodiscard]] Outcome<Reading> readInput(const std::string& input);
// What stands in a file: a model, or a link.
[[nodiscard]] Outcome<Reading> readText(std::string_view text);

} // namespace gusset::cli
