#include "report/formula/computed_notation.hpp"

#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "report/formula/exact_notation.hpp"
#include "report/formula/slope_notation.hpp"
#include "report/text/formula.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace gusset {
namespace {

struct SmallFraction {
    long long above = 0;
    long long below = 1;
};

// The fraction that a number is, by continued fractions (L. Euler, De fractionibus continuis,
// 1737), if its denominator is small. Two fractions with denominators up to kLargestBelow differ by
// more than the tolerance, up to kLargestValue: none is taken for another.
std::optional<SmallFraction> fractionOf(double value) {
    constexpr long long kLargestBelow = 1000;
    constexpr double kLargestValue = 1e5;
    constexpr double kLargestWhole = 1e9;
    if (!(value >= 0) || value > (value == std::floor(value) ? kLargestWhole : kLargestValue)) {
        return std::nullopt;
    }
    SmallFraction before{1, 0};
    double rest = value;
    SmallFraction now{static_cast<long long>(std::floor(rest)), 1};
    while (now.below <= kLargestBelow) {
        const double is = static_cast<double>(now.above) / static_cast<double>(now.below);
        if (std::fabs(is - value) <= kSameNumber * std::max(value, 1.0)) {
            return now;
        }
        rest = 1 / (rest - std::floor(rest));
        if (!(rest <= kLargestBelow)) {
            return std::nullopt;
        }
        const auto next = static_cast<long long>(std::floor(rest));
        const SmallFraction after{next * now.above + before.above, next * now.below + before.below};
        before = now;
        now = after;
    }
    return std::nullopt;
}

Surd surdFrom(long long above, long long radicand, long long below, double value) {
    return {std::to_string(above), std::to_string(radicand), std::to_string(below), value};
}

// A fraction, or the root of one.
std::optional<Surd> surdOf(double value) {
    if (const auto plain = fractionOf(value)) {
        return surdFrom(plain->above, 1, plain->below, value);
    }
    const auto square = fractionOf(value * value);
    constexpr long long kLargestRadicand = 100000000;
    if (!square || square->above > kLargestRadicand / square->below) {
        return std::nullopt;
    }
    long long radicand = square->above * square->below;
    SmallFraction factor{1, square->below};
    for (long long root = 2; root * root <= radicand; ++root) {
        while (radicand % (root * root) == 0) {
            radicand /= root * root;
            factor.above *= root;
        }
    }
    long long common = factor.above;
    for (long long rest = factor.below; rest != 0;) {
        const long long left = common % rest;
        common = rest;
        rest = left;
    }
    return surdFrom(factor.above / common, radicand, factor.below / common, value);
}

// 3/√13, as in slopes, rather than 3√13/13.
Formula overRoot(const Surd& surd) {
    return {{.kind = TokenKind::Fraction,
             .text = surd.numerator,
             .below = surd.radicand,
             .rootBelow = true}};
}

bool writesExactly(const Notation& notation) {
    return notation.truss.classSettings.form == NumberForm::Exact &&
           !notation.working.exact.forces.empty();
}

ComputedNumber coefficientInDecimals(const Notation& notation, double value) {
    constexpr double kSmall = 0.1; // of which four decimals would show fewer than four figures
    if (std::fabs(value) < kSmall) {
        const std::string text = formatGiven(value, notation.numbers);
        const NumberStyle six{.form = NumberForm::Significant, .digits = 6};
        return {{numberToken(text)}, isWrittenInFull(value, six)};
    }
    constexpr NumberStyle kRatio{.form = NumberForm::Decimals, .digits = 4};
    return {{ratioValue(notation, value)}, isWrittenInFull(value, kRatio)};
}

bool isInFull(const Notation& notation, const Factor& factor) {
    switch (factor.kind) {
    case FactorKind::Coefficient:
    case FactorKind::Amount:
        return computedNumber(notation, factor).inFull;
    case FactorKind::Known:
        return exactTokens(notation, factor.symbol, factor.value) ||
               isWrittenInFull(factor.value, notation.numbers);
    case FactorKind::Bracket:
        return areInFull(notation, factor.terms);
    default:
        return true;
    }
}

Formula labelOf(const Notation& notation, const std::vector<Multiple>& of) {
    Formula formula;
    for (const Multiple& multiple : of) {
        if (!formula.empty() || multiple.factor < 0) {
            formula.push_back(operatorToken(multiple.factor < 0 ? kMinus : "+"));
        }
        const double size = std::fabs(multiple.factor);
        if (size != 1) {
            append(
                formula,
                computedNumber(notation, {.kind = FactorKind::Coefficient, .value = size}).tokens);
            formula.push_back(operatorToken(kDot));
        }
        append(formula, {operatorToken("("), numberToken(std::to_string(multiple.number)),
                         operatorToken(")")});
    }
    formula.push_back(operatorToken(":"));
    return formula;
}

} // namespace

ComputedNumber computedNumber(const Notation& notation, const Factor& factor) {
    if (writesExactly(notation)) {
        const auto surd = surdOf(factor.value);
        if (surd && isShort(*surd)) {
            const bool ratio =
                factor.kind == FactorKind::Coefficient && surd->denominator == surd->radicand;
            return {ratio && !isPlainNumber(*surd) ? overRoot(*surd) : surdTokens(notation, *surd),
                    true};
        }
    }
    if (factor.kind == FactorKind::Coefficient) {
        return coefficientInDecimals(notation, factor.value);
    }
    return {{numberToken(formatNumber(factor.value, notation.numbers))},
            isWrittenInFull(factor.value, notation.numbers)};
}

bool areInFull(const Notation& notation, const std::vector<Term>& terms) {
    return std::all_of(terms.begin(), terms.end(), [&](const Term& term) {
        return std::all_of(term.factors.begin(), term.factors.end(),
                           [&](const Factor& factor) { return isInFull(notation, factor); });
    });
}

bool isInFull(const Notation& notation, const NumberLine& line) {
    return areInFull(notation, line.left) && areInFull(notation, line.right) &&
           std::all_of(line.of.begin(), line.of.end(), [&](const Multiple& multiple) {
               const double size = std::fabs(multiple.factor);
               return computedNumber(notation, {.kind = FactorKind::Coefficient, .value = size})
                   .inFull;
           });
}

Formula numberLineFormula(const Notation& notation, const NumberLine& line) {
    Formula formula = line.of.empty() ? Formula{} : labelOf(notation, line.of);
    append(formula, sumFormula(notation, line.left));
    formula.push_back(operatorToken(isInFull(notation, line) ? "=" : kAlmost));
    append(formula, sumFormula(notation, line.right));
    return formula;
}

Formula resultBy(const Notation& notation, const Found& found, const std::vector<Term>& by) {
    const Formula result = resultFormula(notation, found, Told::AsFound);
    Formula formula{result.front(), operatorToken(areInFull(notation, by) ? "=" : kAlmost)};
    append(formula, sumFormula(notation, by));
    formula.insert(formula.end(), result.begin() + 1, result.end());
    return formula;
}

Formula turnedFormula(const Notation& notation, const TurnedAngle& angle) {
    constexpr NumberStyle kDegrees{.form = NumberForm::Decimals, .digits = 2};
    return {angleToken(angle.first), operatorToken(angle.minus ? kMinus : "+"),
            angleToken(angle.second),
            operatorToken(isWrittenInFull(angle.degrees, kDegrees) ? "=" : kAlmost),
            degreesToken(notation, angle.degrees)};
}

} // namespace gusset
