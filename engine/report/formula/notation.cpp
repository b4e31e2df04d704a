#include "report/formula/notation.hpp"

#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "phrases/results/lists.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/steps.hpp"
#include "report/formula/exact_notation.hpp"
#include "report/formula/slope_notation.hpp"
#include "report/formula/working_index.hpp"
#include "report/results/results_text.hpp"
#include "report/text/formula.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {
namespace {

constexpr const char* kPrime = "\u2032";

enum class Written { Numbers, Names }; // what is known

struct Place {          // of a factor
    bool leads = false; // begins the equation, without a sign before it
    bool alone = false; // the only factor of its term
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
        if (factor.denominator == 1) { // a direction given in degrees
            append(formula, {operatorToken(kDot), ratioValue(notation, factor.value)});
            break;
        }
        const double other = std::sqrt(std::max(0.0, factor.denominator * factor.denominator -
                                                         factor.numerator * factor.numerator));
        append(formula, {operatorToken(kDot), sideOverLength(notation, factor.numerator, other)});
        break;
    }
    case FactorKind::TurnCosine:
        append(formula, {functionToken("cos"), degreesToken(notation, factor.numerator)});
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
        const Place place{.leads = at.first && sign > 0 && &factor == &term.factors.front(),
                          .alone = term.factors.size() == 1,
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

bool isInclined(Vec2 unit) {
    return std::fabs(unit.x) > kParallel && std::fabs(unit.y) > kParallel;
}

bool hasUnknown(const Equation& equation) {
    for (const Term& term : equation.terms) {
        for (const Factor& factor : term.factors) {
            if (factor.kind == FactorKind::Unknown) {
                return true;
            }
        }
    }
    return false;
}

// A label that would be read as a number in a formula.
bool isNumber(const std::string& label) { return label[0] >= '0' && label[0] <= '9'; }

bool hasNumber(const Truss& truss, MemberId id) {
    const Member& member = truss.members[id.at()];
    return isNumber(truss.joints[member.a.at()].label) ||
           isNumber(truss.joints[member.b.at()].label);
}

// F_AB, and F_2–4 rather than F_24.
std::string nameInSymbol(const Truss& truss, MemberId id) {
    const Member& member = truss.members[id.at()];
    return hasNumber(truss, id)
               ? truss.joints[member.a.at()].label + "\u2013" + truss.joints[member.b.at()].label
               : memberName(truss, id);
}

// P_A; P_Ax where the load at A has two parts; W_A where P is a joint's label.
Token loadToken(const Notation& notation, const Symbol& symbol) {
    const bool isJoint = findJoint(notation.truss, "P").valid();
    const Vec2 load = notation.working.loads[symbol.joint.at()];
    const std::string axis =
        load.x != 0 && load.y != 0 ? axisName(notation, symbol.index == 0) : std::string{};
    return variableToken(isJoint ? "W" : "P",
                         notation.truss.joints[symbol.joint.at()].label + axis);
}

} // namespace

Notation notationOf(const Writer& writer, const Working& working) {
    return {writer.book, writer.truss, working, numberStyleOf(writer.truss),
            std::make_shared<WorkingIndex>()};
}

const WorkingIndex& workingIndexOf(const Notation& notation) {
    if (!notation.index->made) {
        *notation.index = workingIndexOf(notation.truss, notation.working);
    }
    return *notation.index;
}

Token symbolToken(const Notation& notation, const Symbol& symbol) {
    switch (symbol.kind) {
    case SymbolKind::Angle:
        return angleToken(symbol);
    case SymbolKind::MemberForce: {
        const std::string name = nameInSymbol(notation.truss, symbol.member);
        switch (notation.truss.classSettings.symbols) {
        case SymbolStyle::FAB:
            return variableToken("F", name);
        case SymbolStyle::AB:
            return hasNumber(notation.truss, symbol.member) ? variableToken("F", name)
                                                            : variableToken(name);
        case SymbolStyle::S1:
            return variableToken("S", std::to_string(symbol.member.index + 1));
        }
        break;
    }
    case SymbolKind::Load:
        return loadToken(notation, symbol);
    case SymbolKind::Reaction:
        break;
    }
    const auto& restraints = notation.working.structure.restraints;
    const Restraint& restraint = restraints[symbol.restraint.at()];
    const std::string& label = notation.truss.joints[symbol.joint.at()].label;
    if (!isInclined(restraint.along)) {
        const std::string axis = axisName(notation, std::fabs(restraint.along.y) <= kParallel);
        // F_y would look like the name of a sum, and 11_x like a number.
        return label == "F" || isNumber(label) ? variableToken("R", label + axis)
                                               : variableToken(label, axis);
    }
    int inclinedBefore = 0; // two inclined rollers may support one joint
    for (std::size_t i = 0; i < symbol.restraint.at(); ++i) {
        const Restraint& other = restraints[i];
        inclinedBefore += other.joint == symbol.joint && isInclined(other.along) ? 1 : 0;
    }
    return variableToken("R", label + (inclinedBefore > 0 ? std::string(kPrime) : std::string{}));
}

RichLine symbolRuns(const Notation& notation, const Symbol& symbol) {
    return runsOf({symbolToken(notation, symbol)});
}

Formula sumName(const Notation& notation, const Equation& equation, const std::string& centre) {
    switch (equation.kind) {
    case EquationKind::SumMoments: {
        const bool clockwise = notation.truss.classSettings.moments == MomentSense::Clockwise;
        const std::string about =
            equation.about.valid() ? notation.truss.joints[equation.about.at()].label : centre;
        return {operatorToken(clockwise ? "\u27F3" : "\u27F2"), operatorToken(kSum),
                variableToken("M", about)};
    }
    case EquationKind::SumAlong:
        return {operatorToken(kSum), variableToken("F", "n")};
    case EquationKind::SumX:
    case EquationKind::SumY:
        break;
    }
    const std::string axis = axisName(notation, equation.kind == EquationKind::SumX);
    const bool letters = notation.truss.classSettings.axes == AxisNames::HV;
    return {operatorToken(kSum), letters ? variableToken(axis) : variableToken("F", axis)};
}

namespace {

// A check with rounded values may be slightly off, and shows it.
bool misses(const Equation& equation) { return !hasUnknown(equation) && !balances(equation); }

Formula termsOf(const Notation& notation, const Equation& equation, Written as) {
    Formula formula;
    for (const Term& term : equation.terms) {
        addTerm(notation, term, {.first = formula.empty(), .as = as}, formula);
    }
    if (formula.empty()) {
        formula.push_back(numberToken("0"));
    }
    return formula;
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
    Formula formula = termsOf(notation, equation, Written::Numbers);
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
    append(symbols, termsOf(notation, equation, Written::Names));
    append(symbols, {operatorToken("="), numberToken("0")});
    return {symbols, numbersFormula(notation, equation)};
}

namespace {

// = 50/3 kN ≈ 16.67 kN; = 12.00 kN; ≈ 16.67 kN. A carried value is rounded, unless the exact one
// needs no more figures.
Formula foundNumber(const Notation& notation, const Found& found, double value, bool isRough) {
    Formula unit;
    if (const std::string symbol = symbolOf(notation.truss.units.force); !symbol.empty()) {
        unit = {wordToken(symbol)};
    }
    Formula formula;
    const auto exact = exactTokens(notation, found.symbol, value);
    if (exact) {
        formula.push_back(operatorToken("="));
        append(formula, *exact);
        append(formula, unit);
        if (exact->size() == 1 && exact->front().kind == TokenKind::Number) {
            return formula;
        }
    }
    formula.push_back(found.rounded || isRough ? operatorToken(kAlmost)
                                               : relationTo(notation, value));
    formula.push_back(numberToken(formatNumber(value, notation.numbers)));
    append(formula, unit);
    return formula;
}

} // namespace

bool isWrittenInFull(double value, const NumberStyle& style) {
    return std::fabs(roundedTo(value, style) - value) <= kResidual * std::fabs(value);
}

Token relationTo(const Notation& notation, double value) {
    return operatorToken(isWrittenInFull(value, notation.numbers) ? "=" : kAlmost);
}

Formula resultFormula(const Notation& notation, const Found& found, Told told) {
    return resultFormula(notation, found, told, {});
}

Formula resultFormula(const Notation& notation, const Found& found, Told told,
                      const Formula& quotient) {
    Formula formula{symbolToken(notation, found.symbol)};
    append(formula, quotient);
    const bool isRough = !quotient.empty() && quotient.front().text == kAlmost;
    if (found.as == FoundAs::Zero) {
        append(formula, {operatorToken("="), numberToken("0")});
        return formula;
    }
    if (found.symbol.kind == SymbolKind::MemberForce) {
        append(formula, foundNumber(notation, found, found.drawn * found.value, isRough));
        const Phrase<> word = found.value < 0 ? phrase::kWordCompression : phrase::kWordTension;
        formula.push_back(wordToken(sayPlain(notation.book, phrase::kInBrackets,
                                             {{"word", sayPlain(notation.book, word)}})));
        return formula;
    }
    const Vec2 along = notation.working.structure.restraints[found.symbol.restraint.at()].along;
    if (found.value < 0 && told == Told::AsFound) {
        append(formula, foundNumber(notation, found, found.value, isRough));
        return formula;
    }
    append(formula, foundNumber(notation, found, std::fabs(found.value), isRough));
    formula.push_back(wordToken(directionArrow(found.value < 0 ? -along : along)));
    return formula;
}

namespace {

// −1, 0 or 1 for each axis.
Vec2 signsOf(Vec2 direction) {
    const auto sign = [&](double part) {
        return std::fabs(part) <= kParallel * length(direction) ? 0.0 : part < 0 ? -1.0 : 1.0;
    };
    return {sign(direction.x), sign(direction.y)};
}

} // namespace

std::string directionArrow(Vec2 direction) {
    constexpr std::array<std::array<const char*, 3>, 3> kArrows{
        {{"↙", "↓", "↘"}, {"←", "", "→"}, {"↖", "↑", "↗"}}};
    const Vec2 signs = signsOf(direction);
    return kArrows[static_cast<std::size_t>(signs.y + 1)][static_cast<std::size_t>(signs.x + 1)];
}

std::string directionWord(const PhraseBook& book, Vec2 direction) {
    constexpr std::array<std::array<Phrase<>, 3>, 3> kWords{
        {{phrase::kDownLeft, phrase::kDown, phrase::kDownRight},
         {phrase::kLeft, Phrase<>{}, phrase::kRight},
         {phrase::kUpLeft, phrase::kUp, phrase::kUpRight}}};
    const Vec2 signs = signsOf(direction);
    return sayPlain(
        book, kWords[static_cast<std::size_t>(signs.y + 1)][static_cast<std::size_t>(signs.x + 1)]);
}

std::string givenForce(const Notation& notation, double force) {
    const std::string unit = symbolOf(notation.truss.units.force);
    return formatGiven(force, notation.numbers) + (unit.empty() ? unit : kThinSpace + unit);
}

std::string givenLength(const Notation& notation, double length) {
    const std::string unit = symbolOf(notation.truss.units.length);
    return formatGiven(length, notation.numbers) + (unit.empty() ? unit : kThinSpace + unit);
}

} // namespace gusset
