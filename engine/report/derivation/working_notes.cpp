#include "report/derivation/working_notes.hpp"

#include "phrases/working/steps.hpp"
#include "report/derivation/remark_text.hpp"
#include "report/formula/computed_notation.hpp"
#include "report/formula/exact_notation.hpp"

#include <algorithm>

namespace gusset {
namespace {

bool isCarriedUnrounded(const Notation& notation, const Factor& factor) {
    return factor.kind == FactorKind::Known &&
           !exactTokens(notation, factor.symbol, factor.value) &&
           !isWrittenInFull(factor.value, notation.numbers);
}

bool tellsLoads(const Working& working) {
    return std::any_of(working.steps.begin(), working.steps.end(),
                       [](const Step& step) { return step.kind == StepKind::WholeBody; });
}

// The loads that its equations name.
std::vector<Symbol> loadsIn(const Step& step) {
    std::vector<Symbol> loads;
    for (const Equation& equation : step.equations) {
        for (const Term& term : equation.terms) {
            for (const Factor& factor : term.factors) {
                const bool known =
                    factor.kind != FactorKind::Load ||
                    std::find(loads.begin(), loads.end(), factor.symbol) != loads.end();
                if (!known) {
                    loads.push_back(factor.symbol);
                }
            }
        }
    }
    return loads;
}

} // namespace

bool solvesUnrounded(const Notation& notation, const Step& step) {
    return std::any_of(step.solving.begin(), step.solving.end(), [&](const SolvingLine& line) {
        const auto* numbers = std::get_if<NumberLine>(&line);
        return numbers && !isInFull(notation, *numbers);
    });
}

bool roundsAnswers(const Notation& notation) {
    return notation.truss.classSettings.carry == CarriedValues::Rounded;
}

bool carriesUnrounded(const Notation& notation, const Step& step) {
    if (!roundsAnswers(notation) && solvesUnrounded(notation, step)) {
        return true;
    }
    for (const Equation& equation : step.equations) {
        for (const Term& term : equation.terms) {
            for (const Factor& factor : term.factors) {
                if (isCarriedUnrounded(notation, factor)) {
                    return true;
                }
            }
        }
    }
    return false;
}

RichLine loadsNamed(const Notation& notation, const Step& step) {
    const std::vector<Symbol> loads = loadsIn(step);
    if (tellsLoads(notation.working) || loads.empty() ||
        notation.truss.classSettings.equations == EquationLines::NumbersOnly) {
        return {};
    }
    std::vector<JointId> joints;
    for (const Symbol& load : loads) {
        if (std::find(joints.begin(), joints.end(), load.joint) == joints.end()) {
            joints.push_back(load.joint);
        }
    }
    const RichLine names = symbolNames(notation, loads);
    const RichLine places = jointNames(notation, joints);
    return loads.size() == 1
               ? say(notation.book, phrase::kLoadNamed, {{"load", names}, {"joint", places}})
               : say(notation.book, phrase::kLoadsNamed, {{"loads", names}, {"joints", places}});
}

} // namespace gusset
