#pragma once
// The ways in which a truss can move, and what would hold it. The velocities are the
// left null space of the equilibrium matrix (Pellegrino & Calladine 1986).

#include "statics/equilibrium.hpp"

namespace gusset {

// The first kMechanismsShown mechanisms, those that move few joints before those that move many;
// each in the sense in which the loads drive it, if they do.
[[nodiscard]] std::vector<Mechanism> mechanismsOf(const Structure&, const Equilibrium&,
                                                  const std::vector<Vec2>& loads);

// A motion of some joints as one rigid body.
struct RigidMotion {
    bool turns = false;
    Vec2 velocity; // of all joints, if it does not turn
    Vec2 centre;   // m, if it does
};
// Nothing unless all the joints move so and the supports let them. Precondition: at least two
// joints.
[[nodiscard]] std::optional<RigidMotion> rigidMotionOf(const Structure&, const Mechanism&,
                                                       const std::vector<JointId>&);

[[nodiscard]] Cures curesOf(const Structure&, const Mechanism&);
// How fast the mechanism would stretch the cure; it holds the mechanism unless this is zero.
[[nodiscard]] double rateOf(const Structure&, const Mechanism&, const Cure&);

} // namespace gusset
