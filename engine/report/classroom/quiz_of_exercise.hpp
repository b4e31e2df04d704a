#pragma once
// An exercise as questions of a learning platform, in words.

#include "classroom/exercise/exercise.hpp"
#include "classroom/exercise/quiz.hpp"
#include "core/outcome.hpp"
#include "report/text/writer.hpp"

namespace gusset {

enum class QuizForm {
    OneNumber,   // a question for each value, as one signed number
    SizeAndSense // a question for each of the exercise's, with a size and a direction for each
                 // value
};

[[nodiscard]] constexpr QuizForm quizFormFor(bool takesSeveralFields) {
    return takesSeveralFields ? QuizForm::SizeAndSense : QuizForm::OneNumber;
}

// Every value is given a point, or its share of the marks of its question; a size has two thirds of
// it where the direction is apart. The picture is an SVG. Steps are left out, as no platform marks
// them; an issue if nothing is left, or where keyOf has one.
[[nodiscard]] Outcome<Quiz> quizOfExercise(const Writer&, const Exercise&, QuizForm);

} // namespace gusset
