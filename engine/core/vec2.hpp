#pragma once
// A point or a direction in the plane of the truss: x to the right, y up.

#include <cmath>

namespace gusset {

struct Vec2 {
    double x = 0;
    double y = 0;

    friend bool operator==(const Vec2&, const Vec2&) = default;
};

[[nodiscard]] constexpr Vec2 operator+(Vec2 a, Vec2 b) { return {a.x + b.x, a.y + b.y}; }
[[nodiscard]] constexpr Vec2 operator-(Vec2 a, Vec2 b) { return {a.x - b.x, a.y - b.y}; }
[[nodiscard]] constexpr Vec2 operator-(Vec2 a) { return {-a.x, -a.y}; }
[[nodiscard]] constexpr Vec2 operator*(double s, Vec2 a) { return {s * a.x, s * a.y}; }

[[nodiscard]] constexpr double dot(Vec2 a, Vec2 b) { return a.x * b.x + a.y * b.y; }

// z component of a × b: positive when b lies anticlockwise of a.
[[nodiscard]] constexpr double cross(Vec2 a, Vec2 b) { return a.x * b.y - a.y * b.x; }

// With sqrt, not hypot, whose last bit differs between C libraries.
[[nodiscard]] double length(Vec2 a);

[[nodiscard]] inline bool isFinite(Vec2 a) { return std::isfinite(a.x) && std::isfinite(a.y); }

} // namespace gusset
