#include "report/derivation/moment_centre.hpp"

#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr double kCross = 4.5;      // px, half of its stroke
constexpr double kReach = 4;        // times the body's larger side, for both to be drawn to scale
constexpr double kAtEdge = 95;      // px beyond the body, where a farther one is drawn
constexpr double kMostOfWay = 0.72; // how far the lines towards a farther one go

void addArm(const Term& term, std::vector<double>& arms) {
    const auto isOf = [&](FactorKind kind) {
        return std::find_if(term.factors.begin(), term.factors.end(),
                            [kind](const Factor& factor) { return factor.kind == kind; });
    };
    const auto arm = isOf(FactorKind::Arm);
    if (arm != term.factors.end() && isOf(FactorKind::Unknown) != term.factors.end()) {
        arms.push_back(arm->value);
    }
}

std::optional<MomentCentre> centreOf(const Step& step) {
    const auto off = std::find_if(step.remarks.begin(), step.remarks.end(), [](const Remark& it) {
        return says(it, phrase::kCentreOffTruss);
    });
    if (step.kind != StepKind::SectionEquation || off == step.remarks.end()) {
        return std::nullopt;
    }
    MomentCentre centre{partOf<std::string>(*off, "centre"), step.equations.front().point, {}, {}};
    for (const Term& term : step.equations.front().terms) {
        addArm(term, centre.arms);
    }
    for (const Symbol& symbol : partOf<std::vector<Symbol>>(*off, "through")) {
        if (symbol.kind == SymbolKind::MemberForce) {
            centre.through.push_back(symbol.member);
        }
    }
    return centre;
}

// Those of the equations of one section, in order; `intro` is the step that makes the cut.
std::vector<MomentCentre> centresAfter(const Working& working, std::size_t intro) {
    std::vector<MomentCentre> centres;
    for (std::size_t i = intro + 1; i < working.steps.size(); ++i) {
        if (working.steps[i].kind != StepKind::SectionEquation) {
            break;
        }
        if (auto centre = centreOf(working.steps[i])) {
            centres.push_back(*std::move(centre));
        }
    }
    return centres;
}

JointId otherEnd(const Truss& truss, MemberId id, JointId end) {
    const Member& member = truss.members[id.at()];
    return member.a == end ? member.b : member.a;
}

std::size_t introOf(const Working& working, std::size_t step) {
    while (step > 0 && working.steps[step].kind == StepKind::SectionEquation) {
        --step;
    }
    return step;
}

// The box of the joints of the body and of others, px.
SketchBox boxOfJoints(const Draft& draft, const std::vector<JointId>& others, double scale) {
    SketchBox box{draft.places.front(), draft.places.front()};
    for (const Vec2 place : draft.places) {
        box = boxAround(box, {place, place});
    }
    for (const JointId joint : others) {
        const Vec2 place = scale * onPaper(draft.notation.truss.joints[joint.at()].at);
        box = boxAround(box, {place, place});
    }
    return box;
}

// Where a centre is drawn: in its place, or in its direction at the edge.
MeasuredPoint placed(const Draft& draft, const MomentCentre& centre, double scale) {
    const Vec2 at = scale * onPaper(centre.at);
    if (isWithinReach(draft.notation, draft.body, centre)) {
        return {at, centre.at, true, true, false, false};
    }
    const auto others = jointsTakenBeyond(draft.notation, draft.body, centre);
    const SketchBox edge = grown(boxOfJoints(draft, others, scale), kAtEdge);
    const Vec2 shown{std::clamp(at.x, edge.low.x, edge.high.x),
                     std::clamp(at.y, edge.low.y, edge.high.y)};
    return {shown, centre.at, true, true, shown.x != at.x, shown.y != at.y};
}

void drawCross(Draft& draft, Vec2 at) {
    for (const Vec2 way : {Vec2{kCross, kCross}, Vec2{kCross, -kCross}}) {
        draft.sketch.lines.push_back({at - way, at + way, SketchInk::Plain, 1.5, false});
    }
}

// The lines of the members that meet at the centre, from their joints of the body.
void drawLines(Draft& draft, const MomentCentre& centre, const MeasuredPoint& point, double scale) {
    for (const BodyForce& force : draft.body.forces) {
        const bool meets =
            isCutMember(force) && std::find(centre.through.begin(), centre.through.end(),
                                            std::get<MemberId>(*force.of)) != centre.through.end();
        if (!meets) {
            continue;
        }
        const Vec2 from = draft.places[indexOf(draft.body, force.at)];
        const Vec2 whole = scale * onPaper(centre.at) - from;
        const double reach = length(point.px - from) * kMostOfWay;
        const Vec2 to =
            point.farLevel || point.farUpright ? from + (reach / length(whole)) * whole : point.px;
        draft.sketch.lines.push_back({from, to, SketchInk::Muted, 0.75, true});
    }
}

// Whether an arm is the distance of a joint from the centre, across or up.
struct ArmOf {
    bool level = false;
    bool upright = false;
};
ArmOf armAt(const MomentCentre& centre, Vec2 at) {
    constexpr double kSame = 1e-9; // of the arm
    ArmOf found;
    for (const double arm : centre.arms) {
        const Vec2 off = at - centre.at;
        found.level = found.level || std::fabs(std::fabs(off.x) - arm) <= kSame * arm;
        found.upright = found.upright || std::fabs(std::fabs(off.y) - arm) <= kSame * arm;
    }
    return found;
}

// A joint beyond the cut, to which the force of its member is moved along its line.
void drawTakenBeyond(Draft& draft, const MomentCentre& centre, JointId joint, double scale) {
    const Joint& end = draft.notation.truss.joints[joint.at()];
    const Vec2 at = scale * onPaper(end.at);
    for (const BodyForce& force : draft.body.forces) {
        if (isCutMember(force) &&
            otherEnd(draft.notation.truss, std::get<MemberId>(*force.of), force.at) == joint) {
            draft.sketch.lines.push_back(
                {draft.places[indexOf(draft.body, force.at)], at, SketchInk::Muted, 0.75, true});
        }
    }
    draft.sketch.discs.push_back({at, 2.5, SketchInk::Muted, false});
    draft.waiting.push_back(
        {{.words = {{end.label, RunStyle::Strong}}, .at = at, .size = kLabelSize}, {0, 1}, 6});
    const ArmOf arm = armAt(centre, end.at);
    draft.measured.push_back({at, end.at, arm.level, arm.upright, false, false});
}

} // namespace

std::vector<JointId> jointsTakenBeyond(const Notation& notation, const FreeBody& body,
                                       const MomentCentre& centre) {
    std::vector<JointId> joints;
    for (const BodyForce& force : body.forces) {
        if (!isCutMember(force)) {
            continue;
        }
        const auto member = std::get<MemberId>(*force.of);
        const bool meets =
            std::find(centre.through.begin(), centre.through.end(), member) != centre.through.end();
        const JointId end = otherEnd(notation.truss, member, force.at);
        const auto reaches = [&](JointId joint) {
            const ArmOf arm = armAt(centre, notation.truss.joints[joint.at()].at);
            return arm.level || arm.upright;
        };
        if (!meets && !reaches(force.at) && reaches(end)) {
            joints.push_back(end);
        }
    }
    return joints;
}

std::optional<MomentCentre> centreOnBody(const Working& working, std::size_t step) {
    const std::vector<MomentCentre> centres = centresAfter(working, introOf(working, step));
    if (working.steps[step].kind == StepKind::SectionEquation) {
        return centres.size() > 1 ? centreOf(working.steps[step]) : std::nullopt;
    }
    return centres.size() == 1 ? std::optional(centres.front()) : std::nullopt;
}

bool showsBodyAgain(const Working& working, std::size_t step) {
    return working.steps[step].kind == StepKind::SectionEquation &&
           centreOnBody(working, step).has_value();
}

bool isWithinReach(const Notation& notation, const FreeBody& body, const MomentCentre& centre) {
    const Vec2 first = notation.truss.joints[body.joints.front().at()].at;
    SketchBox joints{first, first};
    for (const JointId joint : body.joints) {
        const Vec2 at = notation.truss.joints[joint.at()].at;
        joints = boxAround(joints, {at, at});
    }
    const auto larger = [](const SketchBox& box) {
        return std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    };
    return larger(boxAround(joints, {centre.at, centre.at})) <= kReach * larger(joints);
}

void drawCentre(Draft& draft, const MomentCentre& centre, double scale) {
    const MeasuredPoint point = placed(draft, centre, scale);
    drawLines(draft, centre, point, scale);
    drawCross(draft, point.px);
    for (const JointId joint : jointsTakenBeyond(draft.notation, draft.body, centre)) {
        drawTakenBeyond(draft, centre, joint, scale);
    }
    draft.waiting.push_back(
        {{.words = {{centre.name, RunStyle::Strong}}, .at = point.px, .size = kLabelSize},
         {0, -1},
         kCross + 2});
    draft.measured.push_back(point);
}

} // namespace gusset
