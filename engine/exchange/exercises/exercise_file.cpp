#include "exchange/exercises/exercise_file.hpp"

#include "classroom/exercise/answers.hpp"
#include "exchange/files/model_file.hpp"
#include "exchange/files/named_things.hpp"
#include "exchange/files/object_reader.hpp"
#include "exchange/json/json_text.hpp"
#include "phrases/faults/exercises.hpp"
#include "phrases/faults/reading.hpp"

#include <algorithm>
#include <charconv>
#include <cstdio>
#include <zlib.h>

namespace gusset {

namespace {

constexpr WordList kHintList{kHintWords[0], kHintWords[1], kHintWords[2], kHintWords[3]};
constexpr WordList kCheckingWords{"at-once", "at-the-end"};
constexpr WordList kAxisWords{"x", "y"};
constexpr int kMostFigures = 12;

constexpr std::array<std::string_view, 7> kQuestionWords{
    "reactions", "forces", "zero-members", "determinacy", "displacement", "influence", "steps"};
constexpr std::size_t kForces = 1;
constexpr std::size_t kDisplacement = 4;
constexpr std::size_t kInfluence = 5;

class ExerciseReader {
public:
    ExerciseReader(const Truss& truss, IssueList& issues)
        : truss_(truss), things_{truss, issues}, issues_(issues) {}

    Exercise read(const JsonValue& value) {
        ObjectReader object(value, "exercise", issues_);
        Exercise exercise;
        object.read("text", false, exercise.text);
        readQuestions(object, exercise);
        readTolerance(object, exercise.tolerance);
        exercise.hints = static_cast<Hints>(
            object.word("hints", kHintList, static_cast<std::size_t>(exercise.hints)));
        exercise.checking = static_cast<Checking>(
            object.word("checks", kCheckingWords, static_cast<std::size_t>(exercise.checking)));
        readLoads(object, exercise.loads);
        double variant = 0;
        object.read("variant", false, variant);
        exercise.variant = variant >= 0 && variant < 1e9 ? static_cast<int>(variant) : 0;
        std::string seed;
        object.read("seed", false, seed);
        std::from_chars(seed.data(), seed.data() + seed.size(), exercise.seed);
        return exercise;
    }

private:
    void readQuestions(ObjectReader& object, Exercise& exercise) {
        const std::vector<JsonValue>& items = object.list("ask", true);
        for (std::size_t i = 0; i < items.size() && !issues_.isFull(); ++i) {
            const std::string place = "exercise.ask[" + std::to_string(i) + "]";
            Question question = readQuestion(items[i], place);
            const auto same = [&](const Question& other) { return other.what == question.what; };
            if (std::any_of(exercise.questions.begin(), exercise.questions.end(), same)) {
                issues_.error(IssueCode::Duplicate, place, phrase::kAskedTwice);
            }
            exercise.questions.push_back(std::move(question));
        }
        if (items.empty()) {
            issues_.error(IssueCode::Missing, "exercise.ask", phrase::kNothingAsked);
        }
    }

    Question readQuestion(const JsonValue& value, const std::string& place) {
        if (value.kind == JsonValue::Kind::Text) {
            JsonValue object{JsonValue::Kind::Object, {}, {}, {}, {}, {}};
            object.members.emplace_back("what", value);
            return readQuestionObject(object, place);
        }
        if (value.kind != JsonValue::Kind::Object) {
            issues_.error(IssueCode::WrongType, place, phrase::kQuestionIsTextOrObject);
            return {};
        }
        return readQuestionObject(value, place);
    }

    Question readQuestionObject(const JsonValue& value, const std::string& place) {
        ObjectReader object(value, place, issues_);
        Question question;
        std::string what;
        object.read("what", true, what);
        object.read("marks", false, question.marks);
        if (!(question.marks >= 0)) {
            issues_.error(IssueCode::OutOfRange, place + ".marks", phrase::kMarksNotNegative);
        }
        const auto word = std::find(kQuestionWords.begin(), kQuestionWords.end(), what);
        if (word == kQuestionWords.end()) {
            sayUnknown(place, what);
            return question;
        }
        setWhat(question, static_cast<std::size_t>(word - kQuestionWords.begin()), object);
        return question;
    }

    void sayUnknown(const std::string& place, const std::string& what) {
        std::string words;
        for (const std::string_view word : kQuestionWords) {
            words += (words.empty() ? "\"" : ", \"") + std::string(word) + "\"";
        }
        issues_.error(IssueCode::OutOfRange, place + ".what",
                      statement(phrase::kUnknownWord, {{"word", what}, {"words", words}}));
    }

    void setWhat(Question& question, std::size_t word, ObjectReader& object) {
        switch (word) {
        case 0:
            question.what = AskReactions{};
            break;
        case kForces:
            question.what = AskForces{askedMembers(object)};
            break;
        case 2:
            question.what = AskZeroMembers{};
            break;
        case 3:
            question.what = AskDeterminacy{};
            break;
        case kDisplacement: {
            AskDisplacement asked;
            asked.joint = things_.jointUnder(object, "joint");
            asked.axis = static_cast<Axis>(object.word("axis", kAxisWords, 1));
            question.what = asked;
            break;
        }
        case kInfluence:
            question.what = askedInfluence(object);
            break;
        default:
            question.what = AskSteps{};
        }
    }

    AskInfluence askedInfluence(ObjectReader& object) {
        AskInfluence asked;
        asked.path = things_.pathUnder(object, "path");
        asked.of = things_.memberUnder(object, "member");
        asked.at = things_.jointUnder(object, "at");
        if (asked.at.valid() &&
            std::find(asked.path.begin(), asked.path.end(), asked.at) == asked.path.end()) {
            issues_.error(
                IssueCode::OutOfRange, object.placeOf("at"),
                statement(phrase::kAtNotOnPath, {{"joint", truss_.joints[asked.at.at()].label}}));
        }
        return asked;
    }

    std::vector<MemberId> askedMembers(ObjectReader& object) {
        if (!object.has("members")) {
            return allMembers(truss_);
        }
        std::vector<MemberId> members;
        for (const JsonValue& value : object.list("members")) {
            const MemberId member = things_.member(value, object.placeOf("members"));
            if (std::find(members.begin(), members.end(), member) != members.end()) {
                issues_.error(IssueCode::Duplicate, object.placeOf("members"), phrase::kAskedTwice);
            }
            members.push_back(member);
        }
        if (members.empty()) {
            issues_.error(IssueCode::Missing, object.placeOf("members"), phrase::kNothingAsked);
        }
        return members;
    }

    void readTolerance(ObjectReader& object, Tolerance& tolerance) {
        double figures = 0;
        (void)object.inner("tolerance", [&](ObjectReader& within) {
            within.read("percent", false, tolerance.percent);
            within.read("floor", false, tolerance.floor);
            within.read("figures", false, figures);
        });
        limit("exercise.tolerance.percent", tolerance.percent, 100);
        limit("exercise.tolerance.floor", tolerance.floor, 100);
        limit("exercise.tolerance.figures", figures, kMostFigures);
        tolerance.figures = static_cast<int>(figures);
    }

    void limit(const char* place, double& value, int most) {
        if (!(value >= 0 && value <= most)) {
            issues_.error(IssueCode::OutOfRange, place,
                          statement(phrase::kToleranceRange, {{"most", most}}));
            value = 0;
        }
    }

    void readLoads(ObjectReader& object, LoadChoice& loads) {
        std::string name;
        object.read("case", false, name);
        if (!name.empty()) {
            loads = OneCase{name};
        }
        std::string combination;
        object.read("combination", false, combination);
        if (!combination.empty()) {
            loads = OneCombination{combination};
        }
        if (!isThere(truss_, loads)) {
            issues_.error(IssueCode::UnknownName, "exercise",
                          statement(phrase::kNoSuchLoads, {{"name", choiceName(loads)}}));
        }
    }

    const Truss& truss_;
    NamedThings things_;
    IssueList& issues_;
};

class ExerciseWriter {
public:
    explicit ExerciseWriter(const Truss& truss) : truss_(truss) {}

    std::string write(const Exercise& exercise) {
        out_.beginObject();
        if (!exercise.text.empty()) {
            out_.text("text", exercise.text);
        }
        out_.key("ask");
        out_.beginArray();
        for (const Question& question : exercise.questions) {
            out_.beginObject();
            out_.text("what", kQuestionWords[question.what.index()]);
            std::visit([&](const auto& what) { writeWhat(what); }, question.what);
            if (question.marks != 0) {
                out_.number("marks", question.marks);
            }
            out_.endObject();
        }
        out_.endArray();
        writeRules(exercise);
        out_.endObject();
        return out_.take();
    }

private:
    template <class Plain>
    void writeWhat(const Plain&) {}
    void writeWhat(const AskForces& asked) {
        if (asked.members.size() == truss_.members.size()) {
            return; // all of them
        }
        out_.key("members");
        out_.beginArray();
        for (const MemberId member : asked.members) {
            writeMember(member);
        }
        out_.endArray();
    }
    void writeWhat(const AskDisplacement& asked) {
        out_.text("joint", labelOf(asked.joint));
        out_.text("axis", wordOf(kAxisWords, asked.axis));
    }
    void writeWhat(const AskInfluence& asked) {
        std::vector<std::string> path;
        for (const JointId joint : asked.path) {
            path.push_back(labelOf(joint));
        }
        out_.texts("path", path);
        out_.key("member");
        writeMember(asked.of);
        out_.text("at", labelOf(asked.at));
    }

    void writeMember(MemberId id) {
        out_.beginArray();
        out_.text(labelOf(truss_.members[id.at()].a));
        out_.text(labelOf(truss_.members[id.at()].b));
        out_.endArray();
    }

    void writeRules(const Exercise& exercise) {
        if (exercise.tolerance != Tolerance{}) {
            out_.object("tolerance", [&] {
                if (exercise.tolerance.figures != 0) {
                    out_.whole("figures", exercise.tolerance.figures);
                } else {
                    out_.number("percent", exercise.tolerance.percent);
                }
                out_.number("floor", exercise.tolerance.floor);
            });
        }
        out_.text("hints", wordOf(kHintList, exercise.hints));
        out_.text("checks", wordOf(kCheckingWords, exercise.checking));
        if (const std::string name = choiceName(exercise.loads); !name.empty()) {
            out_.text(isOneCase(exercise.loads) ? "case" : "combination", name);
        }
        if (exercise.variant != 0) {
            out_.whole("variant", exercise.variant);
            out_.text("seed", std::to_string(exercise.seed));
        }
    }

    const std::string& labelOf(JointId id) const { return truss_.joints[id.at()].label; }

    const Truss& truss_;
    JsonText out_{Layout::Compact};
};

} // namespace

Outcome<Exercise> readExercise(const Truss& truss) {
    if (truss.exercise.empty()) {
        return Issue{IssueCode::Missing, phrase::kPlaceExercise, phrase::kNoExercise};
    }
    const Outcome<JsonValue> value = parseJson(truss.exercise);
    if (!value) {
        return value.issues();
    }
    IssueList issues;
    Exercise exercise = ExerciseReader(truss, issues).read(value.value());
    if (!issues.errors().empty()) {
        return issues.errors();
    }
    return exercise;
}

Outcome<Exercise> askedOf(const Truss& truss) {
    if (!truss.exercise.empty()) {
        return readExercise(truss);
    }
    Exercise everything;
    everything.questions = {{AskReactions{}, 0}, {AskForces{allMembers(truss)}, 0}};
    return everything;
}

std::string exerciseText(const Truss& truss, const Exercise& exercise) {
    return ExerciseWriter(truss).write(exercise);
}

std::string exerciseMark(const Truss& truss) {
    Truss bare = truss;
    bare.title.clear();
    bare.classSettings = {};
    const std::string text = writeModel(bare, Layout::Compact);
    const auto sum =
        crc32(0, reinterpret_cast<const Bytef*>(text.data()), static_cast<uInt>(text.size()));
    char digits[9];
    std::snprintf(digits, sizeof digits, "%08lx", static_cast<unsigned long>(sum));
    return digits;
}

} // namespace gusset
