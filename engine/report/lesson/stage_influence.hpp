#pragma once
// An influence line on the stage: the load on the truss, and under it the line as far as the load
// has come. Private to report/lesson.

#include "report/lesson/stage.hpp"

namespace gusset {

// Precondition: the lesson has a line, of which at least one ordinate is traced.
// `along`: as in StagePlace. Whatever is drawn, the truss has the same place.
[[nodiscard]] Sketch tracedLine(const PhraseBook&, const LessonShown&, std::size_t traced,
                                double along, const FigureSpace&);
// The load at a joint of the path. Precondition: the lesson has a line.
[[nodiscard]] Sketch trussUnderUnitLoad(const PhraseBook&, const LessonShown&, JointId,
                                        const FigureSpace&);

} // namespace gusset
