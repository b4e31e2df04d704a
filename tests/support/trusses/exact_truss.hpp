#pragma once
// Forces, reactions and displacements of small trusses in exact fractions, by the plainest
// elimination: an independent check of the engine's results for extreme stiffnesses or lengths. It
// shares with the engine the model, and the directions and settlements of the restraints, which are
// taken as exact values of their doubles.

#include "model/truss/truss.hpp"

#include <optional>
#include <vector>

namespace gusset::support {

struct ExactResponse {             // N, m
    std::vector<double> forces;    // one per member, tension positive
    std::vector<double> reactions; // along each Restraint of the structure
    std::vector<Vec2> moves;       // one per joint
};

// For a truss with joint forces by components. Coordinates, loads, E and A are taken as the exact
// values of their doubles; EA/L³ of each member and its free elongation are rounded to doubles
// first, which affects nothing by more than a few units in the last place. Members without a
// section are all alike, and the displacements are then meaningless. Among several supports at a
// joint the sum of the squares of their reactions is minimised. None for a mechanism, and if
// supports of one joint impose different movements.
[[nodiscard]] std::optional<ExactResponse> exactResponse(const Truss&);

} // namespace gusset::support
