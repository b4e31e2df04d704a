#pragma once
// One stroke of a lesson, laid out for a screen: the truss with what the step speaks of lit and the
// values found so far, the free body, and the equations, large. A drawing as large as the screen.

#include "report/lesson/lesson.hpp"

namespace gusset {

struct StageSize { // px
    double width = 0;
    double height = 0;
};
// The smallest letters and the lines that a room must read have at least these sizes, px: 1/60 and
// 1/40 of the height of a screen that is wider than high; on an upright phone what is read at arm's
// length.
[[nodiscard]] double smallestLetters(const StageSize&);
[[nodiscard]] double smallestLines(const StageSize&);

struct StagePlace { // in a lesson
    std::size_t step = 0;
    std::size_t stroke = 0;
    bool hidesValues = false; // of the truss, throughout
    double phase = 0.25;      // of a truss that moves: from 0 to 1 it goes to and fro
    double along = 1;         // of a line that is traced: how far the load has come, from the joint
                              // before (0) to that of the stroke
};
// Where the truss is: a joint at (x, y), length units, stands at origin + scale · (x, −y), px.
struct OnStage {
    Vec2 origin{};
    double scale = 0;
};
struct StagePicture {
    Sketch sketch;
    std::optional<OnStage> board{}; // if it shows the truss with its supports
    std::optional<OnStage> body{};  // of the drawing of its free bodies, if it shows any
};
// Precondition: there is such a step and stroke.
[[nodiscard]] StagePicture stageOf(const PhraseBook&, const LessonShown&, const StagePlace&,
                                   const StageSize&);

} // namespace gusset
