#pragma once
// The exercises of a course, and the sheets that are handed in for them. Nothing here prints.

#include "classroom/marking/marking.hpp"
#include "core/outcome.hpp"
#include "core/phrase.hpp"

#include <map>
#include <memory>
#include <string>
#include <vector>

namespace gusset::cli {

struct CourseExercise {
    std::string file;
    Truss truss;
    Exercise exercise;
    std::unique_ptr<MarkingScheme> scheme;
};
struct Course {
    std::map<std::string, CourseExercise> exercises; // by their checksum
    Issues notes;                                    // of files that hold none
};
// From one file, or from all files of a folder that end in .json. An issue if there is none.
[[nodiscard]] Outcome<Course> openCourse(const PhraseBook&, const std::string& path);

// A sheet of a file: of one student, of a table, or of links, one a line.
struct HandedIn {
    std::size_t row = 1; // in its file
    const CourseExercise* exercise = nullptr;
    Answers answers;
};
struct SheetsOfFile {
    std::vector<HandedIn> sheets; // by row
    Issues notes;                 // what could not be read, with its row
};
[[nodiscard]] Outcome<SheetsOfFile> readSheets(const Course&, const std::string& file);

// Files as they are, and those of folders in the order of their names. An issue for a folder that
// can't be read.
[[nodiscard]] Outcome<std::vector<std::string>> filesIn(const std::vector<std::string>& paths);
[[nodiscard]] bool isFolder(const std::string& path);
// With the file in front of each place, as there may be several.
[[nodiscard]] Issues placedIn(const PhraseBook&, const std::string& file, const Issues&);

} // namespace gusset::cli
