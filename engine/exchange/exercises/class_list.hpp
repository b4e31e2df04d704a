#pragma once
// The answers of a class as a table, as csvRows reads it. The first row has headings: a member as
// AB, A-B, B-A or F_AB; a reaction as A_x, Ax, A:y, or R_B along a roller; "zero" for the members
// that carry nothing; "degree" of indeterminacy, negative for a mechanism; Q2 for the value that
// question 2 asks for; "variant"; "exercise", with the checksum that answers carry. Of the other
// columns, the first tells the sheets apart, and nothing else is read.
//
// A force is a number with a point or a comma, any dash, and a unit if need be; for a member
// tension is positive, or T or C stands beside it; for a reaction along +x, up, or along its
// direction is positive, or an arrow stands beside it. The members of "zero" have spaces, commas or
// semicolons between them. A cell with a dash alone is blank.

#include "classroom/exercise/answers.hpp"
#include "core/outcome.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

struct ClassRow {
    std::size_t number = 0; // of the row in the table, the headings being 1
    std::string code;       // what tells it apart, as written
    Answers answers;
};
struct ClassList {
    std::string codeHeading; // of the column that tells them apart, or empty
    std::vector<ClassRow> rows;
    std::vector<std::size_t> read; // numbers of all rows that were looked at, kept or not
    Issues notes;                  // what could not be read, with its row; the rest was
};
// Which rows are read: all that are not said to be of another exercise, or, from a table of several
// exercises, only those that are said to be of this one, the others being left without a word.
enum class ClassRows { All, OfThisExercise };
// `mark` is the exercise's checksum. An issue only if nothing of it can be read.
[[nodiscard]] Outcome<ClassList> readClassList(const Truss&, const Exercise&,
                                               const std::string& mark, std::string_view table,
                                               ClassRows = ClassRows::All);

} // namespace gusset
