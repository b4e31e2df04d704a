#include "canvas/scene/scene.hpp"

#include "app/fields/load_text.hpp"
#include "canvas/scene/lesson.hpp"
#include "canvas/scene/scene_builders.hpp"
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

// Positions for a member's value: beside its midpoint on either side, then towards its ends. The
// ends are taken in an order that is mirrored about the upright through `middle`, so that a
// symmetric truss has symmetric labels.
std::vector<Vec2> placesAlong(Vec2 a, Vec2 b, Vec2 size, double half, double middle) {
    const bool level = std::abs(a.y - b.y) <= 1;
    const bool right = 0.5 * (a.x + b.x) > middle + 1;
    if (level ? (a.x > b.x) != right : a.y < b.y) {
        std::swap(a, b);
    }
    const Vec2 along = b - a;
    Vec2 side = (1 / length(along)) * Vec2{along.y, -along.x};
    const bool upright = std::abs(along.x) <= 1;
    if (upright ? (side.x < 0) != right : side.y > 0) {
        side = -side; // first above a member, or to the inner side of a vertical one
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

LabelMark forceMark(const Drawing& drawing, std::size_t member, Vec2 a, Vec2 b, bool written) {
    LabelMark mark{written ? memberFigure(drawing, member) : "", 0.5 * (a + b),
                   failsCheck(drawing, member) ? Ink::Warning : styleOf(drawing, member).ink,
                   LabelKind::Force};
    mark.of = MemberId{static_cast<int>(member)};
    return mark;
}

void wishForceLabel(Drawing& drawing, std::size_t member, Vec2 a, Vec2 b) {
    if (length(b - a) < kLeastLabelled) {
        const bool few = !thinning(drawing, drawing.state.truss.members.size()).isNeeded();
        leaveOut(drawing, forceMark(drawing, member, a, b, few));
        return;
    }
    LabelMark mark = forceMark(drawing, member, a, b, true);
    const Vec2 size = drawing.measure(mark.text, mark.kind);
    wish(drawing, std::move(mark),
         placesAlong(a, b, size, std::max(styleOf(drawing, member).half(), drawing.framed[member]),
                     drawing.middle),
         kForceWeight + shareOfLargest(drawing, member));
}

void drawMembers(Drawing& drawing) {
    const bool many = thinning(drawing, drawing.state.truss.members.size()).isNeeded();
    for (std::size_t i = 0; i < drawing.state.truss.members.size(); ++i) {
        const Member& member = drawing.state.truss.members[i];
        const Vec2 a = drawing.at[member.a.at()];
        const Vec2 b = drawing.at[member.b.at()];
        if (many && isUnderOneRing(a, b)) {
            if (showsForces(drawing)) {
                leaveOut(drawing, forceMark(drawing, i, a, b, false));
            }
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

void takePlaced(Drawing& drawing, PlacedLabels placed) {
    for (LabelMark& mark : placed.marks) {
        const Vec2 half = 0.5 * drawing.measure(mark.text, mark.kind);
        growBox(drawing, mark.at - half);
        growBox(drawing, mark.at + half);
        const LoadId load = hitOf<LoadId>(mark.of);
        if (load.valid() && canTypeFigure(drawing.state.truss.loads[load.at()])) {
            const std::string typed =
                loadFigureTyped(drawing.state.truss, drawing.state.truss.loads[load.at()]);
            drawing.scene.figures.push_back({LoadField{load}, typed, mark.at, half});
        }
        drawing.scene.labels.push_back(std::move(mark));
    }
    for (LabelMark& mark : placed.unplaced) {
        drawing.scene.unplaced.push_back(std::move(mark));
    }
}

} // namespace

Scene buildScene(const AppState& state, const Derived& derived, const MeasureText& measure,
                 DrawnOn on) {
    const Camera& camera = state.view.camera;
    Drawing drawing{.state = state,
                    .derived = derived,
                    .measure = measure,
                    .on = on,
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
                    .framed = std::vector<double>(state.truss.members.size()),
                    .middle = 0,
                    .noteCorner = {},
                    .low = {1e9, 1e9},
                    .high = {-1e9, -1e9}};
    drawing.checks = checksLit(drawing);
    followPointer(state, drawing.symbols);
    drawing.scene.camera = camera;
    drawing.scene.gridStep = state.view.gridStep;
    drawing.scene.ground = state.view.ground;
    drawing.scene.metre = 1 / toMetre(state.truss.units.length);
    for (const Joint& joint : state.truss.joints) {
        drawing.at.push_back(toPixel(camera, joint.at));
    }
    const Extent box = extent(state.truss);
    drawing.middle = toPixel(camera, 0.5 * (box.low + box.high)).x;
    drawUseBands(drawing);
    drawHalos(drawing);
    drawCheckCaution(drawing);
    drawNews(drawing);
    drawMembers(drawing);
    drawSupports(drawing);
    drawLoads(drawing);
    drawReactions(drawing);
    if (!offersStep(state, derived)) { // else what is missing comes with the next steps
        drawMechanism(drawing);
    }
    drawMovement(drawing);
    drawInfluence(drawing);
    drawJoints(drawing);
    if (state.view.teaches) {
        drawLesson(drawing);
    }
    drawGesture(drawing);
    placeLoupe(drawing);
    drawHint(drawing);
    PlacedLabels placed = placeLabels(drawing.wishes, drawing.obstacles);
    if (reserveNotes(drawing, placed)) {
        placed = placeLabels(std::move(drawing.wishes), drawing.obstacles);
    }
    takePlaced(drawing, std::move(placed));
    drawDimensions(drawing);
    drawNotes(drawing);
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

void keepFrame(Drawing& drawing, MemberId member, double halfWidth) {
    const Member& framed = drawing.state.truss.members[member.at()];
    drawing.obstacles.addSegment(drawing.at[framed.a.at()], drawing.at[framed.b.at()], halfWidth);
    double& half = drawing.framed[member.at()];
    half = std::max(half, halfWidth);
}

void leaveOut(Drawing& drawing, LabelMark mark) {
    if (drawing.obstacles.isWithin(mark.at, {})) {
        drawing.scene.unplaced.push_back(std::move(mark));
    }
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
