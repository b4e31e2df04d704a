#include "exchange/exercises/student_list.hpp"

#include "core/csv.hpp"

#include <algorithm>
#include <array>
#include <cctype>

namespace gusset {

namespace {

constexpr std::array<std::string_view, 18> kColumnNames{
    "name",  "names",      "first name", "firstname", "given name", "last name",
    "email", "surname",    "lastname",   "student",   "students",   "e-mail",
    "id",    "student id", "id number",  "username",  "user",       "email address"};

bool isColumnName(std::string cell) {
    for (char& c : cell) {
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    }
    return std::find(kColumnNames.begin(), kColumnNames.end(), cell) != kColumnNames.end();
}

} // namespace

std::vector<std::string> studentsOf(std::string_view text) {
    std::vector<CsvRow> lines = csvRows(text);
    std::erase_if(lines, isBlankRow);
    if (!lines.empty() && std::any_of(lines[0].begin(), lines[0].end(), isColumnName)) {
        lines.erase(lines.begin());
    }
    std::vector<std::string> students;
    for (const CsvRow& line : lines) {
        std::string student;
        for (const std::string& cell : line) {
            student += (student.empty() || cell.empty() ? "" : " ") + cell;
        }
        std::replace(student.begin(), student.end(), '\n', ' ');
        std::erase(student, '\r');
        students.push_back(student);
    }
    return students;
}

} // namespace gusset
