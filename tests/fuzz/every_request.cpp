#include "fuzz/every_request.hpp"

#include "classroom/exercise/answer_names.hpp"
#include "classroom/practice/chosen_body.hpp"
#include "exchange/exercises/answers_file.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/files/model_file.hpp"
#include "exchange/json/json_value.hpp"
#include "support/quoted.hpp"

#include <utility>

namespace gusset::support {

namespace {

WrittenForce anyForce(Random& random) {
    WrittenForce force;
    if (random.oneIn(2)) {
        force.size = random.integer(0, 90) / 2.0;
    }
    if (!random.oneIn(3)) {
        force.sign = random.integer(-1, 1);
    }
    return force;
}

Answers anyAnswers(const Truss& truss, const Exercise& exercise, Random& random) {
    Answers answers = blankAnswers(truss, exercise);
    for (WrittenForce& reaction : answers.reactions) {
        reaction = anyForce(random);
    }
    for (std::size_t i = 0; i < answers.forces.size(); ++i) {
        answers.forces[i] = anyForce(random);
        answers.zeros[i] = random.oneIn(6) ? std::optional(random.oneIn(2)) : std::nullopt;
    }
    return answers;
}

ChosenBody anyBody(const Truss& truss, Random& random) {
    const JointId joint{random.integer(0, static_cast<int>(truss.joints.size()) - 1)};
    switch (random.integer(0, 3)) {
    case 0:
        return {};
    case 1:
        return {joint, {}, {}};
    default:
        break;
    }
    ChosenBody body{{}, {}, joint};
    const bool isAtJoint = random.oneIn(2); // which parts the truss, unless it then falls apart
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const Member& member = truss.members[i];
        if (isAtJoint ? member.a == joint || member.b == joint : random.oneIn(4)) {
            body.cut.push_back({static_cast<int>(i)});
        }
    }
    return body;
}

std::string keysOf(const Truss& truss, const ChosenBody& body) {
    std::string keys;
    if (body.joint.valid()) {
        keys += ",\"joint\":" + quoted(truss.joints[body.joint.at()].label);
    }
    if (!body.cut.empty()) {
        const std::vector<std::string> names = answerNames(truss);
        std::string cut;
        for (const MemberId member : body.cut) {
            cut += (cut.empty() ? "" : ",") + quoted(names[member.at()]);
        }
        keys += ",\"cut\":[" + cut + "],\"part\":" + quoted(truss.joints[body.part.at()].label);
    }
    return keys;
}

// A term for each force on the body; rarely one too few.
std::string anyEquation(const Truss& truss, const Exercise& exercise, const ChosenBody& body,
                        Random& random) {
    constexpr const char* kTimes[]{"whole", "sine", "cosine", "arm"};
    const Structure structure = structureOf(truss);
    const auto joints = jointsOf(structure, body);
    const std::size_t forces =
        joints ? drawnPart(structure, jointLoads(truss, structure, exercise.loads), *joints)
                     .forces.size()
               : 3;
    std::string terms;
    for (std::size_t i = random.oneIn(30) ? 1 : 0; i < forces; ++i) {
        terms += std::string(terms.empty() ? "" : ",") +
                 "{\"sign\":" + std::to_string(random.integer(-1, 1)) + ",\"by\":\"" +
                 kTimes[random.integer(0, 3)] +
                 "\",\"arm\":" + std::to_string(random.integer(0, 9)) + "}";
    }
    constexpr const char* kSums[]{"x", "y", "moments"};
    return ",\"sum\":\"" + std::string(kSums[random.integer(0, 2)]) +
           "\",\"about\":" + quoted(random.pick(truss.joints).label) + ",\"terms\":[" + terms +
           "],\"judge\":true";
}

std::string anyTyped(Random& random) {
    return random.pick(std::vector<std::string>{"12.5", "12,5 kN", "3500 N T", "seven", "", "-4",
                                                "1e400", "7 c", "0", "NaN", "\xFF"});
}

} // namespace

std::vector<std::string> everyRequest(const Truss& given, Random& random) {
    Truss truss = given;
    truss.exercise = R"({"ask":["reactions","forces","zero-members","determinacy"],"hints":")" +
                     std::string(random.oneIn(4) ? "equations" : "terms") + "\"}";
    const std::string model = ",\"model\":" + quoted(writeModel(truss, Layout::Compact));
    std::vector<std::string> requests{"{\"do\":\"open\"" + model + "}",
                                      "{\"do\":\"typed\",\"typed\":" + quoted(anyTyped(random)) +
                                          model + "}"};
    const Outcome<Exercise> exercise = readExercise(truss);
    if (!exercise || truss.joints.empty()) {
        return requests;
    }
    const std::string answers =
        ",\"answers\":" + quoted(answersText(truss, anyAnswers(truss, exercise.value(), random))) +
        model;
    for (const char* plain : {"answers", "check", "mark", "equations"}) {
        requests.push_back("{\"do\":\"" + std::string(plain) + "\"" + answers + "}");
    }
    for (int i = 0; i < 3; ++i) {
        const ChosenBody body = anyBody(truss, random);
        const std::string rest = keysOf(truss, body) + answers + "}";
        for (const char* asked : {"cut", "stand", "body"}) {
            requests.push_back("{\"do\":\"" + std::string(asked) + "\"" + rest);
        }
        requests.push_back("{\"do\":\"hint\",\"level\":" + std::to_string(random.integer(1, 3)) +
                           rest);
        requests.push_back("{\"do\":\"equation\"" +
                           anyEquation(truss, exercise.value(), body, random) + rest);
    }
    return requests;
}

} // namespace gusset::support
