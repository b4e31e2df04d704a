#pragma once
// The first half minute on an empty board: the next step, for a line of words and a ghost of its
// stroke on the paper. The steps follow from what is on the board, so whoever takes them in another
// order, or undoes one, is offered what is missing.

#include "app/derived/derived.hpp"
#include "app/state/state.hpp"

namespace gusset {

enum class Lesson {
    FirstMember,
    Triangle, // from the two members that are there, or from the only one
    Pin,
    Roller,
    Load,
    Waits, // the truss has no forces yet, and the board says why
    Forces,
    Done,
};
[[nodiscard]] Lesson lessonOf(const AppState&, const Derived&);

// One of the steps is offered now: not once they are taken, and not while the board itself says
// what is missing, as it does of a truss that somebody has drawn otherwise.
[[nodiscard]] bool offersStep(const AppState&, const Derived&);

// The tool that the step is taken with.
[[nodiscard]] Tool toolFor(Lesson);

} // namespace gusset
