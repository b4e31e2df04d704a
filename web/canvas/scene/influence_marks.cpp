#include "canvas/scene/scene_builders.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr float kPathWidth = 16;    // px of the band under the path
constexpr float kPickedRadius = 12; // and around a joint picked for it
constexpr double kUnitLoad = 58;    // px of the unit load's arrow
constexpr double kEffect = 46;      // and of the effect's
constexpr float kShaft = 2.6F;
constexpr float kHeavyShaft = 4; // of the unit load, on a strip of paper: it may lie over a
constexpr float kClearing = 14;  // post, and must not look like part of it

// In the plane of the truss, length units.
Vec2 placeOf(const Truss& truss, const InfluenceShown& shown) {
    const std::vector<double>& at = shown.report->line.at;
    const std::vector<JointId>& path = shown.report->path;
    const auto after = std::upper_bound(at.begin() + 1, at.end() - 1, shown.at);
    const auto k = static_cast<std::size_t>(after - at.begin());
    const double share = (shown.at - at[k - 1]) / (at[k] - at[k - 1]);
    const Vec2 from = truss.joints[path[k - 1].at()].at;
    return from + share * (truss.joints[path[k].at()].at - from);
}

void drawUnitLoad(Drawing& drawing) {
    const Vec2 at =
        toPixel(drawing.state.view.camera, placeOf(drawing.state.truss, *drawing.influence));
    const Vec2 head = at - Vec2{0, kArrowGap};
    const Arrow arrow{head - Vec2{0, kUnitLoad}, head};
    addLine(drawing, {arrow.tail, arrow.head, kClearing, Ink::Paper, 0});
    addArrow(drawing, arrow, Ink::Load, kHeavyShaft);
    LabelMark mark{"1", {}, Ink::Load, LabelKind::Load};
    const Vec2 size = drawing.measure(mark.text, mark.kind);
    wish(drawing, std::move(mark), placesBeside(arrow, true, size), kJointWeight);
}

// An arrow along a member, or at the joint that the effect acts on.
Arrow arrowOfEffect(Drawing& drawing) {
    const Effect& effect = drawing.influence->effect;
    if (effect.kind == EffectKind::MemberForce) {
        const Member& member = drawing.state.truss.members[effect.member.at()];
        return {drawing.at[member.a.at()], drawing.at[member.b.at()]};
    }
    const double sign = drawing.influence->ordinate < 0 ? -1 : 1;
    const Vec2 way = directionOnBoard(effect.horizontal ? Vec2{sign, 0} : Vec2{0, sign});
    Vec2 at = drawing.at[effect.joint.at()];
    if (effect.kind == EffectKind::Reaction && !effect.horizontal) {
        at = at + Vec2{0, kSupportDepth}; // below the symbol of the support
        return sign > 0 ? Arrow{at + Vec2{0, kEffect}, at} : Arrow{at, at + Vec2{0, kEffect}};
    }
    return arrowAt(at, way, kEffect, drawing.symbols.taken[effect.joint.at()]).arrow;
}

void drawEffect(Drawing& drawing) {
    const InfluenceShown& shown = *drawing.influence;
    const Arrow arrow = arrowOfEffect(drawing);
    if (shown.effect.kind != EffectKind::MemberForce && shown.value != "0") {
        addArrow(drawing, arrow, Ink::Accent, kShaft);
    }
    LabelMark mark{shown.value, {}, Ink::Accent, LabelKind::Force};
    const Vec2 size = drawing.measure(mark.text, mark.kind);
    wish(drawing, std::move(mark), placesBeside(arrow, true, size), kJointWeight);
}

} // namespace

const InfluenceShown* influenceLit(const AppState& state, const Derived& derived) {
    const InfluenceShown& shown = derived.influence;
    const bool current = shown.revision == state.revision && shown.report.has_value();
    return current && showsInfluence(state) ? &shown : nullptr;
}

void drawPath(Drawing& drawing) {
    if (drawing.influence) {
        const std::vector<JointId>& path = drawing.influence->report->path;
        for (std::size_t i = 1; i < path.size(); ++i) {
            addLine(drawing, {drawing.at[path[i - 1].at()], drawing.at[path[i].at()], kPathWidth,
                              Ink::Halo, 0});
        }
    }
    const InfluenceView& view = drawing.state.notebook.influence;
    if (!view.picking || !showsInfluence(drawing.state)) {
        return;
    }
    for (const std::string& label : view.picked) {
        if (const JointId joint = findJoint(drawing.state.truss, label); joint.valid()) {
            drawing.scene.discs.push_back(
                {drawing.at[joint.at()], kPickedRadius, 2, Ink::Accent, Ink::Halo});
        }
    }
}

void drawInfluence(Drawing& drawing) {
    if (drawing.influence) {
        drawUnitLoad(drawing);
        drawEffect(drawing);
    }
}

} // namespace gusset
