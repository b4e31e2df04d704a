#include "report/classroom/joint_stubs.hpp"

#include "phrases/classroom/handout.hpp"
#include "report/classroom/question_figure.hpp"
#include "report/derivation/body_draft.hpp"
#include "report/derivation/support_symbol.hpp"

#include <algorithm>

namespace gusset {

namespace {

constexpr double kStub = 46;   // px, length of a cut member
constexpr double kBeyond = 58; // where its name stands
constexpr double kLoad = 40;   // length of a load's arrow
constexpr double kMargin = 6;  // around it all
constexpr double kSmall = 11;  // font size

void drawCutMember(Sketch& sketch, Vec2 way, const std::string& name) {
    sketch.lines.push_back({{0, 0}, kStub * way, SketchInk::Muted, 1.5, true});
    sketch.words.push_back(
        {plainLine(name), kBeyond * way, SketchAnchor::Middle, SketchInk::Muted, kSmall});
}

// Beside an upright arrow, and beyond any other.
void writeLoad(Sketch& sketch, Vec2 end, Vec2 way, const RichLine& label) {
    constexpr double kGap = 6;
    const bool isUpright = std::abs(way.x) < 0.5;
    const Vec2 at = isUpright ? end + Vec2{kGap, 0} : end + kGap * way;
    const SketchAnchor anchor = isUpright || way.x > 0 ? SketchAnchor::Start : SketchAnchor::End;
    sketch.words.push_back({label, at, anchor, SketchInk::Load, kSmall});
}

// Away from the joint, or towards it where a member is in the way.
void drawLoad(Sketch& sketch, const BodyForce& load, const std::vector<Vec2>& taken) {
    constexpr double kClose = 0.94; // cosine of 20°
    const Vec2 way = onPaper(load.along);
    const auto isTaken = [&](Vec2 side) {
        return std::any_of(taken.begin(), taken.end(),
                           [&](Vec2 other) { return dot(other, side) > kClose; });
    };
    const bool comes = isTaken(way) && !isTaken(-way);
    const Vec2 far = (comes ? -kLoad : kLoad) * way;
    sketch.arrows.push_back(
        {comes ? far : Vec2{0, 0}, comes ? Vec2{0, 0} : far, SketchInk::Load, 1.5});
    writeLoad(sketch, far, comes ? -way : way, load.label);
}

Sketch stubOf(const Notation& given, JointId joint) {
    const Truss& truss = given.truss;
    Sketch sketch;
    sketch.says =
        sayPlain(given.book, phrase::kJointToComplete, {{"joint", truss.joints[joint.at()].label}});
    std::vector<Vec2> taken;
    const std::vector<Bar>& bars = given.working.structure.bars;
    for (std::size_t i = 0; i < bars.size(); ++i) {
        if (bars[i].a == joint.index || bars[i].b == joint.index) {
            taken.push_back(onPaper(bars[i].a == joint.index ? bars[i].along : -bars[i].along));
            drawCutMember(sketch, taken.back(), memberName(truss, {static_cast<int>(i)}));
        }
    }
    for (const Support& support : truss.supports) {
        if (support.joint == joint) {
            taken.push_back(drawSupport(sketch, {0, 0}, support).way);
        }
    }
    for (const BodyForce& load : loadedBody(given).forces) {
        if (load.at == joint) {
            drawLoad(sketch, load, taken);
        }
    }
    sketch.discs.push_back({{0, 0}, 3, SketchInk::Plain, true});
    fitSketch(sketch, kMargin);
    return sketch;
}

} // namespace

std::vector<Sketch> jointStubs(const Writer& writer, const LoadChoice& loads) {
    constexpr std::size_t kMostPrinted = 24;
    std::vector<Sketch> stubs;
    if (writer.truss.joints.size() > kMostPrinted) {
        return stubs;
    }
    const Working nothing = workingOfNothing(writer.truss, loads);
    const Notation given = notationOf(writer, nothing);
    for (std::size_t i = 0; i < writer.truss.joints.size(); ++i) {
        stubs.push_back(stubOf(given, {static_cast<int>(i)}));
    }
    return stubs;
}

} // namespace gusset
