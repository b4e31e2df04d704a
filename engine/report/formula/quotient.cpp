#include "report/formula/quotient.hpp"

#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "report/formula/slope_notation.hpp"
#include "report/text/formula.hpp"

#include <cmath>

namespace gusset {
namespace {

// A number as it is written, and whether that is all of it.
struct WrittenNumber {
    std::string text;
    bool full = true;
};

// The terms with the unknown and those without; what it is multiplied by, and what that balances.
struct Parted {
    std::vector<const Term*> unknown{};
    std::vector<const Term*> known{};
    double coefficient = 0;
    double left = 0;
};

Parted partsOf(const Equation& equation, const Symbol& symbol) {
    Parted parts{{}, {}, coefficientOf(equation, symbol), -constantOf(equation)};
    for (const Term& term : equation.terms) {
        const Factor* unknown = unknownIn(term);
        (unknown && unknown->symbol == symbol ? parts.unknown : parts.known).push_back(&term);
    }
    return parts;
}

WrittenNumber rounded(double value, const NumberStyle& style) {
    NumberStyle shown = style;
    const bool full = isWrittenInFull(value, style);
    shown.keepZeros = !full;
    return {formatNumber(value, shown), full};
}

// A given length as it is given, a sine as in the slopes, a product to five figures.
WrittenNumber divisorOf(const Notation& notation, const Parted& parts) {
    constexpr int kFigures = 5;
    const double size = std::fabs(parts.coefficient);
    const bool single = parts.unknown.size() == 1 && parts.unknown.front()->factors.size() == 2;
    if (single && isFunctionOfAngle(parts.unknown.front()->factors[1].kind)) {
        const std::string text = ratioValue(notation, size).text;
        return {text, isWrittenInFull(size, {.form = NumberForm::Decimals, .digits = 4})};
    }
    if (single && parts.unknown.front()->factors[1].kind == FactorKind::Arm) {
        return {formatGiven(size, notation.numbers), isGivenInFull(size)};
    }
    return rounded(size, {.form = NumberForm::Significant,
                          .digits = kFigures,
                          .decimalSign = notation.numbers.decimalSign});
}

WrittenNumber dividendOf(const Notation& notation, const Parted& parts) {
    const double value = parts.coefficient < 0 ? -parts.left : parts.left;
    const bool given = parts.known.size() == 1 && parts.known.front()->factors.size() == 1 &&
                       parts.known.front()->factors.front().kind == FactorKind::Load;
    const bool exact = notation.truss.classSettings.form == NumberForm::Exact; // without zeros
    return given || exact
               ? WrittenNumber{formatGiven(value, notation.numbers), isGivenInFull(value)}
               : WrittenNumber{formatNumber(value, notation.numbers),
                               isWrittenInFull(value, notation.numbers)};
}

} // namespace

Formula quotientOf(const Notation& notation, const Equation& equation, const Found& found) {
    const Parted parts = partsOf(equation, found.symbol);
    const bool divides = std::fabs(std::fabs(parts.coefficient) - 1) > kParallel;
    if (found.as == FoundAs::Zero || parts.unknown.empty() || !divides) {
        return {};
    }
    const WrittenNumber above = dividendOf(notation, parts);
    const WrittenNumber below = divisorOf(notation, parts);
    const bool full = above.full && below.full;
    if (!full && notation.truss.classSettings.form == NumberForm::Exact) {
        return {};
    }
    return {operatorToken(full ? "=" : kAlmost),
            {.kind = TokenKind::Fraction, .text = above.text, .below = below.text}};
}

} // namespace gusset
