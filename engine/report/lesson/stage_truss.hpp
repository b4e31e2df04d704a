#pragma once
// The truss on the stage. Private to report/lesson.

#include "report/lesson/stage.hpp"

namespace gusset {

// As large as fits the space (px at a font size of 14 px for its labels), with the results told by
// the steps before and by this stroke.
struct TrussPicture {
    Sketch sketch;
    OnStage board{}; // within the sketch
};
[[nodiscard]] TrussPicture stageTruss(const PhraseBook&, const LessonShown&, const StagePlace&,
                                      const FigureSpace&);

} // namespace gusset
