#pragma once
// The answers of a class as a table: CSV with commas or semicolons, or columns with tabs, UTF-8
// with or without a byte order mark. The first row has headings: a member as AB, A-B, B-A or F_AB;
// a reaction as A_x, Ax, A:y, or R_B along a roller; "variant"; "exercise", with the checksum that
// answers carry. Of the other columns, the first tells the sheets apart, and nothing else is read.
//
// A cell is a number with a point or a comma, any dash, and a force unit if need be; for a member
// tension is positive, or T or C stands beside it; for a reaction along +x, up, or along its
// direction is positive, or an arrow stands beside it.

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
    Issues notes; // what could not be read, with its row; the rest was
};
// `mark` is the exercise's checksum. An issue only if nothing of it can be read.
[[nodiscard]] Outcome<ClassList> readClassList(const Truss&, const Exercise&,
                                               const std::string& mark, std::string_view table);

} // namespace gusset
