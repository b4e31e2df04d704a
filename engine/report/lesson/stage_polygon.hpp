#pragma once
// A force polygon on the stage: the truss with its spaces lettered, and as much of the polygon as
// is drawn. Private to report/lesson.

#include "report/lesson/stage.hpp"

namespace gusset {

// Precondition: the lesson has a polygon, of which at least one line is drawn.
[[nodiscard]] Sketch polygonTruss(const PhraseBook&, const LessonShown&, std::size_t drawn,
                                  const FigureSpace&);
[[nodiscard]] Sketch polygonLines(const PhraseBook&, const LessonShown&, std::size_t drawn,
                                  const FigureSpace&);

} // namespace gusset
