#include "report/formula/slope_notation.hpp"

#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "phrases/working/steps.hpp"
#include "report/text/formula.hpp"

#include <array>
#include <cmath>

namespace gusset {
namespace {

constexpr const char* kDegree = "\u00B0";

// Without omicron, which looks like o, and without capitals, which could be read as a sum or a
// product.
constexpr std::array kGreek{"α", "β", "γ", "δ", "ε", "ζ", "η", "θ", "κ", "λ",
                            "μ", "ν", "ξ", "ρ", "σ", "τ", "φ", "χ", "ψ", "ω"};

constexpr int kRatioDecimals = 4; // ratios and trigonometric functions, as in tables
constexpr int kDegreeDecimals = 2;

// An exact number is written without trailing zeros, as by a person: 0.6, 45°.
NumberStyle styleFor(const Notation& notation, double value, int decimals) {
    NumberStyle style{.form = NumberForm::Decimals,
                      .digits = decimals,
                      .decimalSign = notation.numbers.decimalSign};
    style.keepZeros = !isWrittenInFull(value, style);
    return style;
}

Token relationFor(const Notation& notation, double value, int decimals) {
    return operatorToken(styleFor(notation, value, decimals).keepZeros ? kAlmost : "=");
}

// Rise, run and length of a slope as the smallest whole numbers, where possible: 3, 4, 5 for 1.5,
// 2, 2.5; the length may remain a root.
struct SlopeTriangle {
    double rise = 0;
    double run = 0;
    double squared = 0; // square of the length
    bool whole = false;
};

long long wholeNumber(double value) {
    constexpr double kFinest = 10000; // a tenth of a millimetre in metres
    const double scaled = value * kFinest;
    const double rounded = std::round(scaled);
    constexpr double kLargest = 1e8;
    return std::fabs(scaled - rounded) <= kWholeCoordinate && rounded > 0 && rounded < kLargest
               ? static_cast<long long>(rounded)
               : 0;
}

SlopeTriangle triangleOf(double rise, double run) {
    long long a = wholeNumber(rise);
    long long b = wholeNumber(run);
    if (a == 0 || b == 0) {
        return {rise, run, rise * rise + run * run, false};
    }
    long long common = a;
    for (long long rest = b; rest != 0;) {
        const long long left = common % rest;
        common = rest;
        rest = left;
    }
    const auto whole = [](long long n) { return static_cast<double>(n); };
    a /= common;
    b /= common;
    return {whole(a), whole(b), whole(a * a + b * b), true};
}

// Several equations on one line.
struct EquationRow {
    const Notation& notation;
    Formula formula{};
};

void addQuantity(EquationRow& row, const Token& angle, const char* function) {
    if (!row.formula.empty()) {
        row.formula.push_back(separatorToken(row.notation));
    }
    if (function[0] != '\0') {
        row.formula.push_back(functionToken(function));
    }
    row.formula.push_back(angle);
}

// A fraction of lengths, "≈" where one of them is written rounded.
void addFraction(EquationRow& row, const Token& name, const char* function, Token fraction,
                 bool full) {
    addQuantity(row, name, function);
    append(row.formula, {operatorToken(full ? "=" : kAlmost), std::move(fraction)});
}

// Whether sideOverLength writes all of the ratio.
bool isSideInFull(double side, double other) {
    const SlopeTriangle triangle = triangleOf(side, other);
    return triangle.whole || (isGivenInFull(side) && isGivenInFull(std::sqrt(triangle.squared)));
}

void addRatio(EquationRow& row, double value) {
    append(row.formula,
           {relationFor(row.notation, value, kRatioDecimals), ratioValue(row.notation, value)});
}

void addDegrees(EquationRow& row, const AngleLine& line) {
    addQuantity(row, angleToken(line.angle), "");
    append(row.formula, {relationFor(row.notation, line.degrees, kDegreeDecimals),
                         degreesToken(row.notation, line.degrees)});
}

// The first side of a right triangle over its hypotenuse: a fraction where the class writes exact
// numbers and there is one.
void addSide(EquationRow& row, double side, double other) {
    const Notation& notation = row.notation;
    const bool exact = notation.truss.classSettings.form == NumberForm::Exact;
    if (exact && triangleOf(side, other).whole) {
        append(row.formula, {operatorToken("="), sideOverLength(notation, side, other)});
    } else {
        addRatio(row, side / std::sqrt(side * side + other * other));
    }
}

void addSineAndCosine(EquationRow& row, const AngleLine& line) {
    const Token angle = angleToken(line.angle);
    addQuantity(row, angle, "sin");
    addSide(row, line.rise, line.run);
    addQuantity(row, angle, "cos");
    addSide(row, line.run, line.rise);
}

void addAxisCosines(EquationRow& row, const AngleLine& line, bool asFractions) {
    const Notation& notation = row.notation;
    for (const bool horizontal : {true, false}) {
        Token angle = angleToken(line.angle);
        angle.subscript += axisName(notation, horizontal);
        const double side = horizontal ? line.run : line.rise;
        addQuantity(row, angle, "cos");
        if (asFractions) {
            const double other = horizontal ? line.rise : line.run;
            append(row.formula, {operatorToken(isSideInFull(side, other) ? "=" : kAlmost),
                                 sideOverLength(notation, side, other)});
        }
        addRatio(row, side / line.length);
    }
}

void addSlope(EquationRow& row, const AngleLine& line) {
    const Notation& notation = row.notation;
    addFraction(row, wordToken(sayPlain(notation.book, phrase::kRiseOverLength)), "",
                sideOverLength(notation, line.rise, line.run), isSideInFull(line.rise, line.run));
    addFraction(row, wordToken(sayPlain(notation.book, phrase::kRunOverLength)), "",
                sideOverLength(notation, line.run, line.rise), isSideInFull(line.run, line.rise));
}

} // namespace

std::string axisName(const Notation& notation, bool horizontal) {
    if (notation.truss.classSettings.axes == AxisNames::HV) {
        return horizontal ? "H" : "V";
    }
    return horizontal ? "x" : "y";
}

Token angleToken(const Symbol& symbol) {
    const auto index = static_cast<std::size_t>(symbol.index);
    const std::size_t round = index / kGreek.size();
    return variableToken(kGreek[index % kGreek.size()],
                         round == 0 ? std::string{} : std::to_string(round));
}

Token separatorToken(const Notation& notation) {
    return operatorToken(notation.numbers.decimalSign == ',' ? ";" : ",");
}

Token ratioValue(const Notation& notation, double value) {
    return numberToken(formatNumber(value, styleFor(notation, value, kRatioDecimals)));
}

Token degreesToken(const Notation& notation, double degrees) {
    return numberToken(formatNumber(degrees, styleFor(notation, degrees, kDegreeDecimals)) +
                       kDegree);
}

Token sideOverLength(const Notation& notation, double side, double other) {
    const SlopeTriangle triangle = triangleOf(side, other);
    const double size = std::sqrt(triangle.squared);
    const bool root = triangle.whole && size != std::round(size);
    return {.kind = TokenKind::Fraction,
            .text = formatGiven(triangle.rise, notation.numbers),
            .below = formatGiven(root ? triangle.squared : size, notation.numbers),
            .rootBelow = root};
}

Formula angleFormula(const Notation& notation, const AngleLine& line) {
    EquationRow row{notation};
    switch (notation.truss.classSettings.angles) {
    case AngleStyle::Cosines:
        addAxisCosines(row, line, true);
        return row.formula;
    case AngleStyle::Slopes:
        addSlope(row, line);
        return row.formula;
    case AngleStyle::SinCos:
        break;
    }
    const Token angle = angleToken(line.angle);
    addFraction(row, angle, "tan",
                {.kind = TokenKind::Fraction,
                 .text = formatGiven(line.rise, notation.numbers),
                 .below = formatGiven(line.run, notation.numbers)},
                isGivenInFull(line.rise) && isGivenInFull(line.run));
    addDegrees(row, line);
    addSineAndCosine(row, line);
    return row.formula;
}

Formula givenAngleFormula(const Notation& notation, const AngleLine& line) {
    EquationRow row{notation};
    addDegrees(row, line);
    if (notation.truss.classSettings.angles == AngleStyle::SinCos) {
        addSineAndCosine(row, line);
    } else {
        addAxisCosines(row, line, false);
    }
    return row.formula;
}

} // namespace gusset
