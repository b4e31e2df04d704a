#pragma once
// The command `working`: a derivation as text, as a document for paper, or as a drawing.

#include "cli/commands.hpp"

namespace gusset::cli {

[[nodiscard]] Answer answerWorking(const PhraseBook&, const Arguments&, const Reading&);

} // namespace gusset::cli
