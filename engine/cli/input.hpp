#pragma once
// Reading a model from a path, a link, or standard input that holds a model or a link.

#include "exchange/files/model_file.hpp"

#include <string>
#include <string_view>

namespace gusset::cli {

[[nodiscard]] bool isPath(const std::string& input);
// Issues with the path itself name the path; issues with the content name their place in it.
[[nodiscard]] Outcome<Reading> readInput(const std::string& input);
// All of a file, such as a class list, or of standard input for "-"; at most the largest size of a
// model.
[[nodiscard]] Outcome<std::string> readTextOf(const std::string& path);

} // namespace gusset::cli
