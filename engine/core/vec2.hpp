#pragma once

namespace gusset {

// A point or a vector in the plane of the truss: x to the right, y up.
struct Vec2 {
    double x = 0;
    double y = 0;

    bool operator==(const Vec2&) const = default;
};

[[nodiscard]] constexpr Vec2 operator+(Vec2 a, Vec2 b) { return {a.x + b.x, a.y + b.y}; }
[[nodiscard]] constexpr Vec2 operator-(Vec2 a, Vec2 b) { return {a.x - b.x, a.y - b.y}; }
[[nodiscard]] constexpr Vec2 operator*(double k, Vec2 a) { return {k * a.x, k * a.y}; }

[[nodiscard]] constexpr double dot(Vec2 a, Vec2 b) { return a.x * b.x + a.y * b.y; }

// The moment of force b about the tail of arm a, anticlockwise positive.
[[nodiscard]] constexpr double cross(Vec2 a, Vec2 b) { return a.x * b.y - a.y * b.x; }

// By sqrt and not hypot, whose last bit differs between C libraries.
[[nodiscard]] double length(Vec2 a);

} // namespace gusset
