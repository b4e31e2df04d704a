#pragma once

#include <numbers>

namespace gusset {

[[nodiscard]] constexpr double toDegrees(double radians) {
    return radians * 180 / std::numbers::pi;
}
[[nodiscard]] constexpr double toRadians(double degrees) {
    return degrees * (std::numbers::pi / 180);
}

} // namespace gusset
