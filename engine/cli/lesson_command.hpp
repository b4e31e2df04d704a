#pragma once
// The command `lesson`: a derivation as it is shown to a room, as slides, pictures, captions or
// words.

#include "cli/commands.hpp"

namespace gusset::cli {

[[nodiscard]] Answer answerLesson(const PhraseBook&, const Arguments&, const Reading&);

} // namespace gusset::cli
