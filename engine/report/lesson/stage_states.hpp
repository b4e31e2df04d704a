#pragma once
// States of a truss beside each other, each under its name. Private to report/lesson.

#include "report/lesson/stage.hpp"

namespace gusset {

// Precondition: there is at least one. Upright, one is below the other.
[[nodiscard]] Sketch statesSketch(const PhraseBook&, const std::vector<StateShown>&,
                                  const FigureSpace&, bool upright);

} // namespace gusset
