#pragma once
// Influence lines and envelopes as JSON, in the model's units, numbers to 12 significant digits.

#include "statics/envelope.hpp"
#include "statics/exact.hpp"
#include "statics/moving.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// What the moving loads of the model make of one line.
struct MovingResult {
    std::string id;
    TrainExtremes train;
    std::optional<UniformExtremes> uniform;
};
struct InfluenceReport {
    std::string of; // as asked for: "member:B-C"
    EffectKind kind = EffectKind::MemberForce;
    std::vector<JointId> path;
    InfluenceLine line;
    std::vector<Surd> exact; // of the ordinates, or empty
    std::vector<MovingResult> moving;
    std::vector<std::string> assumed;
};

// How many of the model's units of the effect, per unit of force, one SI unit of an ordinate is.
[[nodiscard]] double ordinateScale(const Truss&, EffectKind);

[[nodiscard]] std::string writeInfluence(const Truss&, const InfluenceReport&);
[[nodiscard]] std::string writeEnvelope(const Truss&, const std::vector<MemberEnvelope>&);

} // namespace gusset
