#pragma once
// Influence lines and envelopes as JSON, in the model's units, numbers to 12 significant digits.

#include "exchange/results/json_results.hpp"
#include "statics/moving/envelope.hpp"
#include "statics/moving/influence_report.hpp"

#include <string>
#include <vector>

namespace gusset {

// Numbers have fewer digits where rounding leaves fewer. Notes are left out if there are none, as
// in results; the sentences on mechanisms and exact forces are not used here.
[[nodiscard]] std::string writeInfluence(const PhraseBook&, const Truss&, const InfluenceReport&,
                                         const ResultSentences& = {}, const Issues& notes = {});
[[nodiscard]] std::string writeEnvelope(const PhraseBook&, const Truss&, const Envelope&,
                                        const ResultSentences& = {}, const Issues& notes = {});

} // namespace gusset
