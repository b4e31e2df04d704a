#include "design/loading/roof_loads.hpp"

#include "model/truss/units.hpp"
#include "phrases/design/loading.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {
namespace {

Vec2 placeOf(const Truss& truss, JointId joint) { return truss.joints[joint.at()].at; }

// The middle of the chord's highest joints: what is left of it lies on the left slope. A level
// chord has its ridge in the middle.
double ridgeOf(const Truss& truss, const std::vector<JointId>& chord) {
    double top = placeOf(truss, chord.front()).y;
    for (const JointId joint : chord) {
        top = std::max(top, placeOf(truss, joint).y);
    }
    double low = 0;
    double high = 0;
    bool found = false;
    for (const JointId joint : chord) {
        const Vec2 at = placeOf(truss, joint);
        if (at.y == top) {
            low = found ? std::min(low, at.x) : at.x;
            high = found ? std::max(high, at.x) : at.x;
            found = true;
        }
    }
    return (low + high) / 2;
}

bool isHeld(const Truss& truss, JointId joint) {
    return std::any_of(truss.supports.begin(), truss.supports.end(),
                       [&](const Support& support) { return support.joint == joint; });
}

// What a piece of the chord carries, force units.
Vec2 forceOn(const RoofLoad& load, Vec2 way, double spacing, bool isLeft) {
    const double size = isLeft ? load.left : load.right;
    const double plan = std::abs(way.x);
    const double slope = std::hypot(way.x, way.y);
    switch (load.spread) {
    case LoadSpread::AreaOnPlan:
        return {0, -size * plan * spacing};
    case LoadSpread::AreaOnSlope:
        return {0, -size * slope * spacing};
    case LoadSpread::AreaNormal: // to the right of the way from left to right, or up
        return {way.y * size * spacing, -way.x * size * spacing};
    case LoadSpread::LineOnPlan:
        return {0, -size * plan};
    case LoadSpread::LineOnSlope:
        return {0, -size * slope};
    case LoadSpread::PerJoint:
        return {};
    }
    return {};
}

constexpr std::array kSpreadNames{phrase::kSpreadAreaOnPlan,  phrase::kSpreadAreaOnSlope,
                                  phrase::kSpreadAreaNormal,  phrase::kSpreadLineOnPlan,
                                  phrase::kSpreadLineOnSlope, phrase::kSpreadPerJoint};

} // namespace

const Phrase<>& saysOf(LoadSpread spread) { return kSpreadNames[static_cast<std::size_t>(spread)]; }

std::string unitOf(LoadSpread spread, const Units& units) {
    const std::string force = symbolOf(units.force);
    const std::string length = symbolOf(units.length);
    if (spread == LoadSpread::PerJoint || force.empty() || length.empty()) {
        return spread == LoadSpread::PerJoint ? force : std::string{};
    }
    const bool isLine = spread == LoadSpread::LineOnPlan || spread == LoadSpread::LineOnSlope;
    return force + "/" + length + (isLine ? "" : "²");
}

std::vector<ChordShare> sharesOf(const Truss& truss, const std::vector<JointId>& chord,
                                 double spacing, const RoofLoad& load) {
    const double ridge = ridgeOf(truss, chord);
    std::vector<ChordShare> shares;
    for (const JointId joint : chord) {
        const bool isLeft = placeOf(truss, joint).x <= ridge;
        const bool carries = load.spread == LoadSpread::PerJoint && !isHeld(truss, joint);
        const double each = carries ? (isLeft ? load.left : load.right) : 0;
        shares.push_back({joint, 0, 0, {0, -each}});
    }
    for (std::size_t i = 1; i < chord.size(); ++i) {
        const Vec2 from = placeOf(truss, chord[i - 1]);
        const Vec2 way = placeOf(truss, chord[i]) - from;
        const Vec2 half = 0.5 * forceOn(load, way, spacing, from.x + way.x / 2 <= ridge);
        for (ChordShare* end : {&shares[i - 1], &shares[i]}) {
            end->plan += std::abs(way.x) / 2;
            end->slope += std::hypot(way.x, way.y) / 2;
            end->force = end->force + half;
        }
    }
    return shares;
}

} // namespace gusset
