#include "classroom/exercise/answer_names.hpp"
#include "classroom/exercise/key.hpp"
#include "classroom/exercise/typed_answer.hpp"
#include "classroom/practice/standing.hpp"
#include "classroom/practice/terms.hpp"
#include "exchange/exercises/answers_file.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/files/model_file.hpp"
#include "support/english.hpp"

#include <catch2/catch_approx.hpp>
#include <catch2/catch_test_macros.hpp>

#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

// A triangle over 8 m, 3 m high, with 12 kN down at the top C and 6 kN to the right there. By hand:
// moments about A: B_y = (12 · 4 + 6 · 3)/8 = 8.25, A_y = 3.75, A_x = −6. At B: BC = −8.25 · 5/3 =
// −13.75, AB = 13.75 · 4/5 = 11; at A: AC = −3.75 · 5/3 = −6.25.
std::string triangleAsking(const std::string& exercise) {
    return R"({"gusset":1,"joints":[{"id":"A","x":0,"y":0},{"id":"B","x":8,"y":0},)"
           R"({"id":"C","x":4,"y":3}],"members":[{"a":"A","b":"B"},{"a":"B","b":"C"},)"
           R"({"a":"C","b":"A"}],"supports":[{"joint":"A","kind":"pin"},)"
           R"({"joint":"B","kind":"roller","reaction":90}],)"
           R"("loads":[{"joint":"C","fx":6,"fy":-12}],"exercise":)" +
           exercise + "}";
}

Truss trussAsking(const std::string& exercise) {
    Outcome<Reading> reading = readModel(triangleAsking(exercise));
    REQUIRE(reading);
    return std::move(reading).value().truss;
}

std::string faultOf(const std::string& exercise) {
    const Outcome<Exercise> read = readExercise(trussAsking(exercise));
    REQUIRE_FALSE(read);
    return english(read.issues().front().at) + ": " + english(read.issues().front().says);
}

WrittenForce written(std::string_view text) {
    const Outcome<WrittenForce> read = readWritten(text, ForceUnit::kN);
    REQUIRE(read);
    return read.value();
}

} // namespace

TEST_CASE("An exercise is read from the model that asks it, and written back the same") {
    const Truss truss = trussAsking(
        R"({"text":"Find them.","ask":["reactions",{"what":"forces","members":[["B","A"],["A","C"]],)"
        R"("marks":4},"zero-members","determinacy"],"tolerance":{"percent":2,"floor":0.5},)"
        R"("hints":"bodies","checks":"at-the-end","variant":7,"seed":"18446744073709551615"})");
    const Outcome<Exercise> read = readExercise(truss);
    REQUIRE(read);
    const Exercise& exercise = read.value();
    CHECK(exercise.text == "Find them.");
    REQUIRE(exercise.questions.size() == 4);
    CHECK(std::get<AskForces>(exercise.questions[1].what).members ==
          std::vector<MemberId>{{0}, {2}});
    CHECK(exercise.questions[1].marks == 4);
    CHECK(exercise.tolerance == Tolerance{2, 0.5, 0});
    CHECK(exercise.hints == Hints::Bodies);
    CHECK(exercise.checking == Checking::AtTheEnd);
    CHECK(exercise.variant == 7);
    CHECK(exercise.seed == 18446744073709551615U);

    Truss back = truss;
    back.exercise = exerciseText(truss, exercise);
    const Outcome<Exercise> again = readExercise(back);
    REQUIRE(again);
    CHECK(again.value() == exercise);
}

TEST_CASE("\"forces\" alone asks for all members") {
    const Outcome<Exercise> read = readExercise(trussAsking(R"({"ask":["forces"]})"));
    REQUIRE(read);
    CHECK(std::get<AskForces>(read.value().questions[0].what).members.size() == 3);
}

TEST_CASE("What an exercise can't mean is said with its place") {
    CHECK(faultOf(R"({"ask":[]})") == "exercise.ask: asks nothing: give at least one question");
    CHECK(faultOf(R"({"ask":["weight"]})").starts_with("exercise.ask[0].what: \"weight\""));
    CHECK(faultOf(R"({"ask":["forces","forces"]})").starts_with("exercise.ask[1]"));
    CHECK(faultOf(R"({"ask":[3]})").starts_with("exercise.ask[0]: a question is"));
    CHECK(faultOf(R"({"ask":[{"what":"forces","members":[["A","Q"]]}]})") ==
          "exercise.ask[0].members: no member between \"A\" and \"Q\": name another");
    CHECK(faultOf(R"({"ask":["forces"],"tolerance":{"percent":-1}})")
              .starts_with("exercise.tolerance.percent: must be from 0 to 100"));
    CHECK(faultOf(R"({"ask":["forces"],"case":"snow"})").find("\"snow\"") != std::string::npos);
}

TEST_CASE("The key holds what the triangle's equations give by hand") {
    const Truss truss = trussAsking(R"({"ask":["reactions","forces","determinacy"]})");
    const Outcome<AnswerKey> key = keyOf(truss, readExercise(truss).value());
    REQUIRE(key);
    CHECK(key.value().reactions[0] == Catch::Approx(-6));
    CHECK(key.value().reactions[1] == Catch::Approx(3.75));
    CHECK(key.value().reactions[2] == Catch::Approx(8.25));
    CHECK(key.value().forces[0] == Catch::Approx(11));
    CHECK(key.value().forces[1] == Catch::Approx(-13.75));
    CHECK(key.value().forces[2] == Catch::Approx(-6.25));
    CHECK(key.value().degree == 0);
    CHECK(key.value().largest == Catch::Approx(13.75));
}

TEST_CASE("A question without an answer has no key") {
    Truss truss = trussAsking(R"({"ask":["forces"]})");
    truss.supports.pop_back();
    CHECK_FALSE(keyOf(truss, readExercise(truss).value()));
    const Truss unstiff = trussAsking(R"({"ask":[{"what":"displacement","joint":"C"}]})");
    const Outcome<AnswerKey> key = keyOf(unstiff, readExercise(unstiff).value());
    REQUIRE_FALSE(key);
    CHECK(english(key.issues().front().says).find("E and A") != std::string::npos);
}

TEST_CASE("An answer may be off by a share of its value, but by a share of the largest force too") {
    const Tolerance percent{1, 0.1, 0};
    CHECK(allowance(percent, 50, 200) == Catch::Approx(0.5));
    CHECK(allowance(percent, 2, 200) == Catch::Approx(0.2));
    CHECK(allowance(percent, 0, 200) == Catch::Approx(0.2));
    // To three figures 12.34 is 12.3, and so is all from 12.25 to 12.35.
    CHECK(allowance(Tolerance{1, 0, 3}, 12.34, 200) == Catch::Approx(0.05));
}

TEST_CASE("An answer is read as people type it") {
    CHECK(written("12,5 kN T") == WrittenForce{12.5, 1});
    CHECK(written("12.5kN C") == WrittenForce{12.5, -1});
    CHECK(written("7c") == WrittenForce{7, -1});
    CHECK(written("-7.5") == WrittenForce{7.5, -1});
    CHECK(written("−7.5") == WrittenForce{7.5, -1}); // the true minus
    CHECK(written("← 5") == WrittenForce{5, -1});
    CHECK(written("3500 N (T)") == WrittenForce{3.5, 1});
    CHECK(written("5") == WrittenForce{5, std::nullopt});
    CHECK(written("0") == WrittenForce{0, 0});
    CHECK(written("  ") == WrittenForce{});
    CHECK(written("–7 kN") == WrittenForce{7, -1}); // a spreadsheet's dash
    CHECK(written("-5 C") == WrittenForce{5, -1});  // said twice
    CHECK(written("5 compression") == WrittenForce{5, -1});
    CHECK(written("12,5kNT") == WrittenForce{12.5, 1});
    CHECK(written("1.234,5 T") == WrittenForce{1234.5, 1});
    CHECK_FALSE(readWritten("seven", ForceUnit::kN));
    CHECK_FALSE(readWritten("5 m", ForceUnit::kN));
}

TEST_CASE(
    "An arrow counts along the reaction that it is written for, and T and C for members alone") {
    const SenseRule downward{SenseRule::Words::OfReaction, {0, -1}, true};
    CHECK(readWritten("↓ 4", ForceUnit::kN, downward).value() == WrittenForce{4, 1});
    CHECK(readWritten("4 ↑", ForceUnit::kN, downward).value() == WrittenForce{4, -1});
    CHECK(readWritten("4", ForceUnit::kN, downward).value() == WrittenForce{4, 1});
    CHECK_FALSE(readWritten("→ 4", ForceUnit::kN, downward)); // says nothing of it
    CHECK_FALSE(readWritten("4 T", ForceUnit::kN, downward));
    CHECK_FALSE(readWritten("4 ↑", ForceUnit::kN, {SenseRule::Words::OfMember, {}, true}));
}

TEST_CASE("Answers go to a file and a link, and come back") {
    const Truss truss = trussAsking(R"({"ask":["reactions","forces","zero-members"]})");
    const Exercise exercise = readExercise(truss).value();
    Answers answers = blankAnswers(truss, exercise);
    answers.exercise = exerciseMark(truss);
    answers.code = "7HQ2M";
    answers.reactions[1] = {3.75, 1};
    answers.forces[1] = {13.75, -1};
    answers.forces[2] = {std::nullopt, 0};
    answers.zeros[0] = false;
    answers.zeros[2] = true;
    const std::string text = answersText(truss, answers);
    const Outcome<std::string> linked =
        linkedAnswers("See https://example.org/exercise/#" + answersLink(text) + ").");
    REQUIRE(linked);
    CHECK(linked.value() == text);
    const Outcome<Answers> back = readAnswers(truss, exercise, linked.value());
    REQUIRE(back);
    CHECK(back.value() == answers);
}

TEST_CASE("Answers to another exercise are refused, and to a truss that was changed") {
    const Truss truss = trussAsking(R"({"ask":["forces"]})");
    const Exercise exercise = readExercise(truss).value();
    const std::string text = answersText(truss, blankAnswers(truss, exercise));
    Truss changed = truss;
    changed.joints[2].at.y = 4;
    const Outcome<Answers> read = readAnswers(changed, exercise, text);
    REQUIRE_FALSE(read);
    CHECK(english(read.issues().front().says) ==
          "these answers are for another exercise, or the exercise was changed since");
    Truss retitled = truss;
    retitled.title = "Porch";
    CHECK(readAnswers(retitled, exercise, text));
}

TEST_CASE("A damaged link of answers is said to be damaged") {
    const Truss truss = trussAsking(R"({"ask":["forces"]})");
    const std::string link =
        answersLink(answersText(truss, blankAnswers(truss, readExercise(truss).value())));
    CHECK_FALSE(linkedAnswers(link.substr(0, link.size() - 12)));
    CHECK_FALSE(linkedAnswers("m=1.abc"));
    CHECK_FALSE(linkedAnswers(""));
}

TEST_CASE("Reactions are named by joint and axis, and two at one joint apart") {
    Truss truss = trussAsking(R"({"ask":["forces"]})");
    CHECK(reactionNames(truss) == std::vector<std::string>{"A:x", "A:y", "B:y"});
    CHECK(readableReactions(truss) == std::vector<std::string>{"A_x", "A_y", "B_y"});
    truss.supports[1].reaction = 60;
    CHECK(reactionNames(truss)[2] == "B");
    truss.supports.push_back({{0}, SupportKind::Roller, 0, {}, 0, {}, {}});
    CHECK(reactionNames(truss)[3] == "A:x 2");
}

TEST_CASE("A joint gives what its two equations determine, with what was found before") {
    const Truss truss = trussAsking(R"({"ask":["forces"]})");
    const Structure structure = structureOf(truss);
    Answers answers = blankAnswers(truss, readExercise(truss).value());
    const JointId a{0};
    const JointId b{1};
    // Nothing found: four unknowns at A, three at B, the two members at C.
    CHECK(standingAt(structure, foundIn(answers), a).given.empty());
    CHECK(standingAt(structure, foundIn(answers), b).unknowns.size() == 3);
    CHECK(standingAt(structure, foundIn(answers), b).given.empty());
    CHECK(usefulJoints(structure, foundIn(answers)) == std::vector<JointId>{{2}});
    CHECK(standingOfWhole(structure, foundIn(answers)).given.size() == 3);
    answers.reactions[2] = {8.25, 1};
    CHECK(standingAt(structure, foundIn(answers), b).given.size() == 2);
    answers.forces[1] = {13.75, -1};
    CHECK(standingAt(structure, foundIn(answers), b).unknowns.size() == 1);
}

TEST_CASE("A term of an equation is right with its sign and its part, and nothing else is") {
    // At B of the triangle: B_y up, AB towards A (−1, 0), BC towards C (−4, 3)/5.
    const Truss truss = trussAsking(R"({"ask":["forces"]})");
    const Structure structure = structureOf(truss);
    const PartOfTruss part = partOf(structure, jointLoads(truss, LoadChoice{}), {JointId{1}});
    REQUIRE(part.forces.size() == 3);
    const auto judged = [&](AskedSum sum, std::vector<BuiltTerm> terms) {
        return judgeTerms(structure, part, sum, terms);
    };
    using V = std::vector<TermVerdict>;
    const BuiltTerm out;
    const AskedSum across{SumKind::X, {}, false, 1};
    CHECK(judged(across, {out, {-1, Multiplier::Whole, 0}, {-1, Multiplier::Cosine, 0}}) ==
          V(3, TermVerdict::Right));
    CHECK(judged(across, {{1, Multiplier::Whole, 0}, out, {1, Multiplier::Cosine, 0}}) ==
          V{TermVerdict::NotInIt, TermVerdict::Missing, TermVerdict::WrongSign});
    CHECK(judged(across, {out, {-1, Multiplier::Whole, 0}, {-1, Multiplier::Sine, 0}})[2] ==
          TermVerdict::WrongMultiplier);
    CHECK(judged(across, {out, {-1, Multiplier::Sine, 0}, {-1, Multiplier::Whole, 0}}) ==
          V{TermVerdict::Right, TermVerdict::WrongMultiplier, TermVerdict::WrongMultiplier});
    const AskedSum up{SumKind::Y, {}, false, 1};
    CHECK(judged(up, {{1, Multiplier::Whole, 0}, out, {1, Multiplier::Sine, 0}}) ==
          V(3, TermVerdict::Right));
    // About A: B_y has the arm 8, AB none, BC the arm 8 · 3/5 = 4.8, both anticlockwise.
    AskedSum turning{SumKind::Moments, {0}, false, 1};
    CHECK(judged(turning, {{1, Multiplier::Arm, 8}, out, {1, Multiplier::Arm, 4.8}}) ==
          V(3, TermVerdict::Right));
    CHECK(judged(turning, {{1, Multiplier::Arm, 4}, out, {1, Multiplier::Arm, 8}}) ==
          V{TermVerdict::WrongArm, TermVerdict::Right, TermVerdict::WrongArm});
    turning.clockwise = true;
    CHECK(judged(turning, {{-1, Multiplier::Arm, 8}, out, {1, Multiplier::Arm, 4.8}}) ==
          V{TermVerdict::Right, TermVerdict::Right, TermVerdict::WrongSign});
}
