#pragma once
// Forces, reactions and displacements of small trusses in whole fractions, by the plainest
// elimination: an outside judge of what the engine gives where stiffnesses or lengths are extreme.
// Of the engine it shares the model, and the directions and settlements of its restraints, which
// are taken as the fractions that their doubles are.

#include "model/truss/truss.hpp"

#include <optional>
#include <vector>

namespace gusset::support {

struct ExactResponse {             // N, m
    std::vector<double> forces;    // a member each, tension positive
    std::vector<double> reactions; // along each Restraint of the structure
    std::vector<Vec2> moves;       // a joint each
};

// Of a truss with joint forces by components. Coordinates, loads, E and A are taken as the
// fractions that their doubles are; EA/L³ of each member and its free elongation are rounded to
// doubles first, which nothing depends on by more than a few units in their last place. Members
// without a section are all alike, and the moves then mean nothing. Of several supports at a joint
// the sum of the squares of their reactions is least. Nothing for a mechanism, and where supports
// of one joint impose different movements.
[[nodiscard]] std::optional<ExactResponse> exactResponse(const Truss&);

} // namespace gusset::support
