#pragma once
// Models as questions of a learning platform, all in one file.

#include "cli/commands.hpp"

namespace gusset::cli {

[[nodiscard]] Answer answerExport(const PhraseBook&, const Arguments&,
                                  const std::vector<NamedReading>&);

} // namespace gusset::cli
