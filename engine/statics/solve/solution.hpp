#pragma once
// What is known of a truss after solving. All SI: N, m. By default nothing is solved.

#include "core/ids.hpp"
#include "core/outcome.hpp"
#include "core/vec2.hpp"
#include "model/truss/truss.hpp"
#include "statics/equilibrium/trust.hpp"
#include "statics/stability/mechanism.hpp"
#include "statics/stability/redundant.hpp"

#include <optional>
#include <vector>

namespace gusset {

enum class Status {
    Invalid,       // the model has errors: see them
    Mechanism,     // it moves: see mechanisms
    Determinate,   // equilibrium alone gives all forces
    Indeterminate, // stable, with more members or supports than equilibrium can determine
};

// What results assume beyond the model.
enum class Assumption { EqualStiffness }; // E·A is the same for all members

// A member much stiffer or softer than most.
struct StandsOut {
    MemberId member;
    double ratio = 1; // of its E·A to the median of all
};

// A mechanism that is not strictly one: its coordinates hold it, but so weakly that forces would be
// more than 1/kRankPivot times the loads.
struct BarelyHeld {
    JointId joint;
    double share = 0; // of a unit, that is left to hold the joint
};

struct Solution {
    Status status = Status::Invalid;
    Counting counting;
    bool solved = false;              // forces and reactions below are valid only if true
    std::vector<double> forces;       // N, tension positive, in the order of the members
    std::vector<double> reactions;    // N, along each Restraint of the structure
    std::vector<Vec2> jointReactions; // N, total force of a joint's supports on it, one per joint
    std::vector<Vec2> loads;          // N, the loads on each joint that were used
    double largest = 0;               // N, largest component of any load, reaction or force: the
                                      // scale of zero
    double residual = 0;              // largest residual at a joint, relative to `largest`
    Trust trust;                      // of all these
    std::vector<Mechanism> mechanisms;
    std::vector<Redundant> redundants; // at most kRedundantsShown

    // There are displacements when every member has E and A, and the truss is stable and solved.
    bool displaced = false;               // these are valid only if true
    std::vector<Vec2> displacements;      // m, one per joint
    std::vector<double> elongations;      // m, one per member: from force, temperature and misfit
    std::vector<double> elongationErrors; // m, one per member: bounds, as for the forces
    double strainEnergy = 0;              // J, Σ F²·L/(2·EA)
    double strainEnergyError = 0;         // J, bound

    std::vector<double>
        stresses; // Pa, one per member; NaN where no area is known; empty unless solved
    std::vector<double> moments; // N·m, one per member: the largest from loads between its joints,
                                 // as a simple beam; positive sagging; empty if there are none
    std::vector<Assumption> assumed;
    std::optional<StandsOut> standsOut; // where forces or displacements depend on stiffness
    std::optional<BarelyHeld> barelyHeld;
    // Errors of the model. With some, such as a temperature change without α, the structure is
    // still read, and only its forces are missing.
    Issues errors;
    Issues notes; // what was left out, and what should be known
};

// Validates, reads the structure and finds the forces. Never fails: for a truss that can't be
// solved, the result says why.
[[nodiscard]] Solution solve(const Truss&, const LoadChoice& = {});

// Signs as printed: Zero for exactly zero, for zero to working accuracy, and for a force below its
// error bound.
enum class Sense { Tension, Compression, Zero };
[[nodiscard]] Sense senseOf(const Solution&, MemberId);
[[nodiscard]] bool isZero(const Solution&, double force);
// Rounding error bound of any displacement, m.
[[nodiscard]] double movementBound(const Solution&);
// Whether displacements are missing only because rounding leaves fewer than three figures of them.
[[nodiscard]] bool losesDisplacements(const Solution&);

} // namespace gusset
