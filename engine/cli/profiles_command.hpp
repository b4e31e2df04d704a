#pragma once
// The catalogue of profiles, or a list of one's own, as a table.

#include "cli/commands.hpp"

namespace gusset::cli {

// Its input is a kind of profiles or the name of one; none: what kinds there are.
[[nodiscard]] Answer answerProfiles(const PhraseBook&, const Arguments&);

} // namespace gusset::cli
