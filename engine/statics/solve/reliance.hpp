#pragma once
// What must be known of forces beside their figures: of one solution, or of several together, as in
// envelopes and influence lines, where each holds for the largest of all.

#include "statics/solve/analysis.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct Reliance {
    Status status = Status::Invalid;
    Trust trust;         // the worst of each; its errors are over the two that follow
    double largest = 0;  // N, of any load, reaction or force
    double inMember = 0; // N, of any member; not of unit loads
    double farthest = 0; // m, of any displacement, by components
    std::vector<Assumption> assumed;
    std::optional<StandsOut> standsOut;
    std::optional<BarelyHeld> barelyHeld;
};

// What a solution says of the analysis that it is of.
[[nodiscard]] std::optional<StandsOut> standsOutOf(const Analysis&);
[[nodiscard]] std::optional<BarelyHeld> barelyHeldOf(const Analysis&);

[[nodiscard]] Reliance relianceOf(const Solution&);
// Before anything was answered.
[[nodiscard]] Reliance relianceOf(const Analysis&);
void include(Reliance&, const Response&);
void include(Reliance&, const UnitResponses&);

// By how much rounding may put any force off, N, and any displacement, m.
[[nodiscard]] double forceErrorOf(const Reliance&);
[[nodiscard]] double displacementErrorOf(const Reliance&);
// As of a solution; and whether it is zero only as the bound of its error is larger.
[[nodiscard]] bool isZero(const Reliance&, double force);
[[nodiscard]] bool isBelowBound(const Reliance&, double force);
// Whether it is written 0 only as it is nothing beside a load or a reaction, such as a load on a
// support; beside the forces of the members it is not.
[[nodiscard]] bool isNegligible(const Reliance&, double force);

// Why there are no answers; `ofMechanism`: "the truss is a mechanism: it has no envelope…".
[[nodiscard]] Issues whyUnanswered(const Truss&, const Analysis&, const char* ofMechanism);

} // namespace gusset
