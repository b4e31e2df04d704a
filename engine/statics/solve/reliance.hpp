#pragma once
// What must be known about forces besides their values: for one solution, or for several together,
// as in envelopes and influence lines, where each item holds for the largest of all.

#include "statics/solve/analysis.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct Reliance {
    Status status = Status::Invalid;
    Trust trust;         // the worst of each; its errors are relative to `largest` and `farthest`
    double largest = 0;  // N, of any load, reaction or force
    double inMember = 0; // N, of any member; not for unit loads
    double farthest = 0; // m, of any displacement, by components
    std::vector<Assumption> assumed;
    std::optional<StandsOut> standsOut;
    std::optional<BarelyHeld> barelyHeld;
};

// The notes of a solution that come from its analysis.
[[nodiscard]] std::optional<StandsOut> standsOutOf(const Analysis&);
[[nodiscard]] std::optional<BarelyHeld> barelyHeldOf(const Analysis&);

[[nodiscard]] Reliance relianceOf(const Solution&);
// Before any loads are solved for.
[[nodiscard]] Reliance relianceOf(const Analysis&);
void include(Reliance&, const Response&);
void include(Reliance&, const UnitResponses&);

// Rounding error bound of any force, N, and any displacement, m.
[[nodiscard]] double forceErrorOf(const Reliance&);
[[nodiscard]] double displacementErrorOf(const Reliance&);
// As for a solution; and whether it counts as zero only because its error bound is larger.
[[nodiscard]] bool isZero(const Reliance&, double force);
[[nodiscard]] bool isBelowBound(const Reliance&, double force);
// Whether it is written as 0 only because it is negligible beside a load or a reaction, such as a
// load on a support; beside the forces of the members it is not.
[[nodiscard]] bool isNegligible(const Reliance&, double force);

// Why there are no results; `ofMechanism`: "the truss is a mechanism: it has no envelope…".
[[nodiscard]] Issues whyUnanswered(const Truss&, const Analysis&, Phrase<> ofMechanism);

} // namespace gusset
