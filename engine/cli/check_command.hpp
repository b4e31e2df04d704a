#pragma once
// Checks of members on the command line.

#include "cli/commands.hpp"

namespace gusset::cli {

// Whether the options ask for checks of members, and not of the model.
[[nodiscard]] bool asksForMembers(const Arguments&);
// Every member, or the working of one; under the loads asked for, or the worst over all of them.
[[nodiscard]] Answer answerMembers(const PhraseBook&, const Arguments&, const Reading&);

} // namespace gusset::cli
