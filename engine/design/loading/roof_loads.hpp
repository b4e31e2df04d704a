#pragma once
// Loads as they come to a truss, on the area or along the line that it carries, put on the joints
// of a chord by tributary lengths: each joint takes half of what lies on either side of it.

#include "core/outcome.hpp"
#include "core/phrase.hpp"
#include "model/truss/truss.hpp"

#include <string>
#include <vector>

namespace gusset {

enum class LoadSpread {
    AreaOnPlan,  // force units per length unit², of plan: snow
    AreaOnSlope, // of the roof's own surface: tiles
    AreaNormal,  // of the roof's own surface, square to it: wind; positive: pressure on it
    LineOnPlan,  // force units per length unit
    LineOnSlope,
    PerJoint, // force units on each joint that is not held
};

// "on the area, on plan"
[[nodiscard]] const Phrase<>& saysOf(LoadSpread);
// The unit of such a load: "kN/m²"; empty where forces or lengths have none.
[[nodiscard]] std::string unitOf(LoadSpread, const Units&);

struct RoofLoad {
    std::string caseId;
    LoadSpread spread = LoadSpread::AreaOnPlan;
    double left = 0;  // down, or onto the roof; up to the ridge, the chord's highest joint
    double right = 0; // beyond it
};

struct ChordShare {
    JointId joint;
    double plan = 0;  // length units of the chord that it carries, on plan
    double slope = 0; // along the chord
    Vec2 force;       // force units
};

// Areas are the lengths times `spacing`, length units, the distance between trusses. One share per
// joint of the chord, in its order.
// Precondition: the chord has at least two joints.
[[nodiscard]] std::vector<ChordShare> sharesOf(const Truss&, const std::vector<JointId>& chord,
                                               double spacing, const RoofLoad&);

} // namespace gusset
