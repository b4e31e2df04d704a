#pragma once
// The command "size": the lightest profiles that pass, for groups of members.

#include "cli/commands.hpp"

namespace gusset::cli {

[[nodiscard]] Answer answerSize(const PhraseBook&, const Arguments&, const Reading&);

} // namespace gusset::cli
