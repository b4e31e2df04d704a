#include "canvas/scene/scene_builders.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr double kLoupeAway = 36; // px between the finger's centre and the loupe's edge
constexpr double kFromEdge = 6;   // px to the edge of the free board

bool isNear(Vec2 a, Vec2 b) { return length(a - b) < kLoupeRadius + kLoupeAway; }

} // namespace

// Above the finger; if there is no room, beside it, on the side with more.
void placeLoupe(Drawing& drawing) {
    const Gesture& gesture = drawing.state.gesture;
    const bool covers = gesture.kind == GestureKind::MoveJoint ||
                        gesture.kind == GestureKind::DrawMember ||
                        gesture.kind == GestureKind::DragLoad;
    if (!gesture.byFinger || !gesture.moved || !covers) {
        return;
    }
    const Rect& free = drawing.obstacles.free();
    const double reach = kLoupeRadius + kFromEdge;
    const Vec2 low = free.at + Vec2{reach, reach};
    const Vec2 high{std::max(free.at.x + free.size.x - reach, low.x),
                    std::max(free.at.y + free.size.y - reach, low.y)};
    Loupe& loupe = drawing.scene.loupe;
    loupe.shown = true;
    loupe.of = gesture.lastPixel;
    const Vec2 above = loupe.of - Vec2{0, kLoupeAway + kLoupeRadius};
    loupe.at = {std::clamp(above.x, low.x, high.x), std::clamp(above.y, low.y, high.y)};
    if (isNear(loupe.at, loupe.of)) {
        const double aside = kLoupeAway + kLoupeRadius;
        const bool leftwards = loupe.of.x - aside >= low.x;
        loupe.at.x = loupe.of.x + (leftwards ? -aside : aside);
    }
    drawing.obstacles.addDisc(loupe.at, kLoupeRadius);
}

// Dimensions don't move; their labels would cover the loupe.
void hideUnderLoupe(const MeasureText& measure, Scene& scene) {
    const Loupe& loupe = scene.loupe;
    std::erase_if(scene.labels, [&](const LabelMark& label) {
        const Vec2 half = 0.5 * measure(label.text, label.kind);
        return loupe.shown && label.kind == LabelKind::Dimension &&
               std::abs(label.at.x - loupe.at.x) < kLoupeRadius + half.x &&
               std::abs(label.at.y - loupe.at.y) < kLoupeRadius + half.y;
    });
}

} // namespace gusset
