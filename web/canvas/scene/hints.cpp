#include "app/fields/typed_text.hpp"
#include "canvas/scene/figures.hpp"
#include "canvas/scene/scene_builders.hpp"

#include "core/angle.hpp"
#include "core/number.hpp"
#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "phrases/tools.hpp"
#include "report/results/results_text.hpp"

#include <array>
#include <cmath>

namespace gusset {

namespace {

constexpr const char* kGap = "   ";
constexpr double kAboveFinger = 52; // px: a fingertip covers less

std::string degreeText(const Truss& truss, Vec2 way) {
    const NumberStyle style{NumberForm::Decimals, 1, truss.classSettings.decimalSign, false};
    return formatNumber(toDegrees(std::atan2(way.y, way.x)), style) + "°";
}

// Rise to run in small whole numbers, if the slope has such a ratio: "3 : 4".
std::string slopeText(Vec2 way) {
    constexpr int kLargest = 12;
    const double rise = std::abs(way.y);
    const double run = std::abs(way.x);
    for (int whole = 1; whole <= kLargest && rise > 0 && run > 0; ++whole) {
        const double other = rise / run * whole;
        const double nearest = std::round(other);
        if (nearest >= 1 && nearest <= kLargest && std::abs(other - nearest) < kDrawnSlope) {
            return std::to_string(static_cast<int>(nearest)) + kThinSpace + ":" + kThinSpace +
                   std::to_string(whole);
        }
    }
    return "";
}

// A member has no direction, so its inclination is the acute angle.
std::string memberHint(const Truss& truss, Vec2 from, Vec2 to, const Snap& snap) {
    const Vec2 way = to - from;
    std::string text = lengthText(truss, length(way));
    if (snap.like.valid() && snap.like.at() < truss.members.size()) {
        text += " = " + memberName(truss, snap.like);
    }
    text += kGap + degreeText(truss, {std::abs(way.x), std::abs(way.y)});
    const std::string slope = slopeText(way);
    return slope.empty() ? text : text + kGap + slope;
}

struct Hint {
    std::string text;
    Vec2 at; // CSS px of what it describes
};

Hint hintOf(const AppState& state) {
    const Gesture& gesture = state.gesture;
    const Chain& chain = state.chain;
    const Camera& camera = state.view.camera;
    if (gesture.kind == GestureKind::DrawMember && gesture.moved &&
        gesture.from.at != gesture.to.at) {
        return {memberHint(state.truss, gesture.from.at, gesture.to.at, gesture.snap),
                toPixel(camera, gesture.to.at)};
    }
    if (gesture.kind == GestureKind::MoveJoint && gesture.moved) {
        return {"x " + lengthText(state.truss, gesture.to.at.x) + kGap + "y " +
                    lengthText(state.truss, gesture.to.at.y),
                toPixel(camera, gesture.to.at)};
    }
    if (gesture.kind == GestureKind::DragLoad && state.pending) {
        const NumberStyle style = drawingStyleOf(state.truss);
        return {forceText(state.truss, length(gesture.force), style) + kGap +
                    degreeText(state.truss, gesture.force),
                gesture.lastPixel};
    }
    if (gesture.kind == GestureKind::None && chain.active && chain.showsTo &&
        chain.to != chain.last) {
        return {memberHint(state.truss, chain.last, chain.to, chain.snap),
                toPixel(camera, chain.to)};
    }
    return {};
}

bool isWithin(const Rect& free, Vec2 middle, Vec2 half) {
    return middle.x - half.x >= free.at.x && middle.x + half.x <= free.at.x + free.size.x &&
           middle.y - half.y >= free.at.y && middle.y + half.y <= free.at.y + free.size.y;
}

// Beside `at`, but not under a finger there; everything else avoids it.
Vec2 placeHint(Drawing& drawing, Vec2 at, Vec2 half) {
    const double aside = kAboveFinger + half.x;
    const std::array<Vec2, 4> offsets{
        {{0, -kAboveFinger - half.y}, {-aside, 0}, {aside, 0}, {0, kAboveFinger + half.y}}};
    const Loupe& loupe = drawing.scene.loupe;
    const auto meetsLoupe = [&](Vec2 middle) {
        return loupe.shown && std::abs(middle.x - loupe.at.x) < half.x + kLoupeRadius &&
               std::abs(middle.y - loupe.at.y) < half.y + kLoupeRadius;
    };
    for (const Vec2 offset : offsets) {
        if (isWithin(drawing.obstacles.free(), at + offset, half) && !meetsLoupe(at + offset)) {
            return at + offset;
        }
    }
    return at + offsets.front();
}

Vec2 addHint(Drawing& drawing, const Hint& hint) {
    LabelMark mark;
    mark.text = hint.text;
    mark.ink = Ink::Accent;
    mark.kind = LabelKind::Hint;
    const Vec2 half = 0.5 * drawing.measure(mark.text, mark.kind);
    mark.at = placeHint(drawing, hint.at, half);
    drawing.obstacles.addBox(mark.at, half);
    drawing.scene.labels.push_back(mark);
    return mark.at;
}

// A framed hint: a tap on it opens its value for typing.
void addTypable(Drawing& drawing, const Hint& hint, MemberEndField opens, std::string begins) {
    constexpr Vec2 kAir{8, 5};
    const Vec2 at = addHint(drawing, hint);
    const Vec2 half = 0.5 * drawing.measure(hint.text, LabelKind::Hint) + kAir;
    const std::array<Vec2, 4> corners{
        {at - half, at + Vec2{half.x, -half.y}, at + half, at + Vec2{-half.x, half.y}}};
    for (std::size_t i = 0; i < corners.size(); ++i) {
        addLine(drawing, {corners[i], corners[(i + 1) % corners.size()], 1.5F, Ink::Accent, 0});
    }
    drawing.scene.figures.push_back({opens, std::move(begins), at, half});
}

// Fingers don't hover: the member drawn last, or the end of a chain, offers its value.
void drawTypable(Drawing& drawing) {
    const AppState& state = drawing.state;
    const Camera& camera = state.view.camera;
    const bool rests =
        state.gesture.kind == GestureKind::None || state.gesture.kind == GestureKind::Tap;
    if (state.tool != Tool::Member || !rests) {
        return;
    }
    const Drawn& drawn = state.drawn;
    if (drawn.shown) {
        addTypable(drawing,
                   {memberHint(state.truss, drawn.from, drawn.to, {}), toPixel(camera, drawn.to)},
                   MemberEndField::Drawn, typedNumber(state.truss, length(drawn.to - drawn.from)));
    } else if (state.chain.active && state.chain.byFinger && !state.field.id) {
        addTypable(drawing,
                   {sayPlain(*state.book, phrase::kTypeLength), toPixel(camera, state.chain.last)},
                   MemberEndField::Drawing, "");
    }
}

} // namespace

void drawHint(Drawing& drawing) {
    const Hint hint = hintOf(drawing.state);
    if (!hint.text.empty()) {
        addHint(drawing, hint);
    }
    drawTypable(drawing);
}

} // namespace gusset
