#include "statics/solve/rational.hpp"

#include "core/tolerance.hpp"
#include "model/truss/truss.hpp"

#include <boost/assert/source_location.hpp>

#include <cmath>
#include <cstdlib>
#include <exception>

// The library is built without exceptions; whatever Boost would throw (division by zero, out of
// memory) is an error in this program, not in a model.
namespace boost {
void throw_exception(const std::exception&) { std::abort(); }
void throw_exception(const std::exception&, const boost::source_location&) { std::abort(); }
} // namespace boost

namespace gusset {

namespace {

namespace mp = boost::multiprecision;

constexpr double kLargestWhole = 9007199254740992.0; // 2^53: doubles hold whole numbers up to here
constexpr int kMostDecimals = 15;
constexpr int kSteepest = 1000;       // the largest p or q of a slope p : q
constexpr int kLargestFactor = 10000; // squares of larger primes stay under the root sign

// m = outside²·inside, with all small square factors outside.
struct Root {
    Integer outside = 1;
    Integer inside = 1;
};
Root rootOf(Integer m) {
    Root root;
    for (int p = 2; p < kLargestFactor && Integer(p) * p <= m; p += p == 2 ? 1 : 2) {
        while (m % p == 0) {
            m /= p;
            if (root.inside % p == 0) {
                root.inside /= p;
                root.outside *= p;
            } else {
                root.inside *= p;
            }
        }
    }
    const Integer whole = mp::sqrt(m);
    if (whole * whole == m) {
        root.outside *= whole;
    } else {
        root.inside *= m;
    }
    return root;
}

} // namespace

std::optional<Rational> decimalOf(double value) {
    double scale = 1;
    for (int decimals = 0; decimals <= kMostDecimals; ++decimals, scale *= 10) {
        const double whole = std::round(value * scale);
        if (std::abs(whole) >= kLargestWhole) {
            return std::nullopt;
        }
        // Division is correctly rounded, and so is reading a decimal (W. D. Clinger, PLDI 1990).
        if (whole / scale == value) {
            return Rational(Integer(static_cast<long long>(whole)),
                            Integer(static_cast<long long>(scale)));
        }
    }
    return std::nullopt;
}

std::optional<RationalVec> slopeOf(double degrees) {
    const Vec2 direction = directionOf(degrees);
    const bool steep = std::abs(direction.y) > std::abs(direction.x);
    const double ratio = steep ? direction.x / direction.y : direction.y / direction.x;
    const double sign = (steep ? direction.y : direction.x) < 0 ? -1 : 1;
    for (int q = 1; q <= kSteepest; ++q) {
        const double p = std::round(ratio * q);
        if (std::abs(p / q - ratio) > kSlope) {
            continue;
        }
        const Rational along(static_cast<int>(sign) * q);
        const Rational across(static_cast<int>(sign) * static_cast<int>(p));
        return steep ? RationalVec{across, along} : RationalVec{along, across};
    }
    return std::nullopt;
}

std::optional<Rational> exactRoot(const Rational& square) {
    const Integer above = mp::sqrt(Integer(mp::numerator(square)));
    const Integer below = mp::sqrt(Integer(mp::denominator(square)));
    const Rational root(above, below);
    if (root * root != square) {
        return std::nullopt;
    }
    return root;
}

Surd surdOf(const Rational& factor, const Rational& square) {
    Surd surd;
    if (factor == 0 || square == 0) {
        return surd;
    }
    const Integer below(mp::denominator(square));
    const Root root = rootOf(Integer(mp::numerator(square)) * below);
    const Rational outside = factor * Rational(root.outside, below);
    surd.numerator = Integer(mp::numerator(outside)).str();
    surd.denominator = Integer(mp::denominator(outside)).str();
    surd.radicand = root.inside.str();
    surd.value = outside.convert_to<double>() * std::sqrt(root.inside.convert_to<double>());
    return surd;
}

std::string textOf(const Surd& surd) {
    std::string text = surd.numerator;
    if (surd.radicand != "1") {
        if (text == "1" || text == "-1") {
            text.pop_back();
        }
        text += "√" + surd.radicand;
    }
    if (surd.denominator != "1") {
        text += "/" + surd.denominator;
    }
    return text;
}

} // namespace gusset
