#include "cli/course.hpp"

#include "cli/input.hpp"
#include "core/csv.hpp"
#include "exchange/exercises/answers_file.hpp"
#include "exchange/exercises/class_list.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/exercises/handed_in.hpp"
#include "phrases/faults/class_lists.hpp"
#include "phrases/faults/exercises.hpp"

#include <algorithm>
#include <dirent.h>
#include <set>
#include <sys/stat.h>

namespace gusset::cli {

namespace {

// That stands where a file's name could.
bool isAnswersLink(const std::string& file) {
    return file.starts_with(kAnswersLink) ||
           file.find("#" + std::string(kAnswersLink)) != std::string::npos;
}

// The exercise of a model, with what marks its sheets.
Outcome<CourseExercise> exerciseOf(const std::string& file, Issues& notes) {
    Outcome<Reading> reading = readInput(file);
    if (!reading) {
        return reading.issues();
    }
    std::copy_if(reading.value().notes.begin(), reading.value().notes.end(),
                 std::back_inserter(notes),
                 [](const Issue& note) { return note.code != IssueCode::UnknownKey; });
    CourseExercise made{isPath(file) ? file : "", std::move(reading).value().truss, {}, {}};
    Outcome<Exercise> exercise = readExercise(made.truss);
    if (!exercise) {
        return exercise.issues();
    }
    made.exercise = std::move(exercise).value();
    return made;
}

// The scheme refers to the truss and the exercise where they stay.
Issues finish(CourseExercise& made) {
    const Outcome<AnswerKey> key = keyOf(made.truss, made.exercise);
    if (!key) {
        return key.issues();
    }
    made.scheme = std::make_unique<MarkingScheme>(made.truss, made.exercise, key.value());
    return {};
}

class SheetFile {
public:
    SheetFile(const Course& course, std::string_view text) : course_(course), text_(text) {}

    Outcome<SheetsOfFile> read() {
        Issues faults;
        switch (kindOfHandedIn(text_)) {
        case HandedInAs::Links:
            readLinks();
            break;
        case HandedInAs::Sheet:
            faults = readJson(text_.substr(text_.find('{')), 1);
            break;
        case HandedInAs::Table:
            faults = readTable();
        }
        if (!faults.empty()) {
            return faults;
        }
        std::stable_sort(read_.sheets.begin(), read_.sheets.end(),
                         [](const HandedIn& a, const HandedIn& b) { return a.row < b.row; });
        return std::move(read_);
    }

private:
    Issues readJson(std::string_view json, std::size_t row) {
        const Outcome<std::string> mark = exerciseOfAnswers(json);
        if (!mark) {
            return mark.issues();
        }
        const auto found = course_.exercises.find(mark.value());
        // Of a single exercise, it says itself what is wrong with sheets for another.
        const bool isOnly = course_.exercises.size() == 1;
        if (found == course_.exercises.end() && !isOnly) {
            return {{IssueCode::UnknownName, phrase::kPlaceAnswers, phrase::kOfNoExercise}};
        }
        const CourseExercise& of = isOnly ? course_.exercises.begin()->second : found->second;
        Outcome<Answers> answers = readAnswers(of.truss, of.exercise, json);
        if (!answers) {
            return answers.issues();
        }
        read_.sheets.push_back({row, &of, std::move(answers).value()});
        return {};
    }

    void readLinks() {
        for (const LinkedSheet& sheet : linkedSheets(text_)) {
            for (Issue issue :
                 sheet.json ? readJson(sheet.json.value(), sheet.row) : sheet.json.issues()) {
                issue.at = placeOfRow(sheet.row);
                read_.notes.push_back(std::move(issue));
            }
        }
    }

    Issues readTable() {
        const bool isOnly = course_.exercises.size() == 1;
        std::set<std::size_t> taken{1}; // the headings
        Issues none;
        for (const auto& [mark, of] : course_.exercises) {
            const Outcome<ClassList> list =
                readClassList(of.truss, of.exercise, mark, text_,
                              isOnly ? ClassRows::All : ClassRows::OfThisExercise);
            if (!list) {
                none = list.issues();
                continue;
            }
            read_.notes.insert(read_.notes.end(), list.value().notes.begin(),
                               list.value().notes.end());
            for (const ClassRow& row : list.value().rows) {
                read_.sheets.push_back({row.number, &of, row.answers});
            }
            taken.insert(list.value().read.begin(), list.value().read.end());
        }
        if (taken.size() == 1 && !none.empty()) {
            return none;
        }
        noteOthers(taken);
        return {};
    }

    void noteOthers(const std::set<std::size_t>& taken) {
        const std::vector<CsvRow> rows = csvRows(text_);
        for (std::size_t i = 1; i < rows.size(); ++i) {
            if (!isBlankRow(rows[i]) && taken.count(i + 1) == 0) {
                read_.notes.push_back(
                    {IssueCode::UnknownName, placeOfRow(i + 1), phrase::kOfNoExercise});
            }
        }
    }

    const Course& course_;
    std::string_view text_;
    SheetsOfFile read_;
};

} // namespace

Outcome<Course> openCourse(const PhraseBook& book, const std::string& path) {
    const Outcome<std::vector<std::string>> files = filesIn({path});
    if (!files) {
        return files.issues();
    }
    const bool isOnly = !isFolder(path);
    Course course;
    for (const std::string& file : files.value()) {
        if (!isOnly && !file.ends_with(".json")) {
            continue;
        }
        Issues remarks;
        Outcome<CourseExercise> read = exerciseOf(file, remarks);
        Issues faults = read ? Issues{} : read.issues();
        if (read) {
            const auto [at, isNew] = course.exercises.try_emplace(exerciseMark(read.value().truss),
                                                                  std::move(read).value());
            if (isNew) {
                faults = finish(at->second);
            } else {
                faults = {{IssueCode::Duplicate, file,
                           statement(phrase::kExerciseTwice, {{"file", at->second.file}})}};
            }
            if (isNew && !faults.empty()) {
                course.exercises.erase(at);
            }
        }
        if (isOnly && !faults.empty()) {
            return faults;
        }
        faults.insert(faults.end(), remarks.begin(), remarks.end());
        const Issues notes = placedIn(book, file, faults);
        course.notes.insert(course.notes.end(), notes.begin(), notes.end());
    }
    if (course.exercises.empty()) {
        return Issue{IssueCode::Missing, path, phrase::kNoCourse};
    }
    return course;
}

Outcome<SheetsOfFile> readSheets(const Course& course, const std::string& file) {
    const Outcome<std::string> text =
        isAnswersLink(file) ? Outcome<std::string>(file) : readTextOf(file);
    if (!text) {
        return text.issues();
    }
    return SheetFile(course, text.value()).read();
}

Outcome<std::vector<std::string>> filesIn(const std::vector<std::string>& paths) {
    std::vector<std::string> files;
    for (const std::string& path : paths) {
        if (!isFolder(path)) {
            files.push_back(path);
            continue;
        }
        std::vector<std::string> inside;
        DIR* folder = opendir(path.c_str());
        if (!folder) {
            return Issue{IssueCode::Missing, path, phrase::kFolderUnread};
        }
        while (const dirent* entry = readdir(folder)) {
            const std::string name = entry->d_name;
            if (!name.starts_with('.') && !isFolder(path + "/" + name)) {
                inside.push_back(path + "/" + name);
            }
        }
        closedir(folder);
        std::sort(inside.begin(), inside.end());
        files.insert(files.end(), inside.begin(), inside.end());
    }
    return files;
}

bool isFolder(const std::string& path) {
    struct stat found {};
    return path != "-" && stat(path.c_str(), &found) == 0 && S_ISDIR(found.st_mode);
}

Issues placedIn(const PhraseBook& book, const std::string& file, const Issues& issues) {
    Issues named;
    for (Issue issue : issues) {
        const std::string place = said(book, issue.at);
        if (place != file) {
            issue.at = file + ": " + place;
        }
        named.push_back(std::move(issue));
    }
    return named;
}

} // namespace gusset::cli
