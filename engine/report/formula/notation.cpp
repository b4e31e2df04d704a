#include "report/formula/notation.hpp"

#include "core/number.hpp"
#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "phrases/results/lists.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/steps.hpp"
#include "report/formula/computed_notation.hpp"
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

bool isInclined(Vec2 unit) {
    return std::fabs(unit.x) > kParallel && std::fabs(unit.y) > kParallel;
}

// A label that would be read as a number in a formula.
bool isNumber(const std::string& label) { return label[0] >= '0' && label[0] <= '9'; }

bool hasNumber(const Truss& truss, MemberId id) {
    const Member& member = truss.members[id.at()];
    return isNumber(truss.joints[member.a.at()].label) ||
           isNumber(truss.joints[member.b.at()].label);
}

// P_A; P_Ax where the load at A has two parts; W_A where P is a joint's label.
Token loadToken(const Notation& notation, const Symbol& symbol) {
    const Vec2 load = notation.working.loads[symbol.joint.at()];
    const std::string axis =
        load.x != 0 && load.y != 0 ? axisName(notation, symbol.index == 0) : std::string{};
    return variableToken(workingIndexOf(notation).load,
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
    case SymbolKind::Letter:
        return variableToken(symbol.index == 0 ? "X" : "Y");
    case SymbolKind::MemberForce: {
        const std::string name = memberName(notation.truss, symbol.member);
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

Token relationTo(const Notation& notation, double value) {
    return operatorToken(isWrittenInFull(value, notation.numbers) ? "=" : kAlmost);
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
    return withUnit(formatGiven(force, notation.numbers), unit);
}

std::string givenLength(const Notation& notation, double length) {
    const std::string unit = symbolOf(notation.truss.units.length);
    return withUnit(formatGiven(length, notation.numbers), unit);
}

} // namespace gusset
