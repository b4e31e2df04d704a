#include "desk/building.hpp"

#include "classroom/exercise/answer_names.hpp"
#include "classroom/practice/standing.hpp"
#include "phrases/classroom/practice.hpp"
#include "phrases/faults/exercises.hpp"
#include "report/formula/notation.hpp"

#include <algorithm>

namespace gusset {

namespace {

struct BuiltBody {
    Structure structure;
    PartOfTruss part;
    std::vector<std::string> names; // reactions, then members
};

BuiltBody builtBody(const DeskRequest& request) {
    BuiltBody body{structureOf(request.truss), {}, readableReactions(request.truss)};
    const JointId joint = findJoint(request.truss, request.joint);
    body.part =
        partOf(body.structure, jointLoads(request.truss, body.structure, request.exercise->loads),
               joint.valid() ? std::vector<JointId>{joint} : allJoints(body.structure));
    for (std::size_t i = 0; i < request.truss.members.size(); ++i) {
        body.names.push_back(memberName(request.truss, MemberId{static_cast<int>(i)}));
    }
    return body;
}

bool isReaction(const BuiltBody& body, const ActingForce& force) {
    return force.of < static_cast<int>(body.structure.restraints.size());
}

// The joint at which a force acts on the body.
std::string jointOf(const Writer& writer, const BuiltBody& body, const ActingForce& force) {
    const auto found =
        std::find(body.structure.joints.begin(), body.structure.joints.end(), force.at);
    return writer.truss.joints[static_cast<std::size_t>(found - body.structure.joints.begin())]
        .label;
}

std::string forceText(const Writer& writer, const BuiltBody& body, const ActingForce& force) {
    const std::string arrow = directionArrow(force.along);
    if (force.of == kGivenLoad) {
        const double size = length(force.along) / toNewton(writer.truss.units.force);
        NumberStyle style;
        style.decimalSign = writer.truss.classSettings.decimalSign;
        const std::string written =
            withUnit(formatGiven(size, style), symbolOf(writer.truss.units.force));
        return sayPlain(
            writer, phrase::kForceLoad,
            {{"joint", jointOf(writer, body, force)}, {"size", written}, {"arrow", arrow}});
    }
    const std::string& name = body.names[static_cast<std::size_t>(force.of)];
    return isReaction(body, force)
               ? sayPlain(writer, phrase::kForceReaction, {{"reaction", name}, {"arrow", arrow}})
               : sayPlain(writer, phrase::kForceMember, {{"member", name}});
}

std::string verdictText(const Writer& writer, TermVerdict verdict) {
    switch (verdict) {
    case TermVerdict::Right:
        return {};
    case TermVerdict::Missing:
        return sayPlain(writer, phrase::kTermMissing);
    case TermVerdict::NotInIt:
        return sayPlain(writer, phrase::kTermNotInIt);
    case TermVerdict::WrongSign:
        return sayPlain(writer, phrase::kTermWrongSign);
    case TermVerdict::WrongMultiplier:
        return sayPlain(writer, phrase::kTermWrongMultiplier);
    case TermVerdict::WrongArm:
        break;
    }
    return sayPlain(writer, phrase::kTermWrongArm);
}

std::string wholeText(const Writer& writer, const DeskRequest& request, const BuiltBody& body) {
    const HasFound found = foundIn(request.answers);
    std::vector<bool> known = found.reactions;
    known.insert(known.end(), found.forces.begin(), found.forces.end());
    std::string unknowns;
    for (std::size_t i = 0; i < body.part.forces.size(); ++i) {
        const int of = body.part.forces[i].of;
        if (of != kGivenLoad && request.terms[i].sign != 0 &&
            !known[static_cast<std::size_t>(of)]) {
            unknowns += (unknowns.empty() ? "" : ", ") + body.names[static_cast<std::size_t>(of)];
        }
    }
    return unknowns.empty() ? sayPlain(writer, phrase::kEquationRightKnown)
                            : sayPlain(writer, phrase::kEquationRight, {{"unknowns", unknowns}});
}

} // namespace

std::vector<std::string> forcesText(const Writer& writer, const DeskRequest& request) {
    const BuiltBody body = builtBody(request);
    std::vector<std::string> texts;
    for (const ActingForce& force : body.part.forces) {
        texts.push_back(forceText(writer, body, force));
    }
    return texts;
}

Outcome<EquationSaid> equationSaid(const Writer& writer, const DeskRequest& request) {
    const BuiltBody body = builtBody(request);
    AskedSum sum;
    sum.kind = request.sum == "x"   ? EquationKind::SumX
               : request.sum == "y" ? EquationKind::SumY
                                    : EquationKind::SumMoments;
    sum.about = findJoint(request.truss, request.about);
    sum.clockwise = request.truss.classSettings.moments == MomentSense::Clockwise;
    sum.metre = toMetre(request.truss.units.length);
    if (request.terms.size() != body.part.forces.size() ||
        (sum.kind == EquationKind::SumMoments && !sum.about.valid())) {
        return Issue{IssueCode::Missing, phrase::kPlaceAnswers, phrase::kNoSuchEquation};
    }
    EquationSaid said;
    bool isRight = true;
    for (const TermVerdict verdict : judgeTerms(body.structure, body.part, sum, request.terms)) {
        said.terms.push_back({verdict == TermVerdict::Right, verdictText(writer, verdict)});
        isRight = isRight && verdict == TermVerdict::Right;
    }
    if (isRight) {
        said.says = wholeText(writer, request, body);
    }
    return said;
}

} // namespace gusset
