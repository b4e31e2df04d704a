#pragma once
// Influence lines and envelopes as JSON, in the model's units, numbers to 12 significant digits.

#include "statics/envelope.hpp"
#include "statics/influence_report.hpp"

#include <string>
#include <vector>

namespace gusset {

// `assumed`: sentences for people, in the language of the caller's choice. Notes, as of results,
// are left out where there are none.
[[nodiscard]] std::string writeInfluence(const Truss&, const InfluenceReport&,
                                         const std::vector<std::string>& assumed,
                                         const Issues& notes = {});
[[nodiscard]] std::string writeEnvelope(const Truss&, const std::vector<MemberEnvelope>&,
                                        const Issues& notes = {});

} // namespace gusset
