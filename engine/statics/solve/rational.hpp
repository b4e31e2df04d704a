#pragma once
// Rational numbers for exact answers, and conversion of typed numbers to them. Included only by
// .cpp files, as it brings in Boost.

#include "core/vec2.hpp"
#include "statics/matrix/elimination.hpp"
#include "statics/solve/exact.hpp"

#include <boost/multiprecision/cpp_int.hpp>

#include <optional>

namespace gusset {

using Integer = boost::multiprecision::number<boost::multiprecision::cpp_int_backend<>,
                                              boost::multiprecision::et_off>;
using Rational = boost::multiprecision::number<
    boost::multiprecision::rational_adaptor<boost::multiprecision::cpp_int_backend<>>,
    boost::multiprecision::et_off>;

// Size does not matter: any nonzero entry can be a pivot.
template <>
struct PivotRule<Rational> {
    static double sizeOf(const Rational& value) { return value == 0 ? 0 : 1; }
    static constexpr double kNothing = 0;
    static Rational difference(const Rational& a, const Rational& b) { return a - b; }
};

struct RationalVec {
    Rational x;
    Rational y;
};

// The decimal of at most fifteen digits that equals this double, if there is one.
[[nodiscard]] std::optional<Rational> decimalOf(double);

// A direction (x, y) of small whole numbers that matches the angle to within its digits, if there
// is one: slopes such as 3 : 4, and all multiples of 45°. Not of length 1.
[[nodiscard]] std::optional<RationalVec> slopeOf(double degrees);

[[nodiscard]] std::optional<Rational> exactRoot(const Rational&); // if that is rational

// factor·√square.
[[nodiscard]] Surd surdOf(const Rational& factor, const Rational& square);

} // namespace gusset
