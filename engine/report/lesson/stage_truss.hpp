#pragma once
// The truss on the stage. Private to report/lesson.

#include "report/lesson/stage.hpp"

namespace gusset {

// As large as fits the space (px at a font size of 14 px for its labels), with the results told by
// the steps before and by this stroke; in the same place through all strokes of a step. Members
// that are known are heavy, with their force, or a tick where values are hidden; those that are
// asked for have a question mark; the others are thin. Where not all values have room, those that
// the step speaks of.
struct TrussPicture {
    Sketch sketch;
    OnStage board{}; // within the sketch
};
[[nodiscard]] TrussPicture stageTruss(const PhraseBook&, const LessonShown&, const StagePlace&,
                                      const FigureSpace&);

} // namespace gusset
