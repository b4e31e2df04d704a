#include "hand/paper/truss_side.hpp"

#include <algorithm>

namespace gusset {

TrussSide sideOf(const Truss& truss, const std::vector<JointId>& part) {
    constexpr double kFar = 1e300;
    Extent inside{{kFar, kFar}, {-kFar, -kFar}};
    Extent outside = inside;
    std::vector<bool> isInside(truss.joints.size());
    for (const JointId joint : part) {
        isInside[joint.at()] = true;
    }
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        const Vec2 at = truss.joints[i].at;
        Extent& box = isInside[i] ? inside : outside;
        box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y)};
        box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y)};
    }
    if (inside.high.x <= outside.low.x) {
        return TrussSide::Left;
    }
    if (inside.low.x >= outside.high.x) {
        return TrussSide::Right;
    }
    if (inside.low.y >= outside.high.y) {
        return TrussSide::Upper;
    }
    return inside.high.y <= outside.low.y ? TrussSide::Lower : TrussSide::None;
}

} // namespace gusset
