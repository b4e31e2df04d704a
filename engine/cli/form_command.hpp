#pragma once
// The commands "form" and "combine": a truss from its outline, combinations from kinds of cases.

#include "cli/commands.hpp"

namespace gusset::cli {

[[nodiscard]] Answer answerForm(const PhraseBook&, const Arguments&, const Reading&);
[[nodiscard]] Answer answerCombine(const PhraseBook&, const Arguments&, const Reading&);

} // namespace gusset::cli
