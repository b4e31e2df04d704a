#pragma once
// A truss that moves, on the stage. Private to report/lesson.

#include "report/lesson/stage.hpp"

namespace gusset {

// Its first mechanism; `phase` from 0 to 1 goes to one side, to the other and back. Precondition:
// the working has a mechanism.
[[nodiscard]] Sketch movingTruss(const PhraseBook&, const LessonShown&, double phase,
                                 const FigureSpace&);

} // namespace gusset
