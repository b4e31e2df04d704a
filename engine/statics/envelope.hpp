#pragma once
// The greatest tension and compression of each member over load cases and combinations, and which
// gives it. One factorisation serves them all.

#include "core/outcome.hpp"
#include "statics/solution.hpp"

namespace gusset {

struct ForceExtreme {
    double force = 0;  // N; 0 when no choice pulls (or presses) the member
    LoadChoice choice; // that gives it
};
struct MemberEnvelope {
    ForceExtreme tension;
    ForceExtreme compression; // force ≤ 0
};

[[nodiscard]] std::vector<LoadChoice> combinationChoices(const Truss&); // each of them alone
[[nodiscard]] std::vector<LoadChoice> caseChoices(const Truss&);        // likewise
// The choices that an envelope runs over: every combination, or every case when the model has none.
[[nodiscard]] std::vector<LoadChoice> envelopeChoices(const Truss&);

// A member each. Issues when the model has faults or can't be solved.
[[nodiscard]] Outcome<std::vector<MemberEnvelope>> envelopeOf(const Truss&,
                                                              const std::vector<LoadChoice>&);

} // namespace gusset
