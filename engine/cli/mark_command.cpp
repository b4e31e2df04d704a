#include "cli/mark_command.hpp"

#include "cli/course.hpp"
#include "core/csv.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "phrases/faults/class_lists.hpp"
#include "report/classroom/marking_text.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace gusset::cli {

namespace {

constexpr std::string_view kHead = "file,row,exercise,code,marks,of,slips,feedback";
constexpr std::size_t kSlipsColumn = 6;
constexpr std::size_t kProgressEach = 50; // sheets

using Places = std::set<std::pair<std::string, std::string>>; // file and row

// Of whole lines; one that an earlier run could not finish is not there.
std::vector<CsvRow> linesIn(const std::string& table) {
    std::vector<CsvRow> rows = csvRows(table);
    std::erase_if(rows, [](const CsvRow& row) { return row.size() <= kSlipsColumn + 1; });
    return rows;
}

std::string slipsIn(const std::string& table) {
    std::map<std::string, int> counts;
    const std::vector<CsvRow> rows = linesIn(table);
    for (std::size_t i = 1; i < rows.size(); ++i) {
        for (std::string_view rest = rows[i][kSlipsColumn]; !rest.empty();) {
            const std::size_t end = std::min(rest.find("; "), rest.size());
            ++counts[std::string(rest.substr(0, end))];
            rest.remove_prefix(std::min(end + 2, rest.size()));
        }
    }
    std::string text = csvHead("slip,times");
    for (const auto& [slip, times] : counts) {
        text += csvTextCell(slip) + "," + std::to_string(times) + "\r\n";
    }
    return text;
}

// Two sheets with one code, in different files: of one table, its reader says it.
class CodeWatch {
public:
    Issues notesOn(const std::string& file, const std::vector<HandedIn>& sheets) {
        Issues notes;
        for (const HandedIn& sheet : sheets) {
            const auto [at, isNew] = seen_.try_emplace({sheet.exercise, sheet.answers.code}, file,
                                                       std::to_string(sheet.row));
            const auto& [other, row] = at->second;
            if (!isNew && other != file && !sheet.answers.code.empty()) {
                notes.push_back(
                    {IssueCode::Duplicate, statement(phrase::kPlaceRow, {{"row", sheet.row}}),
                     statement(phrase::kCodeInFile,
                               {{"code", sheet.answers.code}, {"row", row}, {"file", other}})});
            }
        }
        return notes;
    }

private:
    std::map<std::pair<const CourseExercise*, std::string>, std::pair<std::string, std::string>>
        seen_; // file and row
};

// The sheets of a file; what is to be said of it goes to the faults.
SheetsOfFile sheetsOf(const PhraseBook& book, const Course& course, const std::string& file,
                      CodeWatch& codes, Issues& faults) {
    Outcome<SheetsOfFile> read = readSheets(course, file);
    SheetsOfFile sheets = read ? std::move(read).value() : SheetsOfFile{{}, read.issues()};
    const Issues twice = codes.notesOn(file, sheets.sheets);
    sheets.notes.insert(sheets.notes.end(), twice.begin(), twice.end());
    const Issues notes = placedIn(book, file, sheets.notes);
    faults.insert(faults.end(), notes.begin(), notes.end());
    return sheets;
}

class CourseMarker {
public:
    CourseMarker(const PhraseBook& book, const Course& course, const MarkSink& sink)
        : book_(book), course_(course), sink_(sink), table_(sink.before) {
        for (const CsvRow& row : linesIn(table_)) {
            done_.emplace(row[0], row[1]);
        }
    }

    Answer mark(const std::vector<std::string>& files) {
        Answer given;
        given.faults = course_.notes;
        if (table_.empty() && !put(csvHead(kHead))) {
            return lost(std::move(given));
        }
        for (std::size_t i = 0; i < files.size(); ++i) {
            const SheetsOfFile read = sheetsOf(book_, course_, files[i], codes_, given.faults);
            const std::string place =
                std::to_string(i + 1) + " of " + std::to_string(files.size()) + ": " + files[i];
            if (!markAll(files[i], read.sheets, place)) {
                return lost(std::move(given));
            }
            sink_.progress(place, i + 1 == files.size());
        }
        given.exit = count_ == 0 ? Exit::BadInput : Exit::Answered;
        given.text = count_ == 0 ? "" : slipsIn(table_);
        return given;
    }

private:
    static Answer lost(Answer given) {
        given.exit = Exit::LostOutput;
        return given;
    }
    bool put(const std::string& line) {
        table_ += line;
        return sink_.put(line);
    }
    bool markAll(const std::string& file, const std::vector<HandedIn>& sheets,
                 const std::string& place) {
        for (const HandedIn& sheet : sheets) {
            const std::string row = std::to_string(sheet.row);
            if (++count_ % kProgressEach == 0) {
                sink_.progress(place + ", row " + row, false);
            }
            if (done_.count({file, row}) > 0) {
                continue;
            }
            const Writer writer{book_, sheet.exercise->truss};
            const MarkedSheet marked{sheet.answers.code, sheet.answers,
                                     sheet.exercise->scheme->mark(sheet.answers)};
            if (!put(csvTextCell(file) + "," + row + "," + exerciseMark(sheet.exercise->truss) +
                     "," + sheetCells(writer, marked) + "\r\n")) {
                return false;
            }
        }
        return true;
    }

    const PhraseBook& book_;
    const Course& course_;
    const MarkSink& sink_;
    std::string table_; // all that was put
    Places done_;
    CodeWatch codes_;
    std::size_t count_ = 0;
};

// All sheets of one exercise, as a table or as text with the rule of marks.
Answer markOne(const PhraseBook& book, const Arguments& arguments, const Course& course,
               const std::vector<std::string>& files) {
    const CourseExercise& of = course.exercises.begin()->second;
    std::vector<MarkedSheet> sheets;
    Answer given;
    CodeWatch codes;
    for (const std::string& file : files) {
        for (const HandedIn& sheet : sheetsOf(book, course, file, codes, given.faults).sheets) {
            sheets.push_back({sheet.answers.code, sheet.answers, of.scheme->mark(sheet.answers)});
        }
    }
    if (sheets.empty()) {
        given.exit = Exit::BadInput;
        return given;
    }
    const Writer writer{book, of.truss};
    given.text = arguments.has("--text") ? classText(writer, sheets) : classCsv(writer, sheets);
    return given;
}

} // namespace

std::string wholeLines(const std::string& table) {
    const std::size_t end = table.rfind("\r\n");
    return end == table.npos ? std::string() : table.substr(0, end + 2);
}

Answer answerMark(const PhraseBook& book, const Arguments& arguments, const MarkSink& sink) {
    const Outcome<Course> course = openCourse(book, arguments.input);
    if (!course) {
        return {Exit::BadInput, {}, course.issues()};
    }
    const Outcome<std::vector<std::string>> files = filesIn(arguments.more);
    if (!files) {
        return {Exit::BadInput, {}, files.issues()};
    }
    if (!isFolder(arguments.input) && !arguments.has("--out")) {
        return markOne(book, arguments, course.value(), files.value());
    }
    return CourseMarker(book, course.value(), sink).mark(files.value());
}

} // namespace gusset::cli
