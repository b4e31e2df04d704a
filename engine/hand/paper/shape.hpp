#pragma once
// What follows from the joints and members of a truss alone, independent of its loads and known
// forces: computed on first use, and shared by all sheets of one truss. Private to hand/.

#include "hand/paper/cuts.hpp"

#include <map>
#include <optional>
#include <vector>

namespace gusset {

// Joints whose equations together determine their unknowns.
struct Together {
    std::vector<JointId> joints;
    std::vector<Symbol> unknowns;
};

// A walk with one force called X, or two called X and Y: see hand/stages/letter_walk.
struct LetterWalk {
    std::vector<Symbol> letters; // the forces called X and Y
    std::vector<JointId> joints; // in the order of the walk
};

struct Shape {
    std::optional<std::vector<HingedPart>> hinged;
    std::optional<Divisions> straight;
    std::optional<Divisions> bent;
    std::vector<std::optional<std::vector<JointId>>> onLine; // for each member, in joint order
    // The smallest such set of joints, if any, for each state of what is open.
    std::map<std::vector<bool>, std::optional<Together>> together;
    std::map<std::vector<bool>, std::optional<LetterWalk>> walks; // likewise
};

} // namespace gusset
