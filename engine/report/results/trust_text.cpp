#include "report/results/trust_text.hpp"

#include "core/tolerance.hpp"
#include "phrases/trust.hpp"
#include "phrases/verdict.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"

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
        return sayPlain(book, phrase::kCloseToMechanismReaction,
                        {{"joint", joint}, {"times", times}});
    }
    return sayPlain(
        book, phrase::kCloseToMechanism,
        {{"joint", joint}, {"times", times}, {"member", memberName(truss, trust.member)}});
}

std::string standsOutSentence(const PhraseBook& book, const Truss& truss,
                              decltype(phrase::kStandsOut) phrase, const StandsOut& standsOut) {
    return sayPlain(book, phrase,
                    {{"member", memberName(truss, standsOut.member)},
                     {"times", rough(truss, standsOut.ratio)}});
}

NumberStyle styleOf(const Truss& truss, double error) {
    NumberStyle style = numberStyleOf(truss);
    style.lastPlace = lastPlaceOfForces(truss, error);
    return style;
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

std::string boundText(const Truss& truss, const Reliance& reliance) {
    const double bound = forceErrorOf(reliance) / toNewton(truss.units.force);
    return forceText(truss, bound, roughStyleOf(truss));
}

void sayNegligible(const PhraseBook& book, std::ptrdiff_t count,
                   std::vector<std::string>& sentences) {
    if (count > 0) {
        sentences.push_back(
            plainText(countedWords(book, count, phrase::kOneNegligible, phrase::kSomeNegligible)));
    }
}

void sayReactions(const PhraseBook& book, const Truss& truss, const Solution& solution,
                  const Reliance& reliance, std::vector<std::string>& sentences) {
    JointId first;
    int count = 0;
    for (std::size_t i = 0; i < solution.jointReactions.size(); ++i) {
        const Vec2 reaction = solution.jointReactions[i];
        if (isBelowBound(reliance, reaction.x) || isBelowBound(reliance, reaction.y)) {
            first = count == 0 ? JointId{static_cast<int>(i)} : first;
            ++count;
        }
    }
    if (count > 0) {
        const RichLine joint = jointName(truss, first);
        const std::string bound = boundText(truss, reliance);
        sentences.push_back(
            count == 1
                ? sayPlain(book, phrase::kReactionBelowBound, {{"joint", joint}, {"bound", bound}})
                : sayPlain(book, phrase::kReactionsBelowBound,
                           {{"n", count}, {"joint", joint}, {"bound", bound}}));
    }
}

std::ptrdiff_t countNegligible(const Reliance& reliance, const Solution& solution) {
    const auto isSmall = [&](double force) { return isNegligible(reliance, force); };
    std::ptrdiff_t count = std::count_if(solution.forces.begin(), solution.forces.end(), isSmall);
    for (const Vec2 reaction : solution.jointReactions) {
        count += (isSmall(reaction.x) ? 1 : 0) + (isSmall(reaction.y) ? 1 : 0);
    }
    return count;
}

} // namespace

int figuresLeft(const Reliance& reliance) { return figuresOf(reliance.trust.error); }
int figuresLeft(const Solution& solution) { return figuresOf(solution.trust.error); }

int lastPlaceOfForces(const Truss& truss, double error) {
    return lastPlaceOf(error / toNewton(truss.units.force), 1);
}

NumberStyle forceStyleOf(const Truss& truss, const Reliance& reliance) {
    return styleOf(truss, forceErrorOf(reliance));
}

NumberStyle forceStyleOf(const Truss& truss, const Solution& solution) {
    return styleOf(truss, solution.solved ? solution.trust.error * solution.largest : 0);
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

bool losesFigures(const Truss& truss, const Reliance& reliance) {
    const NumberStyle style = forceStyleOf(truss, reliance);
    return style.form == NumberForm::Significant ? figuresLeft(reliance) < style.digits
                                                 : style.lastPlace < style.digits;
}

std::vector<std::string> figureSentences(const PhraseBook& book, const Truss& truss,
                                         const Reliance& reliance,
                                         const std::vector<double>& forces) {
    std::vector<std::string> sentences;
    if (losesFigures(truss, reliance)) {
        sentences.push_back(sayPlain(book, phrase::kFiguresLeft, {{"n", figuresLeft(reliance)}}));
    }
    MemberId first;
    int count = 0;
    for (std::size_t i = 0; i < forces.size(); ++i) {
        if (isBelowBound(reliance, forces[i])) {
            first = count == 0 ? MemberId{static_cast<int>(i)} : first;
            ++count;
        }
    }
    if (count > 0) {
        const std::string member = memberName(truss, first);
        const std::string bound = boundText(truss, reliance);
        sentences.push_back(
            count == 1
                ? sayPlain(book, phrase::kForceBelowBound, {{"member", member}, {"bound", bound}})
                : sayPlain(book, phrase::kForcesBelowBound,
                           {{"n", count}, {"member", member}, {"bound", bound}}));
    }
    return sentences;
}

std::vector<std::string> trustSentences(const PhraseBook& book, const Truss& truss,
                                        const Reliance& reliance,
                                        const std::vector<std::string>& ofFigures) {
    std::vector<std::string> sentences;
    if (reliance.barelyHeld) {
        sentences.push_back(sayPlain(book, phrase::kBarelyHeld,
                                     {{"joint", jointName(truss, reliance.barelyHeld->joint)},
                                      {"times", rough(truss, 1 / reliance.barelyHeld->share)}}));
    }
    if (isCloseToMechanism(reliance.trust)) {
        sentences.push_back(closeSentence(book, truss, reliance.trust));
    }
    sentences.insert(sentences.end(), ofFigures.begin(), ofFigures.end());
    if (reliance.standsOut) {
        sentences.push_back(
            standsOutSentence(book, truss, phrase::kStandsOut, *reliance.standsOut));
    }
    return sentences;
}

std::vector<std::string> trustSentences(const PhraseBook& book, const Truss& truss,
                                        const Solution& solution) {
    if (!solution.solved) {
        return isRefused(solution) ? std::vector{unsolvedSentence(book, truss, solution)}
                                   : trustSentences(book, truss, relianceOf(solution), {});
    }
    const Reliance reliance = relianceOf(solution);
    std::vector<std::string> ofFigures = figureSentences(book, truss, reliance, solution.forces);
    sayReactions(book, truss, solution, reliance, ofFigures);
    sayNegligible(book, countNegligible(reliance, solution), ofFigures);
    if (losesMovementFigures(solution)) {
        const int figures = figuresOf(solution.trust.displacementError);
        ofFigures.push_back(sayPlain(book, phrase::kMovementFiguresLeft, {{"n", figures}}));
    }
    return trustSentences(book, truss, reliance, ofFigures);
}

std::vector<std::string> trustSentences(const PhraseBook& book, const Truss& truss,
                                        const Reliance& reliance) {
    return trustSentences(book, truss, reliance, figureSentences(book, truss, reliance, {}));
}

std::vector<std::string> workingSentences(const PhraseBook& book, const Truss& truss,
                                          const Solution& solution) {
    const Reliance reliance = relianceOf(solution);
    const bool hides = !figureSentences(book, truss, reliance, solution.forces).empty();
    std::vector<std::string> ofFigures;
    if (hides) {
        ofFigures.push_back(
            sayPlain(book, phrase::kFiguresInWorking, {{"bound", boundText(truss, reliance)}}));
    }
    return trustSentences(book, truss, reliance, ofFigures);
}

bool isRefused(const Solution& solution) {
    const bool isStable =
        solution.status == Status::Determinate || solution.status == Status::Indeterminate;
    return isStable && !solution.solved && solution.errors.empty();
}

std::vector<std::string> standingSentences(const PhraseBook& book, const Reliance& reliance) {
    std::vector<std::string> sentences = assumptionSentences(book, reliance.assumed);
    if (reliance.status == Status::Mechanism) {
        sentences.push_back(sayPlain(book, phrase::kAtRest));
    }
    return sentences;
}

std::string unsolvedSentence(const PhraseBook& book, const Truss& truss, const Solution& solution) {
    if (solution.standsOut && solution.status == Status::Indeterminate) {
        return standsOutSentence(book, truss, phrase::kStiffnessesDiffer, *solution.standsOut);
    }
    return sayPlain(book, phrase::kNotAccurate);
}

std::string residualSentence(const PhraseBook& book, const Truss& truss, const Solution& solution) {
    const RichLine error = rough(truss, solution.trust.error);
    if (solution.largest == 0) {
        return sayPlain(book, phrase::kResidualOfNothing);
    }
    if (solution.residual == 0) {
        return sayPlain(book, phrase::kResidualNone, {{"error", error}});
    }
    return sayPlain(book, phrase::kResidual,
                    {{"residual", rough(truss, solution.residual)}, {"error", error}});
}

} // namespace gusset
