#include "report/trust_text.hpp"

#include "core/tolerance.hpp"
#include "report/results_text.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {

namespace {

RichLine rough(const Truss& truss, double value) {
    return plainLine(value == 0 ? "0" : formatNumber(value, roughStyleOf(truss)));
}

RichLine jointName(const Truss& truss, JointId joint) {
    return plainLine(truss.joints[joint.at()].label);
}

std::string closeSentence(const PhraseBook& book, const Truss& truss, const Trust& trust) {
    const RichLine joint = jointName(truss, trust.joint);
    const RichLine times = rough(truss, trust.amplification);
    if (!trust.member.valid()) {
        return sayPlain(book, Phrase::CloseToMechanismReaction,
                        {{"joint", joint}, {"times", times}});
    }
    return sayPlain(book, Phrase::CloseToMechanism,
                    {{"joint", joint},
                     {"times", times},
                     {"member", plainLine(memberName(truss, trust.member))}});
}

std::string standsOutSentence(const PhraseBook& book, const Truss& truss, Phrase phrase,
                              const StandsOut& standsOut) {
    return sayPlain(book, phrase,
                    {{"member", plainLine(memberName(truss, standsOut.member))},
                     {"times", rough(truss, standsOut.ratio)}});
}

// Of the forces that are written 0 though only because their bound is larger.
std::string belowBoundSentence(const PhraseBook& book, const Truss& truss,
                               const Solution& solution) {
    MemberId first;
    int count = 0;
    for (std::size_t i = 0; i < solution.forces.size(); ++i) {
        if (isBelowBound(solution, solution.forces[i])) {
            first = count == 0 ? MemberId{static_cast<int>(i)} : first;
            ++count;
        }
    }
    if (count == 0) {
        return {};
    }
    const double bound = solution.trust.error * solution.largest / toNewton(truss.units.force);
    return sayPlain(book, count == 1 ? Phrase::ForceBelowBound : Phrase::ForcesBelowBound,
                    {{"n", plainLine(std::to_string(count))},
                     {"member", plainLine(memberName(truss, first))},
                     {"bound", plainLine(forceText(truss, bound, roughStyleOf(truss)))}});
}

// Whether some displacement keeps fewer figures than are written of displacements.
bool losesMovementFigures(const Solution& solution) {
    const double largest = largestComponent(solution.displacements);
    const double least = solution.trust.displacementError * std::pow(10, kMovementFigures);
    const auto isRough = [&](double move) {
        const double share = std::abs(move) / largest;
        return share > kZeroForce && share < least;
    };
    return solution.displaced &&
           std::any_of(solution.displacements.begin(), solution.displacements.end(),
                       [&](Vec2 move) { return isRough(move.x) || isRough(move.y); });
}

} // namespace

int figuresLeft(const Solution& solution) { return figuresOf(solution.trust.error); }

NumberStyle forceStyleOf(const Truss& truss, const Solution& solution) {
    NumberStyle style = numberStyleOf(truss);
    if (solution.solved) {
        style.lastPlace =
            lastPlaceOf(solution.largest / toNewton(truss.units.force), solution.trust.error);
    }
    return style;
}

NumberStyle drawingStyleOf(const Truss& truss, const Solution& solution) {
    NumberStyle style = forceStyleOf(truss, solution);
    style.keepZeros = false;
    return style;
}

NumberStyle movementStyleOf(const Truss& truss, double off) {
    return {.form = NumberForm::Significant,
            .digits = kMovementFigures,
            .decimalSign = truss.classSettings.decimalSign,
            .lastPlace = lastPlaceOf(off, 1)};
}

bool losesFigures(const Truss& truss, const Solution& solution) {
    const NumberStyle style = forceStyleOf(truss, solution);
    return style.form == NumberForm::Significant ? figuresLeft(solution) < style.digits
                                                 : style.lastPlace < style.digits;
}

std::vector<std::string> trustSentences(const PhraseBook& book, const Truss& truss,
                                        const Solution& solution) {
    std::vector<std::string> sentences;
    if (solution.barelyHeld) {
        sentences.push_back(sayPlain(book, Phrase::BarelyHeld,
                                     {{"joint", jointName(truss, solution.barelyHeld->joint)},
                                      {"times", rough(truss, 1 / solution.barelyHeld->share)}}));
    }
    if (solution.solved && isCloseToMechanism(solution.trust)) {
        sentences.push_back(closeSentence(book, truss, solution.trust));
    }
    if (solution.solved && losesFigures(truss, solution)) {
        sentences.push_back(sayPlain(book, Phrase::FiguresLeft,
                                     {{"n", plainLine(std::to_string(figuresLeft(solution)))}}));
    }
    if (losesMovementFigures(solution)) {
        const int figures = figuresOf(solution.trust.displacementError);
        sentences.push_back(sayPlain(book, Phrase::MovementFiguresLeft,
                                     {{"n", plainLine(std::to_string(figures))}}));
    }
    std::string belowBound = solution.solved ? belowBoundSentence(book, truss, solution) : "";
    if (!belowBound.empty()) {
        sentences.push_back(std::move(belowBound));
    }
    if (solution.standsOut && (solution.solved || !solution.errors.empty())) {
        sentences.push_back(standsOutSentence(book, truss, Phrase::StandsOut, *solution.standsOut));
    }
    return sentences;
}

std::string unsolvedSentence(const PhraseBook& book, const Truss& truss, const Solution& solution) {
    if (solution.standsOut && solution.status == Status::Indeterminate) {
        return standsOutSentence(book, truss, Phrase::StiffnessesDiffer, *solution.standsOut);
    }
    return sayPlain(book, Phrase::NotAccurate);
}

std::string residualSentence(const PhraseBook& book, const Truss& truss, const Solution& solution) {
    const RichLine error = rough(truss, solution.trust.error);
    if (solution.residual == 0) {
        return sayPlain(book, Phrase::ResidualNone, {{"error", error}});
    }
    return sayPlain(book, Phrase::Residual,
                    {{"residual", rough(truss, solution.residual)}, {"error", error}});
}

} // namespace gusset
