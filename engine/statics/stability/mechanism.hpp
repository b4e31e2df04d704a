#pragma once
// The ways in which a truss can move, and what would prevent it. The velocities are the left null
// space of the equilibrium matrix (Pellegrino & Calladine 1986).

#include "statics/equilibrium/equilibrium.hpp"

#include <optional>
#include <vector>

namespace gusset {

// Something that, once added, removes a mechanism. All cures of a solution together leave none.
struct Cure {
    JointId a; // a member between a and b, if they are valid
    JointId b;
    JointId support;      // else a support here
    bool pin = false;     // a pin in place of the existing roller
    double reaction = 90; // else a roller with its reaction in this direction, degrees
};

// A member between joints that are near each other, and a support at a joint that moves far. One of
// the two may be missing.
struct Cures {
    std::optional<Cure> member;
    std::optional<Cure> support;
};

// A way the truss can move with all members keeping their length.
struct Mechanism {
    std::vector<Vec2> velocities; // one per joint, the largest has length 1
    std::vector<JointId> moving;  // joints whose velocity is not zero
    Cure cure;                    // one of the cures
    Cures cures;
};

inline constexpr std::size_t kMechanismsShown = 12; // Counting tells how many there are

// The first kMechanismsShown mechanisms, those that move few joints before those that move many;
// each in the direction in which the loads drive it, if they do.
[[nodiscard]] std::vector<Mechanism> mechanismsOf(const Structure&, const Equilibrium&,
                                                  const std::vector<Vec2>& loads);

// A motion of some joints as one rigid body.
struct RigidMotion {
    bool turns = false;
    Vec2 velocity; // of all joints, if it does not turn
    Vec2 centre;   // m, if it does
};
// Nothing unless all the joints move like this and the supports let them. Precondition: at least
// two joints.
[[nodiscard]] std::optional<RigidMotion> rigidMotionOf(const Structure&, const Mechanism&,
                                                       const std::vector<JointId>&);

[[nodiscard]] Cures curesOf(const Structure&, const Mechanism&);
// The rate at which the mechanism would stretch the cure; the cure stops it unless this is zero.
[[nodiscard]] double rateOf(const Structure&, const Mechanism&, const Cure&);

} // namespace gusset
