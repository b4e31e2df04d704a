#pragma once
// The names of a class, as spreadsheets and registers write them.

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// One text for each student, in order: the cells of a line, joined by spaces. Commas, semicolons or
// tabs separate cells, whichever the first written line holds most of; quotes are as in RFC 4180; a
// byte order mark and empty lines are left out, and so is a first line of column names.
[[nodiscard]] std::vector<std::string> studentsOf(std::string_view classList);

} // namespace gusset
