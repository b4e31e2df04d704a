#include "canvas/scene/thinning.hpp"

#include "canvas/scene/symbols.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr std::size_t kMostMarks = 5000; // of one kind, all drawn
constexpr double kMargin = 100;          // px: the mark or its label may reach onto the board

std::uint64_t ringAt(Vec2 place) {
    const auto cell = [](double distance) {
        const double bounded = std::clamp(distance / kJointRadius, -1e9, 1e9);
        return static_cast<std::uint32_t>(static_cast<std::int32_t>(std::floor(bounded)));
    };
    return std::uint64_t{cell(place.x)} << 32U | cell(place.y);
}

} // namespace

Thinning::Thinning(std::size_t marks, Vec2 boardSize)
    : needed_(marks > kMostMarks), board_(boardSize) {}

bool Thinning::leavesOut(Vec2 place) {
    return needed_ && (isOffBoard(place) || !taken_.insert(ringAt(place)).second);
}

bool Thinning::isOffBoard(Vec2 place) const {
    return place.x < -kMargin || place.y < -kMargin || place.x > board_.x + kMargin ||
           place.y > board_.y + kMargin;
}

bool isUnderOneRing(Vec2 a, Vec2 b) { return ringAt(a) == ringAt(b); }

} // namespace gusset
