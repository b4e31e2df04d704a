#pragma once
// The commands of influence lines and envelopes.

#include "cli/commands.hpp"
#include "report/text/writer.hpp"
#include "statics/solve/exact.hpp"

namespace gusset::cli {

[[nodiscard]] Answer answerInfluence(const PhraseBook&, const Arguments&, const Reading&);
[[nodiscard]] Answer answerEnvelope(const PhraseBook&, const Arguments&, const Reading&);

// Exact forces as lines of text, or why there are none; empty if none were asked for.
[[nodiscard]] std::string exactText(const Writer&, const ExactSolution&);

} // namespace gusset::cli
