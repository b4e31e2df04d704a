#include "hand/stages/section_step.hpp"

#include "hand/paper/truss_side.hpp"
#include "phrases/working/remarks.hpp"

namespace gusset {
namespace {

Remark whyThisPart(const Truss& truss, const Step& step) {
    constexpr decltype(phrase::kCutLeft) kCut[] = {phrase::kCutLeft, phrase::kCutRight,
                                                   phrase::kCutUpper, phrase::kCutLower,
                                                   phrase::kCutPart};
    return remarkThat(kCut[static_cast<std::size_t>(sideOf(truss, step.body))],
                      {{"members", step.members}, {"joints", step.body}});
}

} // namespace

std::vector<MemberId> cutMembers(const Sheet& sheet, const std::vector<JointId>& part) {
    std::vector<bool> inside(sheet.truss.joints.size());
    for (const JointId joint : part) {
        inside[joint.at()] = true;
    }
    std::vector<MemberId> cut;
    for (std::size_t i = 0; i < sheet.truss.members.size(); ++i) {
        const Member& member = sheet.truss.members[i];
        if (inside[member.a.at()] != inside[member.b.at()]) {
            cut.push_back({static_cast<int>(i)});
        }
    }
    return cut;
}

int difficulty(WayKind way) {
    switch (way) {
    case WayKind::CentreOffTruss:
        return 2;
    case WayKind::SumAcross:
        return 1;
    default:
        return 0;
    }
}

Effort effortOf(const PartOfCut& part, const Way& way) {
    return {difficulty(way.kind), part.unknowns > 3, way.terms, part.unknowns,
            part.cuts.sizeOf(part.division, part.side)};
}

bool comesBefore(const PartOfCut& one, const PartOfCut& other) {
    return one.cuts.before(one.division, one.side, other.cuts, other.division, other.side);
}

void writeCut(Sheet& sheet, const Body& body, const std::vector<Remark>& why) {
    Step step;
    step.kind = StepKind::SectionIntro;
    step.body = body.joints;
    step.members = cutMembers(sheet, body.joints);
    step.remarks = why;
    step.remarks.push_back(whyThisPart(sheet.truss, step));
    noteAssumed(sheet, step);
    sheet.steps.push_back(step);
}

void writeSectionEquation(Sheet& sheet, const Body& body, Isolation isolation) {
    Step step;
    step.kind = StepKind::SectionEquation;
    step.joint = isolation.equation.about;
    step.body = body.joints;
    step.remarks.push_back(isolation.remark);
    step.remarks.insert(step.remarks.end(), isolation.details.begin(), isolation.details.end());
    isolation.equation = withGuess(sheet, body, isolation.equation);
    noteUses(sheet, body, isolation.equation, step);
    step.found.push_back(solveFor(sheet, isolation.equation));
    step.equations.push_back(isolation.equation);
    noteFound(sheet, step);
    sheet.steps.push_back(step);
}

} // namespace gusset
