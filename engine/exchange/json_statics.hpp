#pragma once
// Influence lines and envelopes as JSON, in the model's units, numbers to 12 significant digits.

#include "statics/envelope.hpp"
#include "statics/influence_report.hpp"

#include <string>
#include <vector>

namespace gusset {

[[nodiscard]] std::string writeInfluence(const Truss&, const InfluenceReport&);
[[nodiscard]] std::string writeEnvelope(const Truss&, const std::vector<MemberEnvelope>&);

} // namespace gusset
