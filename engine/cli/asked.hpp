#pragma once
// Where exercises are answered.

#include "cli/arguments.hpp"

#include <string>

namespace gusset::cli {

// The page of exercises at the address given by --address; empty if there is none.
[[nodiscard]] std::string exercisePage(const Arguments&);
// A link to it; only a fragment if there is none.
[[nodiscard]] std::string exerciseAddress(const Arguments&, const std::string& link);

} // namespace gusset::cli
