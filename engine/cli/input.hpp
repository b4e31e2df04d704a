#pragma once
// Reading a model from a path, a link, or standard input that holds a model or a link.

#include "exchange/files/model_file.hpp"

#include <string>
#include <string_view>

namespace gusset::cli {

[[nodiscard]] bool isPath(const std::string& input);
// Issues with the path itself name the path; issues with the content name their place in it.
[[nodiscard]] Outcome<Reading> readInput(const std::string& input);
// `text`: the content of a file, a model or a link.
[[nodiscard]] Outcome<Reading> readText(std::string_view text);
// A file that is no model, such as a class list; at most the largest size of a model is read.
[[nodiscard]] Outcome<std::string> readPlain(const std::string& path);

} // namespace gusset::cli
