#pragma once
// Where a model comes from: a path, a link, or standard input with either in it.

#include "exchange/json.hpp"

#include <string>

namespace gusset::cli {

[[nodiscard]] Outcome<Reading> readInput(const std::string& input);

} // namespace gusset::cli
