#include "desk/body.hpp"

#include "classroom/exercise/answer_names.hpp"
#include "phrases/classroom/practice.hpp"
#include "phrases/faults/exercises.hpp"

namespace gusset {

namespace {

OwnValues ownValues(const Answers& answers) {
    OwnValues own;
    for (const WrittenForce& reaction : answers.reactions) {
        own.push_back(valueOf(reaction));
    }
    for (std::size_t i = 0; i < answers.forces.size(); ++i) {
        own.push_back(answers.zeros[i] == true ? std::optional(0.0) : valueOf(answers.forces[i]));
    }
    return own;
}

std::string cutText(const Writer& writer, const CutTruss& cut, bool isChosen) {
    switch (cut.fault) {
    case CutFault::NothingCut:
        return sayPlain(writer, phrase::kCutNothing);
    case CutFault::StillOne:
        return sayPlain(writer, phrase::kCutStillOne);
    case CutFault::TooMany:
        return sayPlain(writer, phrase::kCutTooMany, {{"parts", std::to_string(cut.parts.size())}});
    case CutFault::Idle:
        return sayPlain(writer, phrase::kCutIdle,
                        {{"member", memberName(writer.truss, *cut.idle)}});
    case CutFault::None:
        break;
    }
    return sayPlain(writer, isChosen ? phrase::kCutPartChosen : phrase::kCutParts);
}

} // namespace

Outcome<DeskBody> deskBody(const DeskRequest& request, const ChosenBody& chosen) {
    DeskBody body{
        request.truss, {}, {}, ownValues(request.answers), readableReactions(request.truss)};
    body.truss.classSettings.angles = AngleStyle::SinCos;
    body.paper = blankPaper(body.truss, request.exercise->loads);
    const Structure& structure = body.paper.structure;
    const std::optional<std::vector<JointId>> joints = jointsOf(structure, chosen);
    if (!joints) {
        return Issue{IssueCode::OutOfRange, phrase::kPlaceAnswers, phrase::kCutPartsNothing};
    }
    body.part = drawnPart(structure, jointLoads(request.truss, structure, request.exercise->loads),
                          *joints);
    for (const MemberId member : allMembers(request.truss)) {
        body.names.push_back(memberName(request.truss, member));
    }
    return body;
}

Notation notationOf(const PhraseBook& book, const DeskBody& body) {
    return notationOf(Writer{book, body.truss}, body.paper);
}

std::string jointLabels(const Writer& writer, const std::vector<JointId>& joints) {
    std::vector<RichLine> labels;
    for (const JointId joint : joints) {
        labels.push_back(plainLine(writer.truss.joints[joint.at()].label));
    }
    return plainText(listOf(writer, labels));
}

std::string bodyName(const Writer& writer, const std::vector<JointId>& joints, Begins begins) {
    const bool first = begins == Begins::Sentence;
    if (joints.size() == writer.truss.joints.size()) {
        return sayPlain(writer, first ? phrase::kTheWholeTrussFirst : phrase::kTheWholeTruss);
    }
    if (joints.size() == 1) {
        return sayPlain(writer, first ? phrase::kTheJointFirst : phrase::kTheJoint,
                        {{"joint", jointLabels(writer, joints)}});
    }
    return sayPlain(writer, first ? phrase::kThePartFirst : phrase::kThePart,
                    {{"joints", jointLabels(writer, joints)}});
}

CutSaid cutSaid(const Writer& writer, const DeskRequest& request) {
    const CutTruss cut = cutThrough(structureOf(request.truss), request.body.cut);
    CutSaid said{cutText(writer, cut, request.body.part.valid()), {}};
    if (cut.fault == CutFault::None) {
        for (const std::vector<JointId>& part : cut.parts) {
            said.parts.push_back({writer.truss.joints[part.front().at()].label,
                                  bodyName(writer, part, Begins::Sentence)});
        }
    }
    return said;
}

} // namespace gusset
