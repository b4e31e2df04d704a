#pragma once
// What is known of a truss after solving. All SI: N, m. The default says that nothing was solved.

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
    Indeterminate, // stable, with more members or supports than equilibrium can settle
};

// What results rest on that the model doesn't say.
enum class Assumption { EqualStiffness }; // E·A is the same for all members

// A member much stiffer or softer than most.
struct StandsOut {
    MemberId member;
    double ratio = 1; // of its E·A to the median of all
};

// A mechanism that, strictly, is none: its coordinates hold it, so weakly that forces would be more
// than 1/kRankPivot times the loads.
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
    std::vector<Vec2> jointReactions; // N, the force of all supports of a joint on it, a joint each
    std::vector<Vec2> loads;          // N, what was taken to act on each joint
    double largest = 0;               // N, largest component of any load, reaction or force: the
                                      // scale of zero
    double residual = 0;              // largest lack of equilibrium at a joint over `largest`
    Trust trust;                      // of all these; see there
    std::vector<Mechanism> mechanisms;
    std::vector<Redundant> redundants; // at most kRedundantsShown

    // Displacements are had when every member has E and A, and the truss is stable and solved.
    bool displaced = false;               // these are valid only if true
    std::vector<Vec2> displacements;      // m, a joint each
    std::vector<double> elongations;      // m, a member each: by force, temperature and misfit
    std::vector<double> elongationErrors; // m, a member each: bounds, as of the forces
    double strainEnergy = 0;              // J, Σ F²·L/(2·EA)
    double strainEnergyError = 0;         // J, likewise

    std::vector<double>
        stresses; // Pa, a member each; NaN where no area is known; empty unless solved
    std::vector<double>
        moments; // N·m, a member each: the largest by which loads between its joints
                 // bend it, as a simple beam; positive sagging; empty if there are none
    std::vector<Assumption> assumed;
    std::optional<StandsOut> standsOut; // where forces or displacements depend on stiffness
    std::optional<BarelyHeld> barelyHeld;
    // Faults of the model. With some, such as a temperature change without α, the structure is
    // still read, and only its forces stay open.
    Issues errors;
    Issues notes; // what was left out of account, what should be known
};

// Validates, reads the structure and, where equilibrium is enough, finds the forces. Never fails:
// what can't be solved is a result that says why.
[[nodiscard]] Solution solve(const Truss&, const LoadChoice& = {});

// Signs as printed: exactly zero or zero to working accuracy is Zero, and so is what is smaller
// than the bound of its error.
enum class Sense { Tension, Compression, Zero };
[[nodiscard]] Sense senseOf(const Solution&, MemberId);
[[nodiscard]] bool isZero(const Solution&, double force);
// By how much rounding may put any displacement off, m.
[[nodiscard]] double movementBound(const Solution&);
// Whether there would be displacements, if rounding left three figures of them.
[[nodiscard]] bool losesDisplacements(const Solution&);

} // namespace gusset
