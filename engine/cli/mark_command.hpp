#pragma once
// The command `mark`: answers of students, marked.

#include "cli/commands.hpp"

namespace gusset::cli {

[[nodiscard]] Answer answerMark(const PhraseBook&, const Arguments&, const Reading&);

} // namespace gusset::cli
