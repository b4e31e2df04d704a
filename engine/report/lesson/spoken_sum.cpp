#include "report/lesson/spoken_sum.hpp"

#include "phrases/working/spoken.hpp"
#include "report/lesson/spoken.hpp"

#include <utility>

namespace gusset {
namespace {

bool isForce(const Factor& factor) {
    return factor.kind == FactorKind::Load || factor.kind == FactorKind::Known ||
           factor.kind == FactorKind::Unknown;
}

bool isInclination(const Factor& factor) {
    return isFunctionOfAngle(factor.kind) || factor.kind == FactorKind::Ratio;
}

// The factors of a term by what they are.
struct SaidTerm {
    const Factor* force = nullptr;
    const Factor* arm = nullptr;
    std::vector<const Factor*> inclinations{};
    bool other = false;
};

SaidTerm partsOf(const Term& term) {
    SaidTerm parts;
    for (const Factor& factor : term.factors) {
        if (isForce(factor) && !parts.force) {
            parts.force = &factor;
        } else if (factor.kind == FactorKind::Arm && !parts.arm) {
            parts.arm = &factor;
        } else if (isInclination(factor)) {
            parts.inclinations.push_back(&factor);
        } else {
            parts.other = true;
        }
    }
    parts.other = parts.other || !parts.force;
    return parts;
}

// A class that writes numbers only has no symbol for a load.
bool isUnnamedLoad(const Notation& notation, const Factor& force) {
    return force.kind == FactorKind::Load && force.symbol.joint.valid() &&
           notation.truss.classSettings.equations == EquationLines::NumbersOnly;
}

std::string forceSaid(const Notation& notation, const SaidTerm& parts) {
    const Symbol& symbol = parts.force->symbol;
    std::string said = isUnnamedLoad(notation, *parts.force)
                           ? sayPlain(notation.book, phrase::kSaidLoadAt,
                                      {{"joint", notation.truss.joints[symbol.joint.at()].label}})
                           : spokenFormula(notation.book, {symbolToken(notation, symbol)});
    for (const Factor* inclination : parts.inclinations) {
        said = sayPlain(
            notation.book, phrase::kSaidProduct,
            {{"force", said},
             {"factor", spokenFormula(notation.book, factorFormula(notation, *inclination))}});
    }
    return said;
}

std::string lengthSaid(const Notation& notation, double length) {
    const std::string number = formatGiven(length, notation.numbers);
    const std::string unit = symbolOf(notation.truss.units.length);
    return unit.empty() ? number
                        : sayPlain(notation.book, phrase::kSaidQuantity,
                                   {{"number", number}, {"unit", spokenUnit(notation.book, unit)}});
}

std::string momentSaid(const Notation& notation, const Term& term, const SaidTerm& parts) {
    const bool anticlockwise =
        (term.sign > 0) == (notation.truss.classSettings.moments == MomentSense::Anticlockwise);
    const decltype(phrase::kSaidTurnsLeftPlus) said =
        anticlockwise   ? (term.sign > 0 ? phrase::kSaidTurnsLeftPlus : phrase::kSaidTurnsLeftMinus)
        : term.sign > 0 ? phrase::kSaidTurnsRightPlus
                        : phrase::kSaidTurnsRightMinus;
    return sayPlain(
        notation.book, said,
        {{"force", forceSaid(notation, parts)}, {"arm", lengthSaid(notation, parts.arm->value)}});
}

std::string partSaid(const Notation& notation, const Term& term, const SaidTerm& parts) {
    return sayPlain(notation.book, term.sign > 0 ? phrase::kSaidWith : phrase::kSaidAgainst,
                    {{"force", forceSaid(notation, parts)}});
}

} // namespace

std::string spokenSum(const Notation& notation, const Equation& equation) {
    std::string text;
    for (const Term& term : equation.terms) {
        const SaidTerm parts = partsOf(term);
        const bool isMoment = equation.kind == EquationKind::SumMoments;
        if (parts.other || isMoment != (parts.arm != nullptr)) {
            return {};
        }
        std::string said =
            isMoment ? momentSaid(notation, term, parts) : partSaid(notation, term, parts);
        addSaid(text, isUnnamedLoad(notation, *parts.force) ? withCapital(std::move(said)) : said);
    }
    return text;
}

} // namespace gusset
