#include "canvas/scene/scene_builders.hpp"
#include "phrases/results/tables.hpp"

#include "report/results/movement_text.hpp"

namespace gusset {

namespace {

constexpr float kMovedWidth = 2.6F;
constexpr float kMovedRadius = 3.5F;
constexpr double kCaptionAway = 12; // px from the corner of the free board
constexpr double kValueAway = 10;   // and of a value from its joint

// In the corner of the board, away from the finger.
void drawCaption(Drawing& drawing, double times) {
    LabelMark mark;
    mark.text = sayPlain(*drawing.state.book, phrase::kDrawnEnlarged,
                         {{"times", timesText(drawing.state.truss, times)}});
    mark.ink = Ink::Accent;
    mark.kind = LabelKind::Hint;
    const Vec2 half = 0.5 * drawing.measure(mark.text, mark.kind);
    mark.at = drawing.obstacles.free().at + half + Vec2{kCaptionAway, kCaptionAway};
    drawing.obstacles.addBox(mark.at, half);
    drawing.scene.labels.push_back(std::move(mark));
}

void wishLargest(Drawing& drawing, const std::vector<Vec2>& moved) {
    const Solution& solution = drawing.derived.solution;
    const JointId joint = furthestJoint(solution);
    if (!joint.valid()) {
        return;
    }
    LabelMark mark;
    mark.text = movementOf(drawing.state.truss, solution, joint);
    mark.ink = Ink::Accent;
    mark.kind = LabelKind::Force;
    const Vec2 size = drawing.measure(mark.text, mark.kind);
    std::vector<Vec2> places;
    for (const Vec2 way : {Vec2{0, 1}, Vec2{1, 0}, Vec2{-1, 0}, Vec2{0, -1}}) {
        for (const double away : {1.0, 2.0, 3.5, 5.5, 8.0}) {
            places.push_back(moved[joint.at()] + Vec2{way.x * (0.5 * size.x + away * kValueAway),
                                                      way.y * (0.5 * size.y + away * kValueAway)});
        }
    }
    wish(drawing, std::move(mark), std::move(places), kLoadWeight);
}

} // namespace

void drawMovement(Drawing& drawing) {
    if (!drawing.movement) {
        return;
    }
    const Ink ink = drawing.movement->mechanism ? Ink::Warning : Ink::Accent;
    std::vector<Vec2> moved;
    Thinning thinned = thinning(drawing, drawing.movement->at.size());
    for (const Vec2 at : drawing.movement->at) {
        moved.push_back(toPixel(drawing.state.view.camera, at));
        growBox(drawing, moved.back());
        if (!thinned.leavesOut(moved.back())) {
            drawing.scene.discs.push_back({moved.back(), kMovedRadius, 1.5F, ink, Ink::Paper});
        }
    }
    for (const Member& member : drawing.state.truss.members) {
        const Vec2 a = moved[member.a.at()];
        const Vec2 b = moved[member.b.at()];
        addLine(drawing, {a, b, kMovedWidth, ink, 0});
        drawing.obstacles.addSegment(a, b, kMovedWidth);
    }
    if (!drawing.movement->mechanism) {
        drawCaption(drawing, drawing.movement->times);
        wishLargest(drawing, moved);
    }
}

} // namespace gusset
