#include "canvas/scene/scene.hpp"

#include "canvas/scene/lesson.hpp"
#include "canvas/scene/scene_builders.hpp"
#include "canvas/scene/short_name.hpp"
#include "canvas/scene/thinning.hpp"
#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr double kSingleWidth = 3; // px of a tension member's line
constexpr double kTwinWidth = 1.7; // and of each line of a compression member
constexpr double kTwinApart = 4.6; // between the centre lines of the two
constexpr double kZeroWidth = 1.6;
constexpr double kPlainWidth = 2.5;
constexpr double kWidest = 6;         // px added for the largest force, when width follows force
constexpr double kLeastLabelled = 26; // px: a shorter member has no room for a value
constexpr double kLabelAway = 1; // px added to the label's margin between a member and its value

Rect freeBoard(const Camera& camera) {
    return {{0, camera.coverTop},
            {std::max(camera.size.x - camera.coverRight, 1.0),
             std::max(camera.size.y - camera.coverTop - camera.coverBottom, 1.0)}};
}

double largestForce(const Solution& solution) {
    double largest = 0;
    for (const double force : solution.forces) {
        largest = std::max(largest, std::abs(force));
    }
    return largest;
}

double shareOfLargest(const Drawing& drawing, std::size_t member) {
    const double force = std::abs(drawing.derived.solution.forces[member]);
    return drawing.largestForce > 0 ? force / drawing.largestForce : 0;
}

struct MemberStyle {
    Ink ink = Ink::Plain;
    double width = kPlainWidth; // of the line
    double apart = 0;           // of the two lines
    float dash = 0;

    [[nodiscard]] double half() const { return 0.5 * (width + apart); }
};

bool showsForces(const Drawing& drawing) {
    return drawing.solved && drawing.state.view.showForces && !drawing.movement &&
           !drawing.influence;
}

const ChecksShown* checksLit(const Drawing& drawing) {
    const ChecksShown& shown = drawing.derived.checks;
    const bool lit = showsForces(drawing) && showsUse(drawing.state) &&
                     isOf(shown, drawing.state) && !shown.checks.members.empty();
    return lit ? &shown : nullptr;
}

MemberStyle styleOf(const Drawing& drawing, std::size_t member) {
    if (drawing.movement) {
        return {Ink::Muted, kZeroWidth, 0, 0};
    }
    if (!showsForces(drawing)) {
        return {};
    }
    const double more =
        drawing.state.view.widthByForce ? kWidest * shareOfLargest(drawing, member) : 0;
    switch (senseOf(drawing.derived.solution, MemberId{static_cast<int>(member)})) {
    case Sense::Tension:
        return {Ink::Tension, kSingleWidth + more, 0, 0};
    case Sense::Compression:
        return {Ink::Compression, kTwinWidth + more / 3, kTwinApart + 2 * more / 3, 0};
    case Sense::Zero:
        break;
    }
    return {Ink::Zero, kZeroWidth, 0, 5};
}

// Positions for a member's value: beside its midpoint on either side, then towards its ends.
std::vector<Vec2> placesAlong(Vec2 a, Vec2 b, Vec2 size, double half) {
    const Vec2 along = b - a;
    Vec2 side = (1 / length(along)) * Vec2{along.y, -along.x};
    if (side.y > kHair || (std::abs(side.y) <= kHair && side.x < 0)) {
        side = -side; // first above a member, or to the right of a vertical one
    }
    const Vec2 halfLabel = 0.5 * size + Vec2{kLabelAir, kLabelAir};
    const double reach =
        std::abs(side.x) * halfLabel.x + std::abs(side.y) * halfLabel.y + half + kLabelAway;
    std::vector<Vec2> places;
    for (const double share : {0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82}) {
        const Vec2 foot = a + share * along;
        places.push_back(foot + reach * side);
        places.push_back(foot - reach * side);
    }
    return places;
}

void wishForceLabel(Drawing& drawing, std::size_t member, Vec2 a, Vec2 b) {
    const MemberStyle style = styleOf(drawing, member);
    LabelMark mark;
    mark.text = memberFigure(drawing, member);
    mark.ink = failsCheck(drawing, member) ? Ink::Warning : style.ink;
    mark.kind = LabelKind::Force;
    if (length(b - a) < kLeastLabelled) {
        return;
    }
    const Vec2 size = drawing.measure(mark.text, mark.kind);
    wish(drawing, mark, placesAlong(a, b, size, style.half()),
         kForceWeight + shareOfLargest(drawing, member));
}

void drawMembers(Drawing& drawing) {
    const bool many = thinning(drawing, drawing.state.truss.members.size()).isNeeded();
    for (std::size_t i = 0; i < drawing.state.truss.members.size(); ++i) {
        const Member& member = drawing.state.truss.members[i];
        const Vec2 a = drawing.at[member.a.at()];
        const Vec2 b = drawing.at[member.b.at()];
        if (many && isUnderOneRing(a, b)) {
            continue;
        }
        const MemberStyle style = styleOf(drawing, i);
        const Vec2 way = length(b - a) > 0 ? (1 / length(b - a)) * (b - a) : Vec2{};
        const Vec2 aside = 0.5 * style.apart * Vec2{-way.y, way.x};
        const auto width = static_cast<float>(style.width);
        addLine(drawing, {a + aside, b + aside, width, style.ink, style.dash});
        if (style.apart > 0) {
            addLine(drawing, {a - aside, b - aside, width, style.ink, style.dash});
        }
        drawing.obstacles.addSegment(a, b, style.half());
        if (showsForces(drawing)) {
            wishForceLabel(drawing, i, a, b);
        }
    }
}

// Around the joint, the freest directions first.
std::vector<Vec2> placesAround(Vec2 joint, const std::vector<Vec2>& taken, Vec2 size) {
    constexpr int kWays = 24;
    struct Way {
        Vec2 way;
        double blocked;
    };
    std::vector<Way> ways;
    for (int i = 0; i < kWays; ++i) {
        const Vec2 direction = directionOf(90 + i * 360.0 / kWays);
        const Vec2 way{direction.x, -direction.y};
        ways.push_back({way, blockage(taken, way)});
    }
    std::stable_sort(ways.begin(), ways.end(), [](const Way& a, const Way& b) {
        return a.blocked < b.blocked - kHair; // ties keep their order: above first
    });
    std::vector<Vec2> places;
    for (const double away : {4.0, 12.0, 22.0, 34.0}) { // px from the ring
        for (const Way& way : ways) {
            const double reach =
                kJointRadius + away +
                0.5 * (std::abs(way.way.x) * size.x + std::abs(way.way.y) * size.y);
            places.push_back(joint + reach * way.way);
        }
    }
    return places;
}

// Returns the joints whose names may have room: all, unless there are too many to tell apart.
std::vector<JointId> drawRings(Drawing& drawing) {
    std::vector<bool> selected(drawing.at.size());
    for (const JointId joint : drawing.state.selection.joints) {
        selected[joint.at()] = true;
    }
    std::vector<JointId> apart;
    Thinning thinned = thinning(drawing, drawing.at.size());
    for (std::size_t i = 0; i < drawing.at.size(); ++i) {
        growBox(drawing, drawing.at[i]);
        const bool stands = !thinned.leavesOut(drawing.at[i]);
        if (stands) {
            apart.push_back(JointId{static_cast<int>(i)});
        }
        if (!stands && !selected[i]) {
            continue;
        }
        DiscMark disc;
        disc.at = drawing.at[i];
        disc.radius = static_cast<float>(kJointRadius);
        disc.ink = selected[i] ? Ink::Accent : Ink::Plain;
        drawing.scene.discs.push_back(disc);
        drawing.obstacles.addDisc(drawing.at[i], kJointRadius + 1);
    }
    if (thinned.isNeeded()) {
        std::erase_if(apart, [&](JointId joint) {
            return drawing.obstacles.isCrowded(drawing.at[joint.at()]);
        });
    }
    return apart;
}

void wishJointNames(Drawing& drawing, const std::vector<JointId>& joints) {
    for (const JointId joint : joints) {
        LabelMark mark;
        mark.text = shortName(drawing.state.truss.joints[joint.at()].label);
        mark.kind = LabelKind::Joint;
        const Vec2 size = drawing.measure(mark.text, mark.kind);
        wish(drawing, mark,
             placesAround(drawing.at[joint.at()], drawing.symbols.taken[joint.at()], size),
             kJointWeight);
    }
}

// The arrow being dragged ends under the pointer, whatever its length would be relative to the
// others.
void followPointer(const AppState& state, Symbols& symbols) {
    const Gesture& gesture = state.gesture;
    if (gesture.kind != GestureKind::DragLoad || !state.pending || gesture.perPixel <= 0) {
        return;
    }
    const int load =
        gesture.load.valid() ? gesture.load.index : static_cast<int>(state.truss.loads.size()) - 1;
    for (LoadSymbol& symbol : symbols.loads) {
        if (symbol.load.index == load) {
            const Vec2 joint = toPixel(state.view.camera, state.truss.joints[symbol.at.at()].at);
            const Vec2 way = (gesture.byTail ? -1 : 1) * directionOnBoard(gesture.force);
            const Vec2 near = joint + kArrowGap * way;
            const double reach = length(gesture.force) / gesture.perPixel;
            const Vec2 far = joint + std::max(reach, kArrowGap + 1) * way;
            symbol.arrow = gesture.byTail ? Arrow{far, near} : Arrow{near, far};
            symbol.pushes = gesture.byTail;
        }
    }
}

} // namespace

Scene buildScene(const AppState& state, const Derived& derived, const MeasureText& measure) {
    const Camera& camera = state.view.camera;
    Drawing drawing{.state = state,
                    .derived = derived,
                    .measure = measure,
                    .symbols = layOutSymbols(state.truss, camera),
                    .at = {},
                    .solved = derived.revision == state.revision && derived.solution.solved,
                    .movement = movementShown(state, derived),
                    .influence = influenceLit(state, derived),
                    .checks = nullptr,
                    .largestForce = largestForce(derived.solution),
                    .scene = {},
                    .obstacles = Obstacles(freeBoard(camera)),
                    .wishes = {},
                    .low = {1e9, 1e9},
                    .high = {-1e9, -1e9}};
    drawing.checks = checksLit(drawing);
    followPointer(state, drawing.symbols);
    drawing.scene.camera = camera;
    drawing.scene.gridStep = state.view.gridStep;
    for (const Joint& joint : state.truss.joints) {
        drawing.at.push_back(toPixel(camera, joint.at));
    }
    drawUseBands(drawing);
    drawHalos(drawing);
    drawCheckCaution(drawing);
    drawMembers(drawing);
    drawSupports(drawing);
    drawLoads(drawing);
    drawReactions(drawing);
    if (!offersStep(state, derived)) { // else what is missing comes with the next steps
        drawMechanism(drawing);
    }
    drawMovement(drawing);
    drawInfluence(drawing);
    wishJointNames(drawing, drawRings(drawing));
    if (state.view.teaches) {
        drawLesson(drawing);
    }
    drawGesture(drawing);
    placeLoupe(drawing);
    drawHint(drawing);
    for (LabelMark& mark : placeLabels(std::move(drawing.wishes), drawing.obstacles)) {
        const Vec2 half = 0.5 * measure(mark.text, mark.kind);
        growBox(drawing, mark.at - half);
        growBox(drawing, mark.at + half);
        drawing.scene.labels.push_back(std::move(mark));
    }
    drawDimensions(drawing);
    hideUnderLoupe(measure, drawing.scene);
    return std::move(drawing.scene);
}

Thinning thinning(const Drawing& drawing, std::size_t marks) {
    return {marks, drawing.state.view.camera.size};
}

void growBox(Drawing& drawing, Vec2 point) {
    drawing.low = {std::min(drawing.low.x, point.x), std::min(drawing.low.y, point.y)};
    drawing.high = {std::max(drawing.high.x, point.x), std::max(drawing.high.y, point.y)};
}

void wish(Drawing& drawing, LabelMark mark, std::vector<Vec2> places, double weight) {
    const Vec2 size = drawing.measure(mark.text, mark.kind);
    drawing.wishes.push_back({std::move(mark), size, std::move(places), weight});
}

// Coordinates far outside would lose precision as floats, so lines are clipped to the board and a
// margin (Liang and Barsky's clipping, ACM Trans. Graphics 3 (1984) 1-22).
void addLine(Drawing& drawing, const LineMark& line) {
    constexpr double kMargin = 100;
    const Vec2 size = drawing.state.view.camera.size;
    const Vec2 along = line.b - line.a;
    double enters = 0;
    double leaves = 1;
    const auto cut = [&](double step, double room) {
        if (step < 0) {
            enters = std::max(enters, room / step);
        } else if (step > 0) {
            leaves = std::min(leaves, room / step);
        } else if (room < 0) {
            leaves = -1;
        }
    };
    cut(-along.x, line.a.x + kMargin);
    cut(along.x, size.x + kMargin - line.a.x);
    cut(-along.y, line.a.y + kMargin);
    cut(along.y, size.y + kMargin - line.a.y);
    if (enters > leaves) {
        return;
    }
    LineMark drawn = line;
    drawn.a = line.a + enters * along;
    drawn.b = line.a + leaves * along;
    drawing.scene.lines.push_back(drawn);
}

} // namespace gusset
