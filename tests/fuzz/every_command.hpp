#pragma once
// Every command in every format that it has, for one model.

#include "model/truss/truss.hpp"
#include "support/random.hpp"

#include <string>
#include <vector>

namespace gusset::support {

using CommandLine = std::vector<std::string>; // its words, without the program's name

// For the whole model, for one of its cases or combinations, and for members, joints, cuts and
// paths chosen at random; occasionally for names that do not exist.
[[nodiscard]] std::vector<CommandLine> everyCommand(const Truss&, Random&);

} // namespace gusset::support
