// Cuts, sums that leave one unknown, and the right terms of an equation: what a student builds is
// judged by the same mechanics that solves the truss.

#include "classroom/exercise/answer_names.hpp"
#include "classroom/exercise/key.hpp"
#include "classroom/practice/chosen_body.hpp"
#include "classroom/practice/standing.hpp"
#include "classroom/practice/terms.hpp"
#include "exchange/exercises/answers_file.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/files/model_file.hpp"
#include "support/english.hpp"
#include "support/files.hpp"
#include "support/random.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>
#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

//     C---E---G        3 m high, panels of 4 m; pin A, roller H; 24 kN down at B, D and F
//   / | \ | / | \      (site/examples)
//  A--B--D--F--H
Truss footbridge() {
    Truss truss = readModel(repositoryFile("site/examples/footbridge.json")).value().truss;
    truss.exercise = R"({"ask":["reactions","forces"]})";
    return truss;
}

std::vector<MemberId> membersNamed(const Truss& truss, const std::vector<std::string>& names) {
    const std::vector<std::string> all = answerNames(truss);
    std::vector<MemberId> members;
    for (const std::string& name : names) {
        members.push_back(
            {static_cast<int>(std::find(all.begin(), all.end(), name) - all.begin())});
    }
    return members;
}

CutTruss cut(const std::vector<std::string>& names) {
    const Truss truss = footbridge();
    return cutThrough(structureOf(truss), membersNamed(truss, names));
}

std::string labels(const Truss& truss, const std::vector<JointId>& joints) {
    std::string text;
    for (const JointId joint : joints) {
        text += truss.joints[joint.at()].label;
    }
    return text;
}

// Every force of the truss found, by its number.
std::vector<double> truthOf(const Truss& truss, const Exercise& exercise) {
    const AnswerKey key = keyOf(truss, exercise).value();
    std::vector<double> truth = key.reactions;
    truth.insert(truth.end(), key.forces.begin(), key.forces.end());
    return truth;
}

double sizeOfTerm(const BuiltTerm& term, Vec2 along) {
    switch (term.by) {
    case Multiplier::Sine:
        return std::fabs(along.y);
    case Multiplier::Cosine:
        return std::fabs(along.x);
    case Multiplier::Arm:
        return term.arm;
    case Multiplier::Whole:
        break;
    }
    return 1;
}

// What the terms come to with the true forces, force units (times length units for moments).
double sumWith(const PartOfTruss& part, const std::vector<BuiltTerm>& terms,
               const std::vector<double>& truth, double newton) {
    double sum = 0;
    for (std::size_t i = 0; i < terms.size(); ++i) {
        const ActingForce& force = part.forces[i];
        const double size = length(force.along);
        const double value =
            force.of == kGivenLoad ? size / newton : truth[static_cast<std::size_t>(force.of)];
        sum += terms[i].sign * value * sizeOfTerm(terms[i], (1 / size) * force.along);
    }
    return sum;
}

} // namespace

TEST_CASE("A cut through three members parts the bridge in two") {
    const Truss truss = footbridge();
    const CutTruss parts = cut({"B-D", "C-D", "C-E"});
    CHECK(parts.fault == CutFault::None);
    REQUIRE(parts.parts.size() == 2);
    CHECK(labels(truss, parts.parts[0]) == "ABC");
    CHECK(labels(truss, parts.parts[1]) == "DEFGH");
}

TEST_CASE("A cut that is none is told apart: nothing, too little, too much, and a member for "
          "nothing") {
    CHECK(cut({}).fault == CutFault::NothingCut);
    CHECK(cut({"B-D", "C-D"}).fault == CutFault::StillOne);
    CHECK(cut({"A-B", "A-C", "G-H", "F-H"}).fault == CutFault::TooMany);
    const CutTruss idle = cut({"B-D", "C-D", "C-E", "A-B"});
    CHECK(idle.fault == CutFault::Idle);
    CHECK(idle.idle == membersNamed(footbridge(), {"A-B"}).front());
}

TEST_CASE("Of four unknowns on a part, the moment about the joint where three meet leaves one") {
    const Truss truss = footbridge();
    const Structure structure = structureOf(truss);
    // Right of the cut through BD, CD, DE and EG, with H_y found: DG is not cut.
    const ChosenBody body{JointId{}, membersNamed(truss, {"B-D", "C-D", "D-E", "E-G"}),
                          findJoint(truss, "H")};
    const std::vector<JointId> joints = jointsOf(structure, body).value();
    CHECK(labels(truss, joints) == "DFGH");
    HasFound found{{true, true, true}, std::vector<bool>(truss.members.size())};
    const Standing standing = standingOfPart(structure, found, joints);
    CHECK(standing.unknowns.size() == 4);
    REQUIRE(standing.given.size() == 1);
    CHECK(std::get<MemberId>(standing.given.front()) == membersNamed(truss, {"E-G"}).front());
    const PartOfTruss part =
        drawnPart(structure, jointLoads(truss, structure, LoadChoice{}), joints);
    const int number =
        static_cast<int>(structure.restraints.size()) + membersNamed(truss, {"E-G"}).front().index;
    const auto sum = sumLeavingOnly(structure, part, knownIn(found), number, AskedSum{});
    REQUIRE(sum);
    CHECK(sum->kind == SumKind::Moments);
    CHECK(sum->about == findJoint(truss, "D"));
}

TEST_CASE("The right terms of any sum on any part balance with the true forces, and each is judged "
          "right") {
    int sums = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const Truss truss = randomDeterminateTruss(seed);
        Exercise exercise;
        exercise.questions = {{AskReactions{}}};
        const std::vector<double> truth = truthOf(truss, exercise);
        const double largest =
            std::fabs(*std::max_element(truth.begin(), truth.end(), [](double a, double b) {
                return std::fabs(a) < std::fabs(b);
            }));
        const Structure structure = structureOf(truss);
        const double newton = toNewton(truss.units.force);
        Random random(seed);
        std::vector<JointId> joints;
        for (const JointId joint : allJoints(structure)) {
            if (joints.empty() || random.oneIn(2)) {
                joints.push_back(joint);
            }
        }
        const PartOfTruss part =
            drawnPart(structure, jointLoads(truss, structure, LoadChoice{}), joints);
        for (const SumKind kind : {SumKind::X, SumKind::Y, SumKind::Moments}) {
            const AskedSum sum{kind,
                               {random.integer(0, static_cast<int>(truss.joints.size()) - 1)},
                               random.oneIn(2),
                               toMetre(truss.units.length)};
            const std::vector<BuiltTerm> terms = rightTerms(structure, part, sum);
            const double scale = kind == SumKind::Moments ? structure.extent / sum.metre : 1;
            INFO("seed " << seed);
            CHECK(std::fabs(sumWith(part, terms, truth, newton)) <=
                  1e-6 * scale * largest * static_cast<double>(terms.size() + 1));
            const std::vector<TermVerdict> verdicts = judgeTerms(structure, part, sum, terms);
            CHECK(std::all_of(verdicts.begin(), verdicts.end(),
                              [](TermVerdict verdict) { return verdict == TermVerdict::Right; }));
            ++sums;
        }
    }
    CHECK(sums == 900);
}

TEST_CASE("Equations that were kept come back from the file as they were") {
    const Truss truss = footbridge();
    const Exercise exercise = readExercise(truss).value();
    Answers answers = blankAnswers(truss, exercise);
    const MemberId diagonal = membersNamed(truss, {"A-C"}).front();
    WrittenEquation atJoint{{findJoint(truss, "A"), {}, {}}, SumKind::X, {}, {}};
    atJoint.terms.push_back({RestraintId{0}, {}, SumKind::X, {1, Multiplier::Whole, 0}});
    atJoint.terms.push_back({diagonal, {}, SumKind::X, {-1, Multiplier::Cosine, 0}});
    WrittenEquation onPart{{{}, membersNamed(truss, {"B-D", "C-D", "C-E"}), findJoint(truss, "A")},
                           SumKind::Moments,
                           findJoint(truss, "D"),
                           {}};
    onPart.terms.push_back(
        {std::nullopt, findJoint(truss, "B"), SumKind::Y, {1, Multiplier::Arm, 4}});
    answers.equations = {atJoint, onPart};
    const std::string text = answersText(truss, answers);
    CHECK(text.find(R"({"joint":"A","sum":"x","terms":[{"of":"A:x","sign":"+"},)"
                    R"({"of":"A-C","sign":"-","by":"cosine"}]})") != std::string::npos);
    const Outcome<Answers> again = readAnswers(truss, exercise, text);
    REQUIRE(again);
    CHECK(again.value().equations == answers.equations);
}

TEST_CASE("An equation that can't be one is refused with its place") {
    const Truss truss = footbridge();
    const Exercise exercise = readExercise(truss).value();
    const std::string blank = answersText(truss, blankAnswers(truss, exercise));
    const auto fault = [&](const std::string& equation) {
        std::string text = blank;
        text.insert(text.find_last_of('}'), ",\"equations\":[" + equation + "]");
        const Outcome<Answers> read = readAnswers(truss, exercise, text);
        return read ? std::string() : english(read.issues().front());
    };
    CHECK(fault(R"({"joint":"A","sum":"x","terms":[]})").empty());
    for (const auto& [equation, words] : std::vector<std::pair<const char*, const char*>>{
             {R"({"joint":"Q","sum":"x"})", "\"Q\""},
             {R"({"cut":["B-D","Q-R"],"part":"A"})", "\"Q-R\""},
             {R"({"cut":["B-D"],"part":"A"})", "part the truss in two"},
             {R"({"cut":["B-D","C-D","C-E"]})", "part the truss in two"},
             {R"({"joint":"A","sum":"z"})", "\"z\""},
             {R"({"joint":"A","sum":"moments"})", "\"about\""},
             {R"({"joint":"A","terms":[{"of":"A-Q"}]})", "\"A-Q\""},
             {R"({"joint":"A","terms":[{"of":"A-B","by":"arm","arm":-1}]})", "not negative"},
             {R"(7)", "equations[0]"}}) {
        INFO(equation << ": " << fault(equation));
        CHECK(fault(equation).find(words) != std::string::npos);
        CHECK(fault(equation).find("equations[0]") != std::string::npos);
    }
}
