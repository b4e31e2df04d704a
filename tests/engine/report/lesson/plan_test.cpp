// A lesson as its author wants it: joints in another order, steps that go on with those before.

#include "exchange/lessons/lesson_file.hpp"
#include "report/lesson/shown.hpp"

#include "support/english.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <map>
#include <string>
#include <vector>

using namespace gusset;
using namespace gusset::support;

namespace {

Outcome<LessonShown> planned(const Truss& truss, LessonItem item) {
    return lessonFor(englishPhrases(), truss, {}, solve(truss, {}), item);
}

std::vector<JointId> jointsTaken(const LessonShown& lesson) {
    std::vector<JointId> joints;
    for (const Step& step : lesson.working.steps) {
        if (step.kind == StepKind::JointIntro) {
            joints.push_back(step.joint);
        }
    }
    return joints;
}

// By member.
std::map<std::size_t, double> valuesFound(const LessonShown& lesson) {
    std::map<std::size_t, double> values;
    for (const Step& step : lesson.working.steps) {
        for (const Found& found : step.found) {
            if (found.symbol.kind == SymbolKind::MemberForce) {
                values[found.symbol.member.at()] = found.value;
            }
        }
    }
    return values;
}

Truss leaningGable() { // no symmetry, so that every joint is taken
    Truss truss = gable();
    truss.joints[jointAt(truss, "C")].at.x = 3;
    return truss;
}

JointId jointNamed(const Truss& truss, const std::string& label) {
    return {static_cast<int>(jointAt(truss, label))};
}

std::string refusalOf(const Outcome<LessonShown>& lesson) {
    REQUIRE(!lesson);
    return english(lesson.issues().front());
}

} // namespace

TEST_CASE("a lesson takes a joint that can be solved before another, and finds the same forces") {
    int orders = 0;
    for (const Truss& truss : exampleTrusses()) {
        const Outcome<LessonShown> usual = planned(truss, {});
        REQUIRE(usual);
        const std::vector<JointId> taken = jointsTaken(usual.value());
        for (const JointId first : taken) {
            LessonItem item;
            item.order = {first};
            const Outcome<LessonShown> lesson = planned(truss, item);
            if (!lesson) { // at most as many unknowns as a joint gives
                CHECK(english(lesson.issues().front()).find(truss.joints[first.at()].label) !=
                      std::string::npos);
                continue;
            }
            INFO(truss.title << ", first " << truss.joints[first.at()].label);
            CHECK(jointsTaken(lesson.value()).front() == first);
            const std::map<std::size_t, double> values = valuesFound(lesson.value());
            const std::map<std::size_t, double> same = valuesFound(usual.value());
            REQUIRE(values.size() == same.size());
            for (const auto& [member, value] : values) {
                CHECK(std::abs(value - same.at(member)) <= 0.01 * (1 + std::abs(value)));
            }
            ++orders;
        }
    }
    CHECK(orders > 10); // most examples are symmetric, and take few joints
}

TEST_CASE("a joint that can't be solved yet is refused, and what is unknown there is named") {
    const Truss truss = exampleTrusses()[1]; // the garden pavilion: two struts end at its king post
    std::vector<int> members(truss.joints.size());
    for (const Member& member : truss.members) {
        ++members[member.a.at()];
        ++members[member.b.at()];
    }
    const auto most = std::max_element(members.begin(), members.end());
    REQUIRE(*most > 2);
    LessonItem item;
    item.order = {JointId{static_cast<int>(most - members.begin())}};
    const std::string said = refusalOf(planned(truss, item));
    INFO(said);
    CHECK(said.find("Joint " + truss.joints[item.order.front().at()].label) != std::string::npos);
    CHECK(said.find("F_") != std::string::npos);
    CHECK(said.find("Take another joint first") != std::string::npos);
}

TEST_CASE("a joint that the order reaches when nothing is left to find there is passed over") {
    const Truss truss = leaningGable();
    LessonItem item;
    for (const char* label : {"C", "B", "A"}) {
        item.order.push_back(jointNamed(truss, label));
    }
    const Outcome<LessonShown> lesson = planned(truss, item);
    REQUIRE(lesson);
    // Three members: C gives two of them, B the third.
    CHECK(jointsTaken(lesson.value()) ==
          std::vector<JointId>{item.order.begin(), item.order.begin() + 2});
}

TEST_CASE("a step goes on with the one before it on the same stage, and nothing is lost") {
    const Truss truss = leaningGable();
    const Outcome<LessonShown> apart = planned(truss, {});
    REQUIRE(apart);
    LessonItem item;
    item.joined = {"joint-sum A y"};
    const Outcome<LessonShown> lesson = planned(truss, item);
    REQUIRE(lesson);
    const auto named = [](const LessonShown& shown, const std::string& subject) {
        return std::find_if(shown.steps.begin(), shown.steps.end(),
                            [&](const LessonStep& step) { return step.subject == subject; });
    };
    const auto first = named(apart.value(), "joint A");
    const auto second = named(apart.value(), "joint-sum A y");
    REQUIRE(first != apart.value().steps.end());
    REQUIRE(second != apart.value().steps.end());
    REQUIRE(second == first + 1);
    CHECK(lesson.value().steps.size() + 1 == apart.value().steps.size());
    const auto joined = named(lesson.value(), "joint A");
    CHECK(named(lesson.value(), "joint-sum A y") == lesson.value().steps.end());
    CHECK(joined->strokes.size() == first->strokes.size() + second->strokes.size());
    CHECK(joined->lines.size() == first->lines.size() + second->lines.size());
    REQUIRE(joined->joined.size() == 1);
    const std::size_t begins = joined->joined.front().stroke;
    CHECK(begins == first->strokes.size());
    CHECK(plainText(titleAt(*joined, begins - 1)) == plainText(first->title));
    CHECK(plainText(titleAt(*joined, begins)) == plainText(second->title));
    CHECK(joined->strokes.back().told.size() == second->strokes.back().told.size());
    CHECK(workingStepsOf(*joined) == std::vector<std::size_t>{*first->step, *second->step});
}

TEST_CASE("steps with different drawings are not joined, and both are named") {
    const Truss truss = leaningGable();
    const Outcome<LessonShown> apart = planned(truss, {});
    REQUIRE(apart);
    const JointId second = jointsTaken(apart.value()).at(1);
    LessonItem item;
    item.joined = {"joint " + truss.joints[second.at()].label};
    const std::string said = refusalOf(planned(truss, item));
    INFO(said);
    CHECK(said.find("“Joint " + truss.joints[second.at()].label + "”") != std::string::npos);
}

TEST_CASE("order and joined steps come back from the model's text as they were written") {
    Truss truss = gable();
    LessonPlan plan{std::vector<LessonItem>(2), false};
    plan.items[0].order = {JointId{1}, JointId{0}};
    plan.items[0].joined = {"joint-sum A x"};
    plan.items[1].shown = ShowMember{MemberId{0}};
    plan.items[1].order = {JointId{1}};
    truss.lesson = lessonText(truss, plan);
    const Outcome<LessonPlan> read = readLesson(truss);
    REQUIRE(read);
    CHECK(read.value().items[0].order == plan.items[0].order);
    CHECK(read.value().items[0].joined == plan.items[0].joined);
    CHECK(read.value().items[1].order == plan.items[1].order);
    CHECK(lessonText(truss, read.value()) == truss.lesson);
}

TEST_CASE("an order of joints is refused where it means nothing, or names none") {
    Truss truss = gable();
    for (const char* lesson : {R"({"shows":[{"of":"polygon","order":["A"]}]})",
                               R"({"shows":[{"of":"forces","order":["Zoe"]}]})"}) {
        truss.lesson = lesson;
        const Outcome<LessonPlan> read = readLesson(truss);
        INFO(lesson);
        REQUIRE(!read);
        CHECK(english(read.issues().front().at).find("order") != std::string::npos);
    }
}
