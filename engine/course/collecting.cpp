#include "course/collecting.hpp"

#include "classroom/exercise/key.hpp"
#include "course/marked_slips.hpp"
#include "course/request.hpp"
#include "exchange/exercises/answers_file.hpp"
#include "exchange/exercises/class_list.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/exercises/handed_in.hpp"
#include "phrases/faults/class_lists.hpp"
#include "phrases/faults/exercises.hpp"
#include "report/classroom/marking_text.hpp"
#include "report/results/solution_text.hpp"

#include <algorithm>
#include <map>
#include <memory>
#include <utility>

namespace gusset {

namespace {

// One exercise of the course, or one variant, and what was handed in for it. Schemes refer to the
// truss and the exercise, which therefore stay where they are.
struct Exam {
    AskedTruss asked;
    std::size_t index = 0; // in the request
    std::string mark{};
    std::optional<MarkingScheme> scheme{};
};
struct HandedIn {
    const Exam* exam = nullptr;
    std::string sheet; // the name it came with
    MarkedSheet marked;
};

class Collector {
public:
    Collector(const PhraseBook& book, std::vector<std::unique_ptr<Exam>> exams)
        : book_(book), exams_(std::move(exams)) {}

    void take(const std::string& name, std::string_view text) {
        switch (kindOfHandedIn(text)) {
        case HandedInAs::Links:
            takeLinks(name, text);
            break;
        case HandedInAs::Sheet:
            takeOne(name, name, text);
            break;
        case HandedInAs::Table:
            takeTable(name, text);
        }
    }
    [[nodiscard]] const std::vector<HandedIn>& sheets() const { return sheets_; }
    [[nodiscard]] const std::vector<std::string>& notes() const { return notes_; }

private:
    struct Place {
        std::string name; // of the file
        std::string place;
    };

    void takeLinks(const std::string& name, std::string_view text) {
        for (const LinkedSheet& sheet : linkedSheets(text)) {
            const std::string place = name + ", " + said(book_, placeOfRow(sheet.row));
            if (sheet.json) {
                takeOne(name, place, sheet.json.value());
            } else {
                note(place, sheet.json.issues());
            }
        }
    }

    void takeOne(const std::string& name, const std::string& place, std::string_view json) {
        const Exam& exam = examOf(json);
        const Outcome<Answers> answers = readAnswers(exam.asked.truss, exam.asked.exercise, json);
        if (!answers) {
            return note(place, answers.issues());
        }
        noteCode(exam, name, place, answers.value().code, false);
        keep(exam, name, answers.value().code, answers.value());
    }

    // The first one if it is for none of them: reading then says so.
    const Exam& examOf(std::string_view json) const {
        const Outcome<JsonValue> value = parseJson(json);
        const std::string mark = value ? textUnder(value.value(), "exercise") : std::string();
        const auto found = std::find_if(exams_.begin(), exams_.end(),
                                        [&](const auto& exam) { return exam->mark == mark; });
        return found == exams_.end() ? *exams_.front() : **found;
    }

    // A table may hold the rows of all variants: a row is refused only if it is for none of them.
    void takeTable(const std::string& name, std::string_view table) {
        std::map<std::string, std::size_t> refusals;
        for (const auto& exam : exams_) {
            const Outcome<ClassList> list =
                readClassList(exam->asked.truss, exam->asked.exercise, exam->mark, table);
            if (!list) {
                return note(name, list.issues());
            }
            for (const ClassRow& row : list.value().rows) {
                noteCode(*exam, name, name + ", " + said(book_, placeOfRow(row.number)), row.code,
                         true);
                keep(*exam, name, row.code, row.answers);
            }
            for (const Issue& issue : list.value().notes) {
                ++refusals[name + ", " + faultLine(book_, issue)];
            }
        }
        for (const auto& [sentence, times] : refusals) {
            if (times == exams_.size()) {
                notes_.push_back(sentence);
            }
        }
    }

    // Two in one table of one exercise, its reader has told of.
    void noteCode(const Exam& exam, const std::string& name, const std::string& place,
                  const std::string& code, bool isOfTable) {
        const auto [at, isNew] = places_.try_emplace({&exam, code}, Place{name, place});
        const bool isTold = isOfTable && exams_.size() == 1 && at->second.name == name;
        if (!isNew && !code.empty() && !isTold) {
            notes_.push_back(place + ": " +
                             said(book_, statement(phrase::kCodeElsewhere,
                                                   {{"code", code}, {"place", at->second.place}})));
        }
    }
    void keep(const Exam& exam, const std::string& name, const std::string& code,
              const Answers& answers) {
        sheets_.push_back({&exam, name, {code, answers, exam.scheme->mark(answers)}});
    }
    void note(const std::string& place, const Issues& issues) {
        for (const Issue& issue : issues) {
            notes_.push_back(place + ": " + faultSentence(book_, issue));
        }
    }

    const PhraseBook& book_;
    std::vector<std::unique_ptr<Exam>> exams_;
    std::vector<HandedIn> sheets_;
    std::vector<std::string> notes_;
    std::map<std::pair<const Exam*, std::string>, Place> places_; // where each code was first
};

Outcome<std::vector<std::unique_ptr<Exam>>> examsOf(const JsonValue& request) {
    Outcome<std::vector<AskedTruss>> all = readAllAsked(request);
    if (!all) {
        return all.issues();
    }
    std::vector<std::unique_ptr<Exam>> exams;
    for (AskedTruss& asked : std::move(all).value()) {
        auto exam = std::make_unique<Exam>(Exam{std::move(asked), exams.size()});
        exam->mark = exerciseMark(exam->asked.truss);
        const Outcome<AnswerKey> key = keyOf(exam->asked.truss, exam->asked.exercise);
        if (!key) {
            return key.issues();
        }
        exam->scheme.emplace(exam->asked.truss, exam->asked.exercise, key.value());
        exams.push_back(std::move(exam));
    }
    return exams;
}

void writeSheet(JsonText& out, const PhraseBook& book, const HandedIn& sheet) {
    const MarkedSheet& marked = sheet.marked;
    out.text("sheet", sheet.sheet);
    out.text("code", marked.code);
    out.whole("model", static_cast<long>(sheet.exam->index));
    out.whole("variant", sheet.exam->asked.exercise.variant);
    out.number("marks", marked.marking.marks);
    out.number("outOf", marked.marking.outOf);
    const Writer writer{book, sheet.exam->asked.truss};
    writeSlips(out, writer, marked.marking);
    out.texts("feedback", feedback(writer, marked.marking, marked.answers));
}

} // namespace

Issues markHandedIn(const CourseWish& wish, JsonText& out) {
    Outcome<std::vector<std::unique_ptr<Exam>>> exams = examsOf(wish.request);
    if (!exams) {
        return exams.issues();
    }
    Collector collector(wish.book, std::move(exams).value());
    for (const JsonValue& sheet : itemsUnder(wish.request, "sheets")) {
        collector.take(textUnder(sheet, "name"), textUnder(sheet, "text"));
    }
    out.objects("sheets", collector.sheets(),
                [&](const HandedIn& sheet) { writeSheet(out, wish.book, sheet); });
    out.texts("notes", collector.notes());
    out.texts("rule", markingRule(wish.book));
    if (!collector.sheets().empty()) {
        std::vector<MarkedSheet> marked;
        for (const HandedIn& sheet : collector.sheets()) {
            marked.push_back(sheet.marked);
        }
        const Truss& truss = collector.sheets().front().exam->asked.truss;
        out.text("csv", classCsv({wish.book, truss}, marked));
    }
    return {};
}

} // namespace gusset
