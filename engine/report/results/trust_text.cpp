#include "report/results/trust_text.hpp"

#include "core/tolerance.hpp"
#include "phrases/results/trust.hpp"
#include "phrases/results/verdict.hpp"
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

std::string closeSentence(const Writer& writer, const Trust& trust) {
    const RichLine joint = jointName(writer.truss, trust.joint);
    const RichLine times = rough(writer.truss, trust.amplification);
    if (!trust.member.valid()) {
        return sayPlain(writer, phrase::kCloseToMechanismReaction,
                        {{"joint", joint}, {"times", times}});
    }
    return sayPlain(
        writer, phrase::kCloseToMechanism,
        {{"joint", joint}, {"times", times}, {"member", memberName(writer.truss, trust.member)}});
}

std::string standsOutSentence(const Writer& writer, decltype(phrase::kStandsOut) phrase,
                              const StandsOut& standsOut) {
    return sayPlain(writer, phrase,
                    {{"member", memberName(writer.truss, standsOut.member)},
                     {"times", rough(writer.truss, standsOut.ratio)}});
}

NumberStyle styleOf(const Truss& truss, double error) {
    NumberStyle style = numberStyleOf(truss);
    style.lastPlace = lastPlaceOfForces(truss, error);
    return style;
}

// Whether some displacement has fewer reliable figures than are displayed.
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

void sayReactions(const Writer& writer, const Solution& solution, const Reliance& reliance,
                  std::vector<std::string>& sentences) {
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
        const RichLine joint = jointName(writer.truss, first);
        const std::string bound = boundText(writer.truss, reliance);
        sentences.push_back(count == 1
                                ? sayPlain(writer, phrase::kReactionBelowBound,
                                           {{"joint", joint}, {"bound", bound}})
                                : sayPlain(writer, phrase::kReactionsBelowBound,
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

std::vector<std::string> figureSentences(const Writer& writer, const Reliance& reliance,
                                         const std::vector<double>& forces) {
    std::vector<std::string> sentences;
    if (losesFigures(writer.truss, reliance)) {
        sentences.push_back(sayPlain(writer, phrase::kFiguresLeft, {{"n", figuresLeft(reliance)}}));
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
        const std::string member = memberName(writer.truss, first);
        const std::string bound = boundText(writer.truss, reliance);
        sentences.push_back(
            count == 1
                ? sayPlain(writer, phrase::kForceBelowBound, {{"member", member}, {"bound", bound}})
                : sayPlain(writer, phrase::kForcesBelowBound,
                           {{"n", count}, {"member", member}, {"bound", bound}}));
    }
    return sentences;
}

std::vector<std::string> trustSentences(const Writer& writer, const Reliance& reliance,
                                        const std::vector<std::string>& ofFigures) {
    std::vector<std::string> sentences;
    if (reliance.barelyHeld) {
        sentences.push_back(
            sayPlain(writer, phrase::kBarelyHeld,
                     {{"joint", jointName(writer.truss, reliance.barelyHeld->joint)},
                      {"times", rough(writer.truss, 1 / reliance.barelyHeld->share)}}));
    }
    if (isCloseToMechanism(reliance.trust)) {
        sentences.push_back(closeSentence(writer, reliance.trust));
    }
    sentences.insert(sentences.end(), ofFigures.begin(), ofFigures.end());
    if (reliance.standsOut) {
        sentences.push_back(standsOutSentence(writer, phrase::kStandsOut, *reliance.standsOut));
    }
    return sentences;
}

std::vector<std::string> trustSentences(const Writer& writer, const Solution& solution) {
    if (!solution.solved) {
        return isRefused(solution) ? std::vector{unsolvedSentence(writer, solution)}
                                   : trustSentences(writer, relianceOf(solution), {});
    }
    const Reliance reliance = relianceOf(solution);
    std::vector<std::string> ofFigures = figureSentences(writer, reliance, solution.forces);
    sayReactions(writer, solution, reliance, ofFigures);
    sayNegligible(writer, countNegligible(reliance, solution), ofFigures);
    if (losesMovementFigures(solution)) {
        const int figures = figuresOf(solution.trust.displacementError);
        ofFigures.push_back(sayPlain(writer, phrase::kMovementFiguresLeft, {{"n", figures}}));
    }
    return trustSentences(writer, reliance, ofFigures);
}

std::vector<std::string> trustSentences(const Writer& writer, const Reliance& reliance) {
    return trustSentences(writer, reliance, figureSentences(writer, reliance, {}));
}

std::vector<std::string> workingSentences(const Writer& writer, const Solution& solution) {
    const Reliance reliance = relianceOf(solution);
    const bool hides = !figureSentences(writer, reliance, solution.forces).empty();
    std::vector<std::string> ofFigures;
    if (hides) {
        ofFigures.push_back(sayPlain(writer, phrase::kFiguresInWorking,
                                     {{"bound", boundText(writer.truss, reliance)}}));
    }
    return trustSentences(writer, reliance, ofFigures);
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

std::string unsolvedSentence(const Writer& writer, const Solution& solution) {
    if (solution.standsOut && solution.status == Status::Indeterminate) {
        return standsOutSentence(writer, phrase::kStiffnessesDiffer, *solution.standsOut);
    }
    return sayPlain(writer, phrase::kNotAccurate);
}

std::string residualSentence(const Writer& writer, const Solution& solution) {
    const RichLine error = rough(writer.truss, solution.trust.error);
    if (solution.largest == 0) {
        return sayPlain(writer, phrase::kResidualOfNothing);
    }
    if (solution.residual == 0) {
        return sayPlain(writer, phrase::kResidualNone, {{"error", error}});
    }
    return sayPlain(writer, phrase::kResidual,
                    {{"residual", rough(writer.truss, solution.residual)}, {"error", error}});
}

} // namespace gusset
