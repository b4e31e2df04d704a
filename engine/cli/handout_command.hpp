#pragma once
// Models as sheets for students, or as the teacher's key to them.

#include "cli/commands.hpp"

namespace gusset::cli {

[[nodiscard]] Answer answerHandout(const PhraseBook&, const Arguments&,
                                   const std::vector<NamedReading>&);

} // namespace gusset::cli
