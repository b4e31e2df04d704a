// How an equation is written: its terms in numbers or in names; see notation.hpp.

#include "core/number.hpp"
#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "report/formula/computed_notation.hpp"
#include "report/formula/exact_notation.hpp"
#include "report/formula/notation.hpp"
#include "report/formula/slope_notation.hpp"
#include "report/formula/working_index.hpp"
#include "report/text/formula.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

enum class Written { Numbers, Names }; // what is known

struct Place {                 // of a factor
    bool leads = false;        // begins the equation, without a sign before it
    bool alone = false;        // the only factor of its term
    bool first = false;        // of its term
    bool behindNumber = false; // a computed one
    Written as = Written::Numbers;
};

bool hasName(const Factor& factor) {
    return factor.kind == FactorKind::Load || factor.kind == FactorKind::Known;
}

// A known value as a factor. A negative value inside a term, and a fraction among other factors,
// are put in brackets.
void addValue(const Notation& notation, const Factor& factor, const Place& place,
              Formula& formula) {
    const auto exact = exactTokens(notation, factor.symbol, factor.value);
    const Formula number =
        exact ? *exact : Formula{numberToken(formatNumber(factor.value, notation.numbers))};
    const bool fraction = number.front().kind == TokenKind::Fraction;
    if ((factor.value < 0 && !place.leads) || (fraction && !place.alone)) {
        append(formula, {operatorToken("(")});
        append(formula, number);
        append(formula, {operatorToken(")")});
    } else {
        append(formula, number);
    }
}

void addFactor(const Notation& notation, const Factor& factor, const Place& place,
               Formula& formula) {
    if (place.as == Written::Names && hasName(factor)) {
        formula.push_back(symbolToken(notation, factor.symbol));
        return;
    }
    switch (factor.kind) {
    case FactorKind::Number:
    case FactorKind::Load:
        formula.push_back(numberToken(formatGiven(factor.value, notation.numbers)));
        break;
    case FactorKind::Arm:
        append(formula,
               {operatorToken(kDot), numberToken(formatGiven(factor.value, notation.numbers))});
        break;
    case FactorKind::Known:
        addValue(notation, factor, place, formula);
        break;
    case FactorKind::Unknown:
        formula.push_back(symbolToken(notation, factor.symbol));
        break;
    case FactorKind::Sine:
        append(formula, {functionToken("sin"), angleToken(factor.symbol)});
        break;
    case FactorKind::Cosine:
        append(formula, {functionToken("cos"), angleToken(factor.symbol)});
        break;
    case FactorKind::AxisCosine: {
        Token angle = angleToken(factor.symbol);
        angle.subscript += axisName(notation, factor.horizontal);
        append(formula, {functionToken("cos"), angle});
        break;
    }
    case FactorKind::Ratio: {
        if (!place.first) {
            formula.push_back(operatorToken(kDot));
        }
        if (factor.denominator == 1) { // a direction given in degrees
            formula.push_back(ratioValue(notation, factor.value));
            break;
        }
        const double other = std::sqrt(std::max(0.0, factor.denominator * factor.denominator -
                                                         factor.numerator * factor.numerator));
        formula.push_back(sideOverLength(notation, factor.numerator, other));
        break;
    }
    case FactorKind::TurnSine:
        append(formula, {functionToken("sin"), degreesToken(notation, factor.numerator)});
        break;
    case FactorKind::Letter:
        formula.push_back(symbolToken(notation, factor.symbol));
        break;
    case FactorKind::Coefficient:
    case FactorKind::Amount:
        if (!place.first) {
            formula.push_back(operatorToken(kDot));
        }
        append(formula, computedNumber(notation, factor).tokens);
        break;
    case FactorKind::Bracket:
        if (!place.first && !place.behindNumber) {
            formula.push_back(operatorToken(kDot));
        }
        formula.push_back(operatorToken("("));
        append(formula, sumFormula(notation, factor.terms));
        formula.push_back(operatorToken(")"));
        break;
    }
}

struct TermPlace {
    bool first = false; // of the equation
    Written as = Written::Numbers;
};

// A force that was guessed wrongly was found with a minus, and is drawn as it acts from then on:
// its name then stands for the opposite of the number.
bool isTurnedSinceFound(const Notation& notation, const Factor& factor) {
    if (factor.kind != FactorKind::Known || factor.symbol.kind != SymbolKind::MemberForce) {
        return false;
    }
    const auto& findings = workingIndexOf(notation).ofMember[factor.symbol.member.at()];
    return !findings.empty() && findings.front().drawn * findings.front().value * factor.value < 0;
}

// cos α rather than 1 cos α.
bool isUnwrittenOne(const Term& term, const Factor& factor, Written as) {
    const bool named = as == Written::Names && hasName(factor);
    return !named && factor.kind != FactorKind::Unknown && factor.kind != FactorKind::Arm &&
           factor.value == 1 && &factor == &term.factors.front() && term.factors.size() > 1 &&
           isFunctionOfAngle(term.factors[1].kind);
}

int signOf(const Notation& notation, const Term& term, Written as) {
    const bool turned =
        as == Written::Names &&
        std::any_of(term.factors.begin(), term.factors.end(),
                    [&](const Factor& factor) { return isTurnedSinceFound(notation, factor); });
    return turned ? -term.sign : term.sign;
}

void addTerm(const Notation& notation, const Term& term, const TermPlace& at, Formula& formula) {
    const int sign = signOf(notation, term, at.as);
    if (sign < 0) {
        formula.push_back(operatorToken(kMinus));
    } else if (!at.first) {
        formula.push_back(operatorToken("+"));
    }
    for (const Factor& factor : term.factors) {
        if (isUnwrittenOne(term, factor, at.as)) {
            continue;
        }
        const bool begins = &factor == &term.factors.front();
        const Place place{.leads = at.first && sign > 0 && begins,
                          .alone = term.factors.size() == 1,
                          .first = begins,
                          .behindNumber = !begins && (&factor - 1)->kind == FactorKind::Coefficient,
                          .as = at.as};
        addFactor(notation, factor, place, formula);
    }
}

// Whether the equation balances to working accuracy.
bool balances(const Equation& equation) {
    double largest = 0;
    for (const Term& term : equation.terms) {
        largest = std::max(largest, std::fabs(valueOf(term)));
    }
    return std::fabs(valueOf(equation)) <= kResidual * largest;
}

bool hasUnknown(const std::vector<Term>& terms) {
    for (const Term& term : terms) {
        for (const Factor& factor : term.factors) {
            if (factor.kind == FactorKind::Unknown || factor.kind == FactorKind::Letter ||
                hasUnknown(factor.terms)) {
                return true;
            }
        }
    }
    return false;
}

// A check with rounded values may be slightly off, and shows it.
bool misses(const Equation& equation) { return !hasUnknown(equation.terms) && !balances(equation); }

Formula termsOf(const Notation& notation, const std::vector<Term>& terms, Written as) {
    Formula formula;
    for (const Term& term : terms) {
        addTerm(notation, term, {.first = formula.empty(), .as = as}, formula);
    }
    return formula.empty() ? Formula{numberToken("0")} : formula;
}

// "ΣF_x = 0:", without its value if that is not zero.
Formula announcement(const Notation& notation, const Equation& equation,
                     const std::string& centre) {
    Formula formula = sumName(notation, equation, centre);
    if (!misses(equation)) {
        append(formula, {operatorToken("="), numberToken("0")});
    }
    formula.push_back(operatorToken(":"));
    return formula;
}

bool holdsNamed(const Equation& equation) {
    return std::any_of(equation.terms.begin(), equation.terms.end(), [](const Term& term) {
        return std::any_of(term.factors.begin(), term.factors.end(), hasName);
    });
}

} // namespace

Formula equationFormula(const Notation& notation, const Equation& equation,
                        const std::string& centre) {
    Formula formula = announcement(notation, equation, centre);
    append(formula, numbersFormula(notation, equation));
    return formula;
}

Formula numbersFormula(const Notation& notation, const Equation& equation) {
    Formula formula = sumFormula(notation, equation.terms);
    const std::string sum =
        misses(equation) ? formatNumber(valueOf(equation), notation.numbers) : "0";
    append(formula, {operatorToken("="), numberToken(sum)});
    return formula;
}

std::vector<Formula> equationLines(const Notation& notation, const Equation& equation,
                                   const std::string& centre) {
    const bool named = notation.truss.classSettings.equations == EquationLines::SymbolsFirst &&
                       holdsNamed(equation) && !misses(equation);
    if (!named) {
        return {equationFormula(notation, equation, centre)};
    }
    Formula symbols = announcement(notation, equation, centre);
    append(symbols, termsOf(notation, equation.terms, Written::Names));
    append(symbols, {operatorToken("="), numberToken("0")});
    return {symbols, numbersFormula(notation, equation)};
}

Formula sumFormula(const Notation& notation, const std::vector<Term>& terms) {
    return termsOf(notation, terms, Written::Numbers);
}

Formula factorFormula(const Notation& notation, const Factor& factor) {
    Formula formula;
    addFactor(notation, factor, {.leads = true, .alone = true, .first = true}, formula);
    return formula;
}

} // namespace gusset
