#pragma once
// A reaction as one formula of where the load stands: the equation of moments that gives it for
// every position, with the load at a distance x. Private to hand/.

#include "hand/virtual_work/influence_by_hand.hpp"

#include <optional>

namespace gusset {

// None where no single equation holds for the whole path. Precondition: all ordinates are found.
[[nodiscard]] std::optional<ReactionLaw> reactionLaw(const Truss&, const InfluenceByHand&);

} // namespace gusset
