#include "exchange/lessons/lesson_file.hpp"

#include "exchange/files/named_things.hpp"
#include "exchange/json/json_text.hpp"
#include "phrases/faults/exercises.hpp"
#include "phrases/faults/reading.hpp"

#include <algorithm>
#include <array>
#include <variant>

namespace gusset {

namespace {

constexpr std::array<std::string_view, 7> kShownWords{
    "forces", "member", "section", "displacement", "force-method", "polygon", "influence"};
constexpr WordList kAxes{"x", "y"};
constexpr WordList kValues{"shown", "hidden"};

class LessonReader {
public:
    LessonReader(const Truss& truss, IssueList& issues) : things_{truss, issues}, issues_(issues) {}

    LessonPlan read(const JsonValue& value) {
        ObjectReader object(value, "lesson", issues_);
        LessonPlan plan;
        const std::vector<JsonValue>& items = object.list("shows", true);
        for (std::size_t i = 0; i < items.size() && !issues_.isFull(); ++i) {
            plan.items.push_back(readItem(items[i], "lesson.shows[" + std::to_string(i) + "]"));
        }
        plan.hidesValues = object.word("values", kValues, 0) == 1;
        return plan;
    }

private:
    LessonItem readItem(const JsonValue& value, const std::string& place) {
        LessonItem item;
        if (value.kind == JsonValue::Kind::Text) {
            JsonValue object{JsonValue::Kind::Object, {}, {}, {}, {}, {}};
            object.members.emplace_back("of", value);
            ObjectReader alone(object, place, issues_);
            item.shown = readShown(alone);
            return item;
        }
        ObjectReader object(value, place, issues_);
        item.shown = readShown(object);
        for (const JsonValue& subject : object.list("without")) {
            item.without.push_back(subject.text);
        }
        for (const JsonValue& subject : object.list("joined")) {
            item.joined.push_back(subject.text);
        }
        readOrder(object, item);
        const std::vector<JsonValue>& pauses = object.list("pauses");
        for (std::size_t i = 0; i < pauses.size() && !issues_.isFull(); ++i) {
            item.pauses.push_back(
                readPause(pauses[i], object.placeOf("pauses") + "[" + std::to_string(i) + "]"));
        }
        return item;
    }

    void readOrder(ObjectReader& object, LessonItem& item) {
        for (const JsonValue& joint : object.list("order")) {
            item.order.push_back(things_.joint(joint.text, object.placeOf("order")));
        }
        const bool isByJoints = std::holds_alternative<ShowAll>(item.shown) ||
                                std::holds_alternative<ShowMember>(item.shown);
        if (!item.order.empty() && !isByJoints) {
            issues_.error(IssueCode::OutOfRange, object.placeOf("order"), phrase::kOrderOfNoJoints);
        }
    }

    Shown readShown(ObjectReader& object) {
        std::string word;
        object.read("of", true, word);
        if (word == kShownWords[0]) {
            return ShowAll{};
        }
        if (word == kShownWords[1]) {
            return ShowMember{things_.memberUnder(object, "member")};
        }
        if (word == kShownWords[2]) {
            return readCut(object);
        }
        if (word == kShownWords[3]) {
            ShowDisplacement shown;
            shown.joint = things_.jointUnder(object, "joint");
            shown.horizontal = object.word("axis", kAxes, 1) == 0;
            return shown;
        }
        if (word == kShownWords[4]) {
            return ShowForceMethod{};
        }
        if (word == kShownWords[5]) {
            return ShowPolygon{};
        }
        if (word == kShownWords[6]) {
            ShowInfluence shown;
            shown.path = things_.pathUnder(object, "path");
            shown.effect.member = things_.memberUnder(object, "member");
            return shown;
        }
        sayUnknown(object, word);
        return ShowAll{};
    }

    ShowCut readCut(ObjectReader& object) {
        ShowCut shown;
        for (const JsonValue& member : object.list("members", true)) {
            shown.members.push_back(things_.member(member, object.placeOf("members")));
        }
        if (shown.members.empty()) {
            issues_.error(IssueCode::Missing, object.placeOf("members"), phrase::kNothingAsked);
        }
        return shown;
    }

    void sayUnknown(const ObjectReader& object, const std::string& word) {
        std::string words;
        for (const std::string_view each : kShownWords) {
            words += (words.empty() ? "\"" : ", \"") + std::string(each) + "\"";
        }
        issues_.error(IssueCode::OutOfRange, object.placeOf("of"),
                      statement(phrase::kUnknownWord, {{"word", word}, {"words", words}}));
    }

    LessonPause readPause(const JsonValue& value, const std::string& place) {
        ObjectReader object(value, place, issues_);
        LessonPause pause;
        object.read("before", false, pause.before);
        object.read("says", false, pause.says);
        if (object.has("asks")) {
            pause.asks = things_.memberUnder(object, "asks");
        }
        return pause;
    }

    NamedThings things_;
    IssueList& issues_;
};

class LessonWriter {
public:
    explicit LessonWriter(const Truss& truss) : truss_(truss) {}

    std::string write(const LessonPlan& plan) {
        out_.beginObject();
        out_.objects("shows", plan.items, [&](const LessonItem& item) {
            out_.text("of", kShownWords[item.shown.index()]);
            std::visit([&](const auto& shown) { writeShown(shown); }, item.shown);
            if (!item.without.empty()) {
                out_.texts("without", item.without);
            }
            if (!item.joined.empty()) {
                out_.texts("joined", item.joined);
            }
            if (!item.order.empty()) {
                out_.texts("order", labelsOf(item.order));
            }
            if (!item.pauses.empty()) {
                out_.objects("pauses", item.pauses,
                             [&](const LessonPause& pause) { writePause(pause); });
            }
        });
        if (plan.hidesValues) {
            out_.text("values", kValues[1]);
        }
        out_.endObject();
        return out_.take();
    }

private:
    template <class Plain>
    void writeShown(const Plain&) {}
    void writeShown(const ShowMember& shown) { writeMember("member", shown.member); }
    void writeShown(const ShowCut& shown) {
        out_.key("members");
        out_.beginArray();
        for (const MemberId member : shown.members) {
            writeEnds(member);
        }
        out_.endArray();
    }
    void writeShown(const ShowDisplacement& shown) {
        out_.text("joint", labelOf(shown.joint));
        out_.text("axis", kAxes[shown.horizontal ? 0 : 1]);
    }
    void writeShown(const ShowInfluence& shown) {
        out_.texts("path", labelsOf(shown.path));
        writeMember("member", shown.effect.member);
    }

    void writePause(const LessonPause& pause) {
        if (!pause.before.empty()) {
            out_.text("before", pause.before);
        }
        if (!pause.says.empty()) {
            out_.text("says", pause.says);
        }
        if (pause.asks.valid()) {
            writeMember("asks", pause.asks);
        }
    }

    void writeMember(const char* key, MemberId member) {
        out_.key(key);
        writeEnds(member);
    }
    void writeEnds(MemberId id) {
        out_.beginArray();
        out_.text(labelOf(truss_.members[id.at()].a));
        out_.text(labelOf(truss_.members[id.at()].b));
        out_.endArray();
    }
    [[nodiscard]] std::vector<std::string> labelsOf(const std::vector<JointId>& joints) const {
        std::vector<std::string> labels;
        for (const JointId joint : joints) {
            labels.push_back(labelOf(joint));
        }
        return labels;
    }
    [[nodiscard]] const std::string& labelOf(JointId joint) const {
        return truss_.joints[joint.at()].label;
    }

    const Truss& truss_;
    JsonText out_{Layout::Compact};
};

} // namespace

Outcome<LessonPlan> readLesson(const Truss& truss) {
    if (truss.lesson.empty()) {
        return LessonPlan{std::vector<LessonItem>(1), false};
    }
    const Outcome<JsonValue> parsed = parseJson(truss.lesson);
    if (!parsed) {
        return parsed.issues();
    }
    IssueList issues;
    LessonPlan plan = LessonReader(truss, issues).read(parsed.value());
    if (!issues.errors().empty()) {
        return issues.errors();
    }
    return plan;
}

std::string lessonText(const Truss& truss, const LessonPlan& plan) {
    return LessonWriter(truss).write(plan);
}

} // namespace gusset
