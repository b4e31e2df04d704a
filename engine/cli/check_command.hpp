#pragma once
// Checks of members on the command line.

#include "cli/commands.hpp"

namespace gusset::cli {

// Whether the options ask for checks of members rather than of the model.
[[nodiscard]] bool asksForMembers(const Arguments&);
// Checks every member, or shows the working for one, under the loads asked for or the worst of all.
[[nodiscard]] Answer answerMembers(const PhraseBook&, const Arguments&, const Reading&);

} // namespace gusset::cli
