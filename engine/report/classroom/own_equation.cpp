#include "report/classroom/own_equation.hpp"

#include "report/text/formula.hpp"

#include <cmath>

namespace gusset {

namespace {

Symbol symbolOf(const OwnTerm& term) {
    Symbol symbol;
    symbol.joint = term.at;
    if (!term.of) {
        symbol.kind = SymbolKind::Load;
        symbol.index = term.along.x == 0 ? 1 : 0;
    } else if (const auto* member = std::get_if<MemberId>(&*term.of)) {
        symbol.member = *member;
    } else {
        symbol.kind = SymbolKind::Reaction;
        symbol.restraint = std::get<RestraintId>(*term.of);
    }
    return symbol;
}

// A force times an arm, or a part of it times the force.
Term termFor(const OwnTerm& own, const OwnEquation& equation, int sense) {
    const bool isSought = own.of && *own.of == equation.of;
    const double value = own.value;
    const Factor force{isSought ? FactorKind::Unknown
                       : own.of ? FactorKind::Known
                                : FactorKind::Load,
                       isSought ? equation.gives : value, symbolOf(own)};
    const double size = std::abs(own.factor);
    Term term;
    term.sign = own.factor * sense < 0 ? -1 : 1;
    if (equation.kind == EquationKind::SumMoments) {
        term.factors = {force, {FactorKind::Arm, size}};
    } else if (size < 1) {
        term.factors = {force, {FactorKind::Coefficient, size}};
    } else {
        term.factors = {force};
    }
    return term;
}

} // namespace

Formula ownEquationFormula(const Notation& notation, const OwnEquation& own) {
    Equation equation;
    equation.kind = own.kind;
    equation.about = own.about;
    const bool isTurned = own.kind == EquationKind::SumMoments &&
                          notation.truss.classSettings.moments == MomentSense::Clockwise;
    for (const OwnTerm& term : own.terms) {
        equation.terms.push_back(termFor(term, own, isTurned ? -1 : 1));
    }
    return equationFormula(notation, equation, {});
}

std::string ownEquationText(const Notation& notation, const OwnEquation& own) {
    return plainText(runsOf(ownEquationFormula(notation, own)));
}

} // namespace gusset
