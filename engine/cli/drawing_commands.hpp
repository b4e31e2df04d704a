#pragma once
// Drawings in and out.

#include "cli/commands.hpp"

#include <string>

namespace gusset::cli {

// A drawing or a table becomes a model; what was decided and what is doubtful are its faults.
[[nodiscard]] Answer answerTrace(const Arguments&, const std::string& text);
// The centre lines of a model.
[[nodiscard]] Answer answerLines(const PhraseBook&, const Arguments&, const Reading&);

} // namespace gusset::cli
