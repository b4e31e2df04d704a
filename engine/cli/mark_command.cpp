#include "cli/mark_command.hpp"

#include "cli/input.hpp"
#include "exchange/exercises/answers_file.hpp"
#include "exchange/exercises/class_list.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "phrases/faults/class_lists.hpp"
#include "report/classroom/marking_text.hpp"

#include <algorithm>

namespace gusset::cli {

namespace {

// With the file in front of each place, as there may be several.
Issues inFile(const PhraseBook& book, const std::string& file, const Issues& issues) {
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

// Links to answers, one a line, as students hand them in. A line that can't be read is a note.
ClassList readLinks(const Truss& truss, const Exercise& exercise, std::string_view text) {
    ClassList list;
    std::size_t line = 0;
    while (!text.empty()) {
        const std::string_view link = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), link.size() + 1));
        ++line;
        if (link.find_first_not_of(" \t\r") == link.npos) {
            continue;
        }
        const Outcome<std::string> json = linkedAnswers(link);
        Outcome<Answers> answers =
            json ? readAnswers(truss, exercise, json.value()) : Outcome<Answers>(json.issues());
        if (answers) {
            list.rows.push_back({line, answers.value().code, answers.value()});
            continue;
        }
        for (Issue issue : answers.issues()) {
            issue.at = statement(phrase::kPlaceRow, {{"row", line}});
            list.notes.push_back(std::move(issue));
        }
    }
    return list;
}

// Answers of one student in a file of their own, or of a class in a table or as links.
Outcome<ClassList> readAnswersOf(const Truss& truss, const Exercise& exercise,
                                 const std::string& file) {
    const Outcome<std::string> text = readTextOf(file);
    if (!text) {
        return text.issues();
    }
    const std::size_t start = text.value().find_first_not_of(" \t\r\n\xEF\xBB\xBF");
    if (text.value().find(kAnswersLink) != std::string::npos) {
        return readLinks(truss, exercise, text.value());
    }
    if (start == std::string::npos || text.value()[start] != '{') {
        return readClassList(truss, exercise, exerciseMark(truss), text.value());
    }
    Outcome<Answers> answers = readAnswers(truss, exercise, text.value());
    if (!answers) {
        return answers.issues();
    }
    ClassList list;
    list.rows.push_back({1, answers.value().code, answers.value()});
    return list;
}

} // namespace

Answer answerMark(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Outcome<Exercise> exercise = readExercise(reading.truss);
    if (!exercise) {
        return {Exit::BadInput, {}, exercise.issues()};
    }
    Outcome<AnswerKey> key = keyOf(reading.truss, exercise.value());
    if (!key) {
        return {Exit::BadInput, {}, key.issues()};
    }
    const MarkingScheme scheme(reading.truss, exercise.value(), key.value());
    std::vector<MarkedSheet> sheets;
    Issues faults;
    for (const std::string& file : arguments.more) {
        const Outcome<ClassList> list = readAnswersOf(reading.truss, exercise.value(), file);
        const Issues notes = inFile(book, file, list ? list.value().notes : list.issues());
        faults.insert(faults.end(), notes.begin(), notes.end());
        if (list) {
            for (const ClassRow& row : list.value().rows) {
                sheets.push_back({row.code, row.answers, scheme.mark(row.answers)});
            }
        }
    }
    if (sheets.empty()) {
        return {Exit::BadInput, {}, faults};
    }
    const Writer writer{book, reading.truss};
    return {Exit::Answered,
            arguments.has("--text") ? classText(writer, sheets) : classCsv(writer, sheets), faults};
}

} // namespace gusset::cli
