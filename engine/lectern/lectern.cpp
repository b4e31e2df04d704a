#include "lectern/lectern.hpp"

#include "classroom/exercise/key.hpp"
#include "classroom/exercise/typed_answer.hpp"
#include "desk/given.hpp"
#include "exchange/json/json_text.hpp"
#include "exchange/json/json_value.hpp"
#include "exchange/json/language_file.hpp"
#include "exchange/lessons/lesson_file.hpp"
#include "exchange/links/link.hpp"
#include "lectern/handed_on.hpp"
#include "lectern/opened.hpp"
#include "phrases/working/lesson.hpp"
#include "report/formula/notation.hpp"
#include "report/lesson/captions.hpp"
#include "report/sketch/sketch_svg.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace gusset {

namespace {

// The largest screen that a stage is laid out for, px.
constexpr double kLargestStage = 8192;
constexpr double kSmallestStage = 120;

struct Place {
    std::size_t item = 0;
    std::size_t step = 0;
    std::size_t stroke = 0;
};

std::optional<Place> placeUnder(const JsonValue& request, const Opened& opened) {
    const auto item = indexUnder(request, "item", opened.lessons.size());
    if (!item) {
        return std::nullopt;
    }
    const std::vector<LessonStep>& steps = opened.lessons[*item].steps;
    const auto step = indexUnder(request, "step", steps.size());
    if (!step) {
        return std::nullopt;
    }
    const auto stroke = indexUnder(request, "stroke", steps[*step].strokes.size());
    return stroke ? std::optional(Place{*item, *step, *stroke}) : std::nullopt;
}

// The step of a lesson that finds a symbol, before the summary.
std::optional<std::size_t> findingStep(const LessonShown& lesson, const Symbol& symbol) {
    for (std::size_t i = 0; i < lesson.steps.size(); ++i) {
        for (const std::size_t part : workingStepsOf(lesson.steps[i])) {
            const std::vector<Found>& found = lesson.working.steps[part].found;
            if (std::any_of(found.begin(), found.end(),
                            [&](const Found& each) { return each.symbol == symbol; })) {
                return i;
            }
        }
    }
    return std::nullopt;
}

// What the step takes from earlier ones, so that a reader can ask why.
void writeUses(JsonText& out, const PhraseBook& book, const LessonShown& lesson,
               const LessonStep& step) {
    const Notation notation = notationOf({book, lesson.truss}, lesson.working);
    std::vector<Symbol> used;
    for (const std::size_t part : workingStepsOf(step)) {
        for (const Symbol& symbol : lesson.working.steps[part].uses) {
            if (std::find(used.begin(), used.end(), symbol) == used.end()) {
                used.push_back(symbol);
            }
        }
    }
    out.key("uses");
    out.beginArray();
    for (const Symbol& symbol : used) {
        const auto found = findingStep(lesson, symbol);
        if (found && &lesson.steps[*found] != &step) {
            out.beginObject();
            out.text("says", plainText(symbolRuns(notation, symbol)));
            out.whole("step", static_cast<long>(*found));
            out.endObject();
        }
    }
    out.endArray();
}

// For each member, where its force is found; −1: nowhere.
void writeFindings(JsonText& out, const LessonShown& lesson) {
    out.key("found");
    out.beginArray();
    for (std::size_t i = 0; i < lesson.truss.members.size(); ++i) {
        const auto found = findingStep(
            lesson, {.kind = SymbolKind::MemberForce, .member = MemberId{static_cast<int>(i)}});
        out.whole(found ? static_cast<long>(*found) : -1);
    }
    out.endArray();
}

// In the order in which the working takes them.
std::vector<std::string> jointsTaken(const LessonShown& lesson) {
    std::vector<std::string> joints;
    for (const Step& step : lesson.working.steps) {
        if (step.kind == StepKind::JointIntro) {
            joints.push_back(lesson.truss.joints[step.joint.at()].label);
        }
    }
    return joints;
}

void writeStep(JsonText& out, const PhraseBook& book, const LessonShown& lesson,
               const LessonStep& step) {
    out.text("subject", step.subject);
    out.text("title", plainText(step.title));
    if (step.moves) {
        out.yes("moves");
    }
    if (step.strokes.back().traced) {
        out.yes("traces");
    }
    if (!step.joined.empty()) {
        out.objects("joined", step.joined, [&](const JoinedPart& part) {
            out.text("subject", part.subject);
            out.text("title", plainText(part.title));
            out.whole("stroke", static_cast<long>(part.stroke));
        });
    }
    writeUses(out, book, lesson, step);
    std::vector<std::string> spoken;
    for (const Stroke& stroke : step.strokes) {
        spoken.push_back(stroke.spoken);
    }
    out.texts("strokes", spoken);
}

std::string writeOpened(const PhraseBook& book, const Opened& opened) {
    JsonText out(Layout::Compact);
    out.beginObject();
    out.text("title", opened.truss.title);
    out.text("model", writeModel(opened.truss, Layout::Compact));
    out.key("plan");
    out.json(lessonText(opened.truss, opened.plan));
    out.objects("lessons", opened.lessons, [&](const LessonShown& lesson) {
        out.objects("steps", lesson.steps,
                    [&](const LessonStep& step) { writeStep(out, book, lesson, step); });
        writeFindings(out, lesson);
        out.texts("joints", jointsTaken(lesson));
    });
    std::vector<std::string> joints;
    for (const Joint& joint : opened.truss.joints) {
        joints.push_back(joint.label);
    }
    out.texts("joints", joints);
    out.key("members");
    out.beginArray();
    for (const Member& member : opened.truss.members) {
        out.beginArray();
        out.text(opened.truss.joints[member.a.at()].label);
        out.text(opened.truss.joints[member.b.at()].label);
        out.endArray();
    }
    out.endArray();
    std::vector<std::string> questions;
    for (std::size_t i = 0; i < opened.truss.members.size(); ++i) {
        questions.push_back(
            sayPlain(book, phrase::kWhatIsTheForce,
                     {{"member", memberName(opened.truss, MemberId{static_cast<int>(i)})}}));
    }
    out.texts("questions", questions);
    out.text("forceUnit", symbolOf(opened.truss.units.force));
    out.endObject();
    return out.take();
}

std::string paceOf(const JsonValue& request) {
    JsonText out(Layout::Compact);
    out.beginObject();
    out.number("seconds", secondsFor(textUnder(request, "says")));
    out.endObject();
    return out.take();
}

} // namespace

struct Lectern::State {
    PhraseBook book;
    std::optional<Opened> opened{};

    std::string open(const JsonValue& request);
    std::string stage(const JsonValue& request) const;
    std::string plan(const JsonValue& request) const;
    std::string move(const JsonValue& request) const;
    std::string answer(const JsonValue& request) const;
    std::string animation(const JsonValue& request) const;
    std::string speak(const JsonValue& request);
    std::string captions(const JsonValue& request) const;
    std::string nothing() const {
        return refusalOf(book, {{IssueCode::Missing, "item", phrase::kNoSuchPlace}});
    }
};

std::string Lectern::State::open(const JsonValue& request) {
    Outcome<Opened> made = openLesson(book, textUnder(request, "model"));
    if (!made) {
        return refusalOf(book, made.issues()); // what was open stays so
    }
    opened = std::move(made).value();
    return writeOpened(book, *opened);
}

// Before a lesson is opened: what is open was derived in the language before.
std::string Lectern::State::speak(const JsonValue& request) {
    const Outcome<PhraseBook> language = readLanguage(textUnder(request, "language"));
    if (!language) {
        return refusalOf(book, language.issues());
    }
    book = language.value();
    return "{}";
}

std::string Lectern::State::animation(const JsonValue& request) const {
    const auto place = placeUnder(request, *opened);
    return place ? animationReply(book, *opened, place->item, place->step, request) : nothing();
}

std::string Lectern::State::stage(const JsonValue& request) const {
    const auto place = placeUnder(request, *opened);
    if (!place) {
        return nothing();
    }
    const auto side = [&](std::string_view key) {
        return std::clamp(numberUnder(request, key, 1366), kSmallestStage, kLargestStage);
    };
    const StagePicture made =
        stageOf(book, opened->lessons[place->item],
                {place->step, place->stroke, isYes(request, "hides") || opened->plan.hidesValues,
                 numberUnder(request, "phase", 0.25),
                 std::clamp(numberUnder(request, "along", 1), 0.0, 1.0)},
                {side("width"), side("height")});
    JsonText out(Layout::Compact);
    out.beginObject();
    out.text("svg", svgOf(made.sketch));
    if (made.board) {
        out.object("board", [&] {
            out.number("x", made.board->origin.x);
            out.number("y", made.board->origin.y);
            out.number("scale", made.board->scale);
            out.key("joints");
            out.beginArray();
            for (const Joint& joint : opened->truss.joints) {
                out.beginArray();
                out.number(joint.at.x);
                out.number(joint.at.y);
                out.endArray();
            }
            out.endArray();
        });
    }
    out.endObject();
    return out.take();
}

std::string Lectern::State::plan(const JsonValue& request) const {
    Truss truss = opened->truss;
    const JsonValue* asked = request.find("plan");
    truss.lesson = asked ? jsonText(*asked) : std::string();
    const Outcome<LessonPlan> read = readLesson(truss);
    if (!read) {
        return refusalOf(book, read.issues());
    }
    truss.lesson = lessonText(truss, read.value());
    if (const Outcome<Opened> kept = openLesson(book, truss, opened->loads); !kept) {
        return refusalOf(book, kept.issues());
    }
    const Outcome<std::string> link = openableLink(truss, opened->loads);
    if (!link) {
        return refusalOf(book, link.issues());
    }
    JsonText out(Layout::Compact);
    out.beginObject();
    out.text("model", writeModel(truss, Layout::Compact));
    out.text("link", link.value());
    out.endObject();
    return out.take();
}

std::string Lectern::State::move(const JsonValue& request) const {
    const JointId joint = findJoint(opened->truss, textUnder(request, "joint"));
    const Vec2 at{numberUnder(request, "x", NAN), numberUnder(request, "y", NAN)};
    if (!joint.valid() || !std::isfinite(at.x) || !std::isfinite(at.y)) {
        return nothing();
    }
    Truss truss = opened->truss;
    truss.joints[joint.at()].at = at;
    JsonText out(Layout::Compact);
    out.beginObject();
    out.text("model", writeModel(truss, Layout::Compact));
    out.endObject();
    return out.take();
}

std::string Lectern::State::answer(const JsonValue& request) const {
    const auto member = indexUnder(request, "member", opened->truss.members.size());
    if (!member) {
        return nothing();
    }
    const MemberId asked{static_cast<int>(*member)};
    Exercise exercise;
    exercise.loads = opened->loads;
    exercise.questions.push_back({AskForces{{asked}}, 0});
    const Outcome<AnswerKey> key = keyOf(opened->truss, exercise);
    if (!key) {
        return refusalOf(book, key.issues());
    }
    const Outcome<WrittenForce> written =
        readWritten(textUnder(request, "typed"), opened->truss.units.force);
    if (!written) {
        return refusalOf(book, written.issues());
    }
    const std::optional<double> value = valueOf(written.value());
    if (!value) {
        return refusalOf(book, {{IssueCode::Missing, "typed", phrase::kSayTensionOrCompression}});
    }
    const double truth = key.value().forces[*member];
    JsonText out(Layout::Compact);
    out.beginObject();
    if (std::fabs(*value - truth) <= allowance(exercise.tolerance, truth, key.value().largest)) {
        out.yes("right");
    }
    out.endObject();
    return out.take();
}

std::string Lectern::State::captions(const JsonValue& request) const {
    std::vector<Caption> captions;
    const JsonValue* shown = request.find("shown");
    std::string chapter;
    for (const JsonValue& each : shown ? shown->items : std::vector<JsonValue>()) {
        const std::string about = textUnder(each, "about");
        captions.push_back({numberUnder(each, "from"), numberUnder(each, "to"),
                            textUnder(each, "says"),
                            about == chapter ? std::string() : textUnder(each, "title")});
        chapter = about;
    }
    if (captions.empty()) {
        captions = captionsAtReadingPace(opened->lessons);
    }
    JsonText out(Layout::Compact);
    out.beginObject();
    out.text("captions", captionsVtt(captions));
    out.text("chapters", chaptersVtt(captions));
    out.text("list", chapterList(captions));
    out.text("transcript", transcript(captions));
    out.endObject();
    return out.take();
}

Lectern::Lectern(const PhraseBook& book) : state_(new State{book, {}}) {}
Lectern::~Lectern() = default;

std::string Lectern::reply(std::string_view json) {
    const Outcome<JsonValue> request = parseJson(json);
    if (!request) {
        return refusalOf(state_->book, request.issues());
    }
    const JsonValue& value = request.value();
    const std::string wants = textUnder(value, "do");
    if (wants == "open") {
        return state_->open(value);
    }
    if (wants == "speak") {
        return state_->speak(value);
    }
    if (!state_->opened) {
        return state_->nothing();
    }
    const State& state = *state_;
    return wants == "stage"       ? state.stage(value)
           : wants == "plan"      ? state.plan(value)
           : wants == "move"      ? state.move(value)
           : wants == "answer"    ? state.answer(value)
           : wants == "slides"    ? slidesReply(state.book, *state.opened, value)
           : wants == "picture"   ? pictureReply(state.book, *state.opened, value)
           : wants == "zip"       ? zipReply(state.book, value)
           : wants == "animation" ? state.animation(value)
           : wants == "captions"  ? state.captions(value)
           : wants == "pace"      ? paceOf(value)
                                  : state.nothing();
}

} // namespace gusset
