#pragma once
// The right answers to an exercise, in the model's own units, and how far from them an answer may
// be.

#include "classroom/exercise/exercise.hpp"
#include "core/outcome.hpp"
#include "statics/solve/solution.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct AnswerKey {
    std::vector<double> reactions; // of each restraint along its direction, force units
    std::vector<double> forces; // of each member, force units, tension positive; exactly 0 if zero
    int degree = 0;             // of indeterminacy; negative for a mechanism
    // Of each question that asks for one value: displacement units, or the ordinate of an influence
    // line; nothing for the others.
    std::vector<std::optional<double>> values;
    double largest = 0; // of all reactions and forces, absolute
};

// An issue where a question has no answer: a mechanism has no forces, a truss without E and A no
// displacements. It names the question.
[[nodiscard]] Outcome<AnswerKey> keyOf(const Truss&, const Exercise&);

// How far an answer may be from this value; `largest` as in AnswerKey, or the value itself where it
// is not a force.
[[nodiscard]] double allowance(const Tolerance&, double value, double largest);

} // namespace gusset
