#pragma once
// States of a truss beside each other, each under its name. Private to report/lesson.

#include "report/lesson/stage.hpp"

namespace gusset {

// All at one size, and without the forces beside their members where these would make them much
// smaller. Precondition: there is at least one. Upright, one is below the other.
[[nodiscard]] Sketch statesSketch(const PhraseBook&, const std::vector<StateShown>&,
                                  const FigureSpace&, bool upright);

} // namespace gusset
