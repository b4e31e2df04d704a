#pragma once
// The sheet: a report for paper.

#include "cli/commands.hpp"

namespace gusset::cli {

[[nodiscard]] Answer answerReport(const PhraseBook&, const Arguments&, const Reading&);

} // namespace gusset::cli
