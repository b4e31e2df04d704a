#include "canvas/scene/scene_builders.hpp"

#include "report/results/results_text.hpp"
#include "report/results/trust_text.hpp"
#include "statics/equilibrium/structure.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {

namespace {

constexpr double kHeadLength = 11; // px of an arrow's head
constexpr double kHeadHalf = 4.2;
constexpr double kReactionShort = 26; // px of the smallest and the largest reaction's arrow
constexpr double kReactionLong = 46;

Vec2 unit(Vec2 way) { return (1 / length(way)) * way; }

// From the joint: `down` along the symbol's axis, `across` perpendicular to it.
struct Axes {
    Vec2 joint, down;
    [[nodiscard]] Vec2 at(double along, double aside) const {
        return joint + along * down + aside * Vec2{-down.y, down.x};
    }
};

void addPlainLine(Drawing& drawing, Vec2 a, Vec2 b, float width) {
    addLine(drawing, {a, b, width, Ink::Plain, 0});
}

void addTriangle(Drawing& drawing, const Axes& axes, double depth, double half) {
    const std::array<Vec2, 3> corners{axes.at(0, 0), axes.at(depth, -half), axes.at(depth, half)};
    drawing.scene.triangles.push_back({corners[0], corners[1], corners[2], Ink::Paper, true});
    drawing.scene.triangles.push_back({corners[0], corners[1], corners[2], Ink::Plain, false});
}

void addHatchedGround(Drawing& drawing, const Axes& axes, double depth) {
    addPlainLine(drawing, axes.at(depth, -kSupportHalf), axes.at(depth, kSupportHalf), 2);
    for (double aside = -kSupportHalf + 7; aside <= kSupportHalf; aside += 6.25) {
        addPlainLine(drawing, axes.at(depth, aside), axes.at(kSupportDepth, aside - 6), 1.2F);
    }
}

void drawSupport(Drawing& drawing, const SupportSymbol& symbol) {
    const Axes axes{symbol.joint, symbol.down};
    const Support& support = drawing.state.truss.supports[symbol.support.at()];
    if (support.kind == SupportKind::Pin) {
        addTriangle(drawing, axes, 18, 11);
        addHatchedGround(drawing, axes, 18);
    } else {
        constexpr float kRoller = 2.8F;
        addTriangle(drawing, axes, 13, 10);
        addHatchedGround(drawing, axes, 19.5);
        for (const double aside : {-5.5, 5.5}) {
            drawing.scene.discs.push_back(
                {axes.at(16.2, aside), kRoller, 1.5F, Ink::Plain, Ink::Paper});
        }
    }
    drawing.obstacles.addSegment(axes.at(0, 0), axes.at(18, 0), 9);
    drawing.obstacles.addSegment(axes.at(20, -kSupportHalf + 2), axes.at(20, kSupportHalf - 2), 5);
    growBox(drawing, axes.at(kSupportDepth, -kSupportHalf));
    growBox(drawing, axes.at(kSupportDepth, kSupportHalf));
}

// One component as found in the working: along x or y for a pin, or along a roller's reaction.
struct Component {
    SupportId support;
    JointId joint;
    Vec2 force; // N
};

std::vector<Component> reactionComponents(const Drawing& drawing) {
    const Structure structure = structureOf(drawing.state.truss);
    std::vector<Component> components;
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        const double size = drawing.derived.solution.reactions[i];
        if (!isZero(drawing.derived.solution, size)) {
            components.push_back({structure.restraints[i].support, structure.restraints[i].joint,
                                  size * structure.restraints[i].along});
        }
    }
    return components;
}

// Beyond the support symbol on the arrow's own line; else on the freer side of the joint.
PlacedArrow reactionArrow(const Drawing& drawing, JointId joint, Vec2 way, double size) {
    const Vec2 at = drawing.at[joint.at()];
    for (const SupportSymbol& symbol : drawing.symbols.supports) {
        const Support& support = drawing.state.truss.supports[symbol.support.at()];
        const double along = dot(symbol.down, way);
        if (support.joint == joint && std::abs(along) > 0.9) {
            const Vec2 near = at + (kSupportDepth + 3) * symbol.down;
            const Vec2 far = near + size * symbol.down;
            return along < 0 ? PlacedArrow{{far, near}, true} : PlacedArrow{{near, far}, false};
        }
    }
    return arrowAt(at, way, size, drawing.symbols.taken[joint.at()]);
}

void addHead(Drawing& drawing, Vec2 tip, Vec2 way, Ink ink) {
    const Vec2 base = tip - kHeadLength * way;
    const Vec2 aside = kHeadHalf * Vec2{-way.y, way.x};
    drawing.scene.triangles.push_back({tip, base + aside, base - aside, ink, true});
}

void keepClearOf(Drawing& drawing, const Arrow& arrow) {
    drawing.obstacles.addSegment(arrow.tail, arrow.head, kHeadHalf);
    growBox(drawing, arrow.tail);
    growBox(drawing, arrow.head);
}

} // namespace

void addArrow(Drawing& drawing, const Arrow& arrow, Ink ink, float width) {
    const Vec2 way = unit(arrow.head - arrow.tail);
    const Vec2 shaftEnd = arrow.head - 0.7 * kHeadLength * way;
    addLine(drawing, {arrow.tail, shaftEnd, width, ink, 0});
    addHead(drawing, arrow.head, way, ink);
    keepClearOf(drawing, arrow);
}

std::vector<Vec2> placesBeside(const Arrow& arrow, bool pushes, Vec2 size) {
    constexpr double kAway = 7;
    const Vec2 far = pushes ? arrow.tail : arrow.head;
    const Vec2 near = pushes ? arrow.head : arrow.tail;
    const Vec2 out = unit(far - near);
    const Vec2 side{-out.y, out.x};
    const auto reach = [&](Vec2 way, double gap) {
        return gap + 0.5 * (std::abs(way.x) * size.x + std::abs(way.y) * size.y);
    };
    std::vector<Vec2> places{far + reach(out, kAway) * out};
    for (const double share : {0.8, 0.55, 0.3, 1.0}) {
        const Vec2 foot = near + share * (far - near);
        places.push_back(foot + reach(side, kHeadHalf + kAway) * side);
        places.push_back(foot - reach(side, kHeadHalf + kAway) * side);
    }
    places.push_back(far + reach(out, kAway + 12) * out);
    return places;
}

void drawSupports(Drawing& drawing) {
    Thinning thinned = thinning(drawing, drawing.symbols.supports.size());
    for (const SupportSymbol& symbol : drawing.symbols.supports) {
        if (!thinned.leavesOut(symbol.joint)) {
            drawSupport(drawing, symbol);
        }
    }
}

void drawReactions(Drawing& drawing) {
    const Truss& truss = drawing.state.truss;
    if (!drawing.solved || !drawing.state.view.showReactions || drawing.movement ||
        drawing.influence) {
        return;
    }
    const std::vector<Component> components = reactionComponents(drawing);
    double largest = 0;
    for (const Component& component : components) {
        largest = std::max(largest, length(component.force));
    }
    for (const Component& component : components) {
        const double size = length(component.force);
        const double drawn = kReactionShort + size / largest * (kReactionLong - kReactionShort);
        const Vec2 way = directionOnBoard(component.force);
        const PlacedArrow placed = reactionArrow(drawing, component.joint, way, drawn);
        addArrow(drawing, placed.arrow, Ink::Reaction, 2.4F);
        drawing.symbols.taken[component.joint.at()].push_back(placed.pushes ? -way : way);
        const std::string text = forceText(truss, size / toNewton(truss.units.force),
                                           drawingStyleOf(truss, drawing.derived.solution));
        LabelMark mark{text, middleOf(placed.arrow), Ink::Reaction, LabelKind::Reaction};
        mark.of = component.support;
        const Vec2 extent = drawing.measure(mark.text, mark.kind);
        wish(drawing, std::move(mark), placesBeside(placed.arrow, placed.pushes, extent),
             kReactionWeight);
    }
}

// Dashed, as they are movements and no loads.
void drawMechanism(Drawing& drawing) {
    constexpr double kFastest = 46; // px for the joint that moves most
    const Mechanism* mechanism = mechanismShown(drawing.state, drawing.derived);
    if (!mechanism || drawing.movement) {
        return;
    }
    Thinning thinned = thinning(drawing, mechanism->moving.size());
    for (const JointId joint : mechanism->moving) {
        if (thinned.leavesOut(drawing.at[joint.at()])) {
            continue;
        }
        const Vec2 velocity = mechanism->velocities[joint.at()];
        const Vec2 way = directionOnBoard(velocity);
        const double reach = kFastest * length(velocity);
        if (reach > kHeadLength) {
            const Vec2 from = drawing.at[joint.at()] + (kJointRadius + 1) * way;
            const Arrow arrow{from, from + reach * way};
            addLine(drawing, {arrow.tail, arrow.head - kHeadLength * way, 1.8F, Ink::Warning, 5});
            addHead(drawing, arrow.head, way, Ink::Warning);
            keepClearOf(drawing, arrow);
            drawing.symbols.taken[joint.at()].push_back(way);
        }
    }
}

} // namespace gusset
