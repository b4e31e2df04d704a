#pragma once
// A model with a question: as a file, or as the link for students.

#include "cli/commands.hpp"

namespace gusset::cli {

[[nodiscard]] Answer answerExercise(const PhraseBook&, const Arguments&, const Reading&);

} // namespace gusset::cli
