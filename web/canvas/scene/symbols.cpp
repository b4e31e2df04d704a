#include "canvas/scene/symbols.hpp"

#include "app/fields/load_text.hpp"
#include "core/tolerance.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace gusset {

namespace {

// Cosine of the angle that a symbol needs between itself and a member: about 35 degrees.
constexpr double kCrowded = 0.82;

// Two arrows on one line at one joint are drawn side by side, this many px apart.
constexpr double kBeside = 10;

// The smallest load has an arrow of this fraction of the longest.
constexpr double kLeastShare = 0.39;

constexpr double kChordGap = 9;         // px between a chord and the arrow heads on it
constexpr double kChordArrow = 24;      // px of an arrow's length
constexpr double kChordApart = 26;      // px between arrows
constexpr double kMostChordArrows = 60; // on one member, however far zoomed in

Vec2 directionInWorld(double degrees) {
    const Vec2 way = directionOf(degrees);
    return {way.x, -way.y};
}

std::vector<std::vector<Vec2>> memberRays(const Truss& truss) {
    std::vector<std::vector<Vec2>> rays(truss.joints.size());
    for (const Member& member : truss.members) {
        const Vec2 way =
            directionOnBoard(truss.joints[member.b.at()].at - truss.joints[member.a.at()].at);
        rays[member.a.at()].push_back(way);
        rays[member.b.at()].push_back(-way);
    }
    return rays;
}

// The first of the directions, in order of preference, that is clear; else the clearest.
template <std::size_t count>
Vec2 clearest(const std::vector<Vec2>& taken, const std::array<Vec2, count>& ways) {
    Vec2 best = ways.front();
    double least = 2;
    for (const Vec2 way : ways) {
        const double blocked = blockage(taken, way);
        if (blocked < kCrowded) {
            return way;
        }
        if (blocked < least) {
            least = blocked;
            best = way;
        }
    }
    return best;
}

Vec2 groundOf(const Support& support, const std::vector<Vec2>& taken) {
    if (support.kind == SupportKind::Pin) {
        return clearest(taken, std::array<Vec2, 4>{{{0, 1}, {-1, 0}, {1, 0}, {0, -1}}});
    }
    const Vec2 reaction = directionInWorld(support.reaction);
    return clearest(taken, std::array<Vec2, 2>{-reaction, reaction});
}

void placeSupports(const Truss& truss, const Camera& camera, Symbols& symbols) {
    for (std::size_t i = 0; i < truss.supports.size(); ++i) {
        const Support& support = truss.supports[i];
        std::vector<Vec2>& taken = symbols.taken[support.joint.at()];
        const Vec2 down = groundOf(support, taken);
        symbols.supports.push_back({SupportId{static_cast<int>(i)},
                                    toPixel(camera, truss.joints[support.joint.at()].at), down});
        taken.push_back(down);
    }
}

// How many loads before this one have the same direction at the same joint.
int loadsBeside(const Symbols& symbols, JointId joint, Vec2 way) {
    return static_cast<int>(
        std::count_if(symbols.loads.begin(), symbols.loads.end(), [&](const LoadSymbol& other) {
            const Vec2 otherWay = other.arrow.head - other.arrow.tail;
            return other.at == joint && dot(otherWay, way) > 0.99 * length(otherWay);
        }));
}

// The point that a load's arrow points to, and the directions taken around it.
struct Foot {
    Vec2 at; // CSS px
    std::vector<Vec2> taken;
};

Foot footOf(const Truss& truss, const Camera& camera, const Load& load,
            const std::vector<std::vector<Vec2>>& taken) {
    if (const auto* force = std::get_if<MemberForce>(&load.what)) {
        const Vec2 from = truss.joints[force->from.at()].at;
        const Vec2 along = truss.joints[force->to.at()].at - from;
        const Vec2 way = directionOnBoard(along);
        return {toPixel(camera, from + force->at / length(along) * along), {way, -way}};
    }
    const JointId joint = jointOf(load);
    return {toPixel(camera, truss.joints[joint.at()].at), taken[joint.at()]};
}

void placeLoads(const Truss& truss, const Camera& camera, Symbols& symbols) {
    const double largest = largestLoad(truss);
    const double longest = longestArrow(camera);
    const std::vector<std::vector<Vec2>> taken = symbols.taken; // loads don't push each other aside
    for (std::size_t i = 0; i < truss.loads.size(); ++i) {
        const Load& load = truss.loads[i];
        const std::optional<Vec2> force = arrowForce(load);
        if (!force || length(*force) == 0) {
            continue;
        }
        const JointId joint = jointOf(load);
        const double share = kLeastShare + (1 - kLeastShare) * length(*force) / largest;
        const Vec2 way = directionOnBoard(*force);
        const int beside = joint.valid() ? loadsBeside(symbols, joint, way) : 0;
        const Foot foot = footOf(truss, camera, load, taken);
        const PlacedArrow placed = arrowAt(foot.at + kBeside * beside * Vec2{-way.y, way.x}, way,
                                           share * longest, foot.taken);
        symbols.loads.push_back({LoadId{static_cast<int>(i)}, joint, placed.arrow, placed.pushes});
        if (joint.valid()) {
            symbols.taken[joint.at()].push_back(placed.pushes ? -way : way);
        }
    }
}

ChordSymbol chordSymbol(const std::vector<Vec2>& places, LoadId load, Vec2 out) {
    ChordSymbol symbol{load, {}, {}, out};
    const Vec2 near = kChordGap * out;
    const Vec2 far = (kChordGap + kChordArrow) * out;
    for (std::size_t k = 1; k < places.size(); ++k) {
        const Vec2 a = places[k - 1];
        const Vec2 b = places[k];
        symbol.edges.push_back({a + far, b + far});
        const double wanted = std::round(std::abs(b.x - a.x) / kChordApart);
        const int count = static_cast<int>(std::clamp(wanted, 1.0, kMostChordArrows));
        for (int arrow = 0; arrow < count; ++arrow) {
            const Vec2 foot = a + (arrow + 0.5) / count * (b - a);
            symbol.arrows.push_back({foot + far, foot + near});
        }
    }
    return symbol;
}

// Downward loads are drawn above the chord, upward ones below it.
void placeChordLoads(const Truss& truss, const Camera& camera, Symbols& symbols) {
    for (std::size_t i = 0; i < truss.loads.size(); ++i) {
        const auto* load = std::get_if<ChordLoad>(&truss.loads[i].what);
        if (load == nullptr || load->perLength == 0) {
            continue;
        }
        const Vec2 out{0, load->perLength < 0 ? -1.0 : 1.0};
        std::vector<Vec2> places;
        for (const JointId joint : load->chord) {
            places.push_back(toPixel(camera, truss.joints[joint.at()].at));
            symbols.taken[joint.at()].push_back(out);
        }
        symbols.chords.push_back(chordSymbol(places, LoadId{static_cast<int>(i)}, out));
    }
}

} // namespace

double blockage(const std::vector<Vec2>& taken, Vec2 way) {
    double most = -1;
    for (const Vec2 other : taken) {
        most = std::max(most, dot(other, way));
    }
    return most;
}

Vec2 directionOnBoard(Vec2 force) {
    const double size = length(force);
    return size > 0 ? Vec2{force.x / size, -force.y / size} : Vec2{};
}

PlacedArrow arrowAt(Vec2 joint, Vec2 way, double size, const std::vector<Vec2>& taken) {
    // The tolerance keeps a tie a tie: heads at the joint, as in print.
    const bool pushes =
        blockage(taken, -way) < kCrowded || blockage(taken, -way) <= blockage(taken, way) + kHair;
    const Vec2 near = joint + kArrowGap * (pushes ? -way : way);
    const Vec2 far = joint + (kArrowGap + size) * (pushes ? -way : way);
    return {pushes ? Arrow{far, near} : Arrow{near, far}, pushes};
}

double largestLoad(const Truss& truss) {
    double largest = 0;
    for (const Load& load : truss.loads) {
        largest = std::max(largest, length(arrowForce(load).value_or(Vec2{})));
    }
    return largest;
}

double longestArrow(const Camera& camera) {
    const double high = camera.size.y - camera.coverTop - camera.coverBottom;
    return std::clamp(0.115 * high, 40.0, 72.0);
}

Symbols layOutSymbols(const Truss& truss, const Camera& camera) {
    Symbols symbols;
    symbols.taken = memberRays(truss);
    placeSupports(truss, camera, symbols);
    placeLoads(truss, camera, symbols);
    placeChordLoads(truss, camera, symbols);
    return symbols;
}

} // namespace gusset
