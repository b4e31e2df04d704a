#pragma once
// A folder of variants: a file for each, a table of their answers and one of their links.

#include "cli/commands.hpp"

namespace gusset::cli {

[[nodiscard]] Answer answerVariants(const Arguments&, const Reading&);

} // namespace gusset::cli
