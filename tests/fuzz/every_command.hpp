#pragma once
// Every command of the command line with every rendering it has, for one model.

#include "model/truss/truss.hpp"
#include "support/random.hpp"

#include <string>
#include <vector>

namespace gusset::support {

using CommandLine = std::vector<std::string>; // its words, without the program's name

// Each command in each form: of the whole model, of a case and a combination of it, and of members,
// joints, cuts and paths that are picked at random. Names that are not there are asked for now and
// then.
[[nodiscard]] std::vector<CommandLine> everyCommand(const Truss&, Random&);

} // namespace gusset::support
