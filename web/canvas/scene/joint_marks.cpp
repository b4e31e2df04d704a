// Joints and their letters. A letter stays with its joint: its edge is within kLetterReach of it,
// and no other joint is as near to its middle; else it is left out, which a note says.
#include "canvas/scene/scene_builders.hpp"
#include "canvas/scene/short_name.hpp"
#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

// The joints near a place, by the cells of the board's obstacles.
class JointsNear {
public:
    explicit JointsNear(const Drawing& drawing)
        : drawing_(drawing), cells_(drawing.obstacles.cellCount()) {
        for (std::size_t i = 0; i < drawing.at.size(); ++i) {
            drawing.obstacles.forEachCell(drawing.at[i], {},
                                          [&](std::size_t cell) { cells_[cell].push_back(i); });
        }
    }

    // Those that a letter of that size could be mistaken to belong to, the nearest first.
    [[nodiscard]] std::vector<Vec2> around(std::size_t joint, Vec2 size) const {
        const double far = 2 * kLetterReach + length(size);
        const Vec2 at = drawing_.at[joint];
        std::vector<Vec2> others;
        drawing_.obstacles.forEachCell(at, {far, far}, [&](std::size_t cell) {
            for (const std::size_t other : cells_[cell]) {
                if (other != joint && length(drawing_.at[other] - at) < far) {
                    others.push_back(drawing_.at[other]);
                }
            }
        });
        std::sort(others.begin(), others.end(),
                  [&](Vec2 a, Vec2 b) { return length(a - at) < length(b - at); });
        return others;
    }

private:
    const Drawing& drawing_;
    std::vector<std::vector<std::size_t>> cells_;
};

// Around the joint, the freest directions first; of equally free ones above, then outwards.
std::vector<Vec2> waysOut(const std::vector<Vec2>& taken, bool right) {
    constexpr int kWays = 24;
    struct Way {
        Vec2 way;
        double blocked;
    };
    std::vector<Way> ways;
    for (int i = 0; i < kWays; ++i) {
        const Vec2 direction = directionOf(90 + (right ? -i : i) * 360.0 / kWays);
        const Vec2 way{direction.x, -direction.y};
        ways.push_back({way, blockage(taken, way)});
    }
    std::stable_sort(ways.begin(), ways.end(), [](const Way& a, const Way& b) {
        return a.blocked < b.blocked - kHair; // ties keep their order
    });
    std::vector<Vec2> sorted;
    for (const Way& way : ways) {
        sorted.push_back(way.way);
    }
    return sorted;
}

// From a point to the nearest of a box.
double distanceToBox(Vec2 point, Vec2 middle, Vec2 half) {
    const Vec2 off{std::max(std::abs(point.x - middle.x) - half.x, 0.0),
                   std::max(std::abs(point.y - middle.y) - half.y, 0.0)};
    return length(off);
}

std::vector<Vec2> placesAround(Vec2 joint, const std::vector<Vec2>& ways,
                               const std::vector<Vec2>& others, Vec2 size) {
    std::vector<Vec2> places;
    for (const double away : {4.0, 12.0, 22.0}) { // px from the ring
        for (const Vec2 way : ways) {
            const double reach =
                kJointRadius + away + 0.5 * (std::abs(way.x) * size.x + std::abs(way.y) * size.y);
            const Vec2 place = joint + reach * way;
            const double edge = distanceToBox(joint, place, 0.5 * size);
            const bool own = edge <= kLetterReach &&
                             std::all_of(others.begin(), others.end(),
                                         [&](Vec2 other) { return length(place - other) > reach; });
            if (own) {
                places.push_back(place);
            }
        }
    }
    return places;
}

// Returns the joints whose names may have room: all, unless there are too many to tell apart.
std::vector<bool> drawRings(Drawing& drawing) {
    std::vector<bool> selected(drawing.at.size());
    for (const JointId joint : drawing.state.selection.joints) {
        selected[joint.at()] = true;
    }
    std::vector<bool> apart(drawing.at.size());
    Thinning thinned = thinning(drawing, drawing.at.size());
    for (std::size_t i = 0; i < drawing.at.size(); ++i) {
        growBox(drawing, drawing.at[i]);
        apart[i] = !thinned.leavesOut(drawing.at[i]);
        if (!apart[i] && !selected[i]) {
            continue;
        }
        DiscMark disc;
        disc.at = drawing.at[i];
        disc.radius = static_cast<float>(kJointRadius);
        disc.ink = selected[i] ? Ink::Accent : Ink::Plain;
        drawing.scene.discs.push_back(disc);
        drawing.obstacles.addDisc(drawing.at[i], kJointRadius + 1);
    }
    for (std::size_t i = 0; thinned.isNeeded() && i < apart.size(); ++i) {
        apart[i] = apart[i] && !drawing.obstacles.isCrowded(drawing.at[i]);
    }
    return apart;
}

} // namespace

void drawJoints(Drawing& drawing) {
    const std::vector<bool> apart = drawRings(drawing);
    const JointsNear near(drawing);
    for (std::size_t i = 0; i < apart.size(); ++i) {
        LabelMark mark{"", drawing.at[i], Ink::Plain, LabelKind::Joint};
        mark.of = JointId{static_cast<int>(i)};
        if (!apart[i]) {
            leaveOut(drawing, std::move(mark));
            continue;
        }
        mark.text = shortName(drawing.state.truss.joints[i].label);
        const Vec2 size = drawing.measure(mark.text, mark.kind) + Vec2{2 * kTagPad, 0};
        const std::vector<Vec2> ways =
            waysOut(drawing.symbols.taken[i], drawing.at[i].x > drawing.middle + 1);
        std::vector<Vec2> places = placesAround(drawing.at[i], ways, near.around(i, size), size);
        drawing.wishes.push_back({std::move(mark), size, std::move(places), kJointWeight});
    }
}

} // namespace gusset
