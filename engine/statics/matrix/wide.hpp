#pragma once
// Numbers of 106 bits as the unevaluated sum of two doubles, for the few trusses whose stiffnesses
// differ so much that 53 bits are not enough for their forces. T. J. Dekker, A floating-point
// technique for extending the available precision, Numerische Mathematik 18 (1971) 224–242; exact
// sums by D. E. Knuth, The Art of Computer Programming 2, 3rd ed., 1997, 4.2.2. Correct only
// without fused multiply-add, which gusset_numeric turns off, and for absolute values between
// 1e-280 and 1e280.

#include "core/vec2.hpp"

#include <cmath>
#include <type_traits>

namespace gusset {

struct Wide {
    double high = 0;
    double low = 0; // at most half a unit in the last place of `high`

    Wide() = default;
    Wide(double value) : high(value) {} // implicit, so that formulas read the same in both widths
    Wide(double h, double l) : high(h), low(l) {}
};

namespace wide {

[[nodiscard]] inline Wide sum(double a, double b) { // exact
    const double s = a + b;
    const double t = s - a;
    return {s, (a - (s - t)) + (b - t)};
}
[[nodiscard]] inline Wide settled(double a, double b) { // exact for |a| ≥ |b|
    const double s = a + b;
    return {s, b - (s - a)};
}
[[nodiscard]] inline Wide product(double a, double b) { // exact
    constexpr double kSplitter = 134217729.0;           // 2^27 + 1
    const double ca = kSplitter * a;
    const double cb = kSplitter * b;
    const double aHigh = ca - (ca - a);
    const double bHigh = cb - (cb - b);
    const double aLow = a - aHigh;
    const double bLow = b - bHigh;
    const double p = a * b;
    return {p, aLow * bLow - (((p - aHigh * bHigh) - aLow * bHigh) - aHigh * bLow)};
}

} // namespace wide

[[nodiscard]] inline Wide operator-(Wide a) { return {-a.high, -a.low}; }
[[nodiscard]] inline Wide operator+(Wide a, Wide b) {
    Wide s = wide::sum(a.high, b.high);
    const Wide t = wide::sum(a.low, b.low);
    s = wide::settled(s.high, s.low + t.high);
    return wide::settled(s.high, s.low + t.low);
}
[[nodiscard]] inline Wide operator-(Wide a, Wide b) { return a + -b; }
[[nodiscard]] inline Wide operator*(Wide a, Wide b) {
    const Wide p = wide::product(a.high, b.high);
    return wide::settled(p.high, p.low + (a.high * b.low + a.low * b.high));
}
[[nodiscard]] inline Wide operator/(Wide a, Wide b) {
    const double first = a.high / b.high;
    const Wide rest = a - b * Wide(first);
    const double second = rest.high / b.high;
    const Wide last = rest - b * Wide(second);
    return wide::settled(first, second) + Wide(last.high / b.high);
}
inline Wide& operator+=(Wide& a, Wide b) { return a = a + b; }
inline Wide& operator-=(Wide& a, Wide b) { return a = a - b; }

[[nodiscard]] inline double narrow(Wide a) { return a.high + a.low; }
[[nodiscard]] inline double narrow(double a) { return a; }

[[nodiscard]] inline Wide rootOf(Wide a) { // one Newton step from the 53-bit root
    if (!(a.high > 0)) {
        return 0;
    }
    const double root = std::sqrt(a.high);
    const Wide rest = a - wide::product(root, root);
    return wide::settled(root, rest.high / (2 * root));
}

struct WideVec { // like Vec2
    Wide x;
    Wide y;

    WideVec() = default;
    WideVec(Vec2 v) : x(v.x), y(v.y) {}
    WideVec(Wide xx, Wide yy) : x(xx), y(yy) {}
};
[[nodiscard]] inline WideVec operator+(const WideVec& a, const WideVec& b) {
    return {a.x + b.x, a.y + b.y};
}
[[nodiscard]] inline WideVec operator-(const WideVec& a, const WideVec& b) {
    return {a.x - b.x, a.y - b.y};
}
[[nodiscard]] inline WideVec operator*(Wide s, const WideVec& a) { return {s * a.x, s * a.y}; }
[[nodiscard]] inline Wide dot(const WideVec& a, const WideVec& b) { return a.x * b.x + a.y * b.y; }
[[nodiscard]] inline Vec2 narrow(const WideVec& a) { return {narrow(a.x), narrow(a.y)}; }
[[nodiscard]] inline Vec2 narrow(Vec2 a) { return a; }

template <class Scalar>
using VecOf = std::conditional_t<std::is_same_v<Scalar, double>, Vec2, WideVec>;

} // namespace gusset
