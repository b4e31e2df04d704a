#include "report/derivation/working_text.hpp"

#include "core/signs.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/letters.hpp"
#include "phrases/working/remarks.hpp"
#include "phrases/working/steps.hpp"
#include "phrases/working/together.hpp"
#include "report/derivation/body_sketch.hpp"
#include "report/derivation/load_shares_table.hpp"
#include "report/derivation/remark_text.hpp"
#include "report/derivation/working_notes.hpp"
#include "report/formula/computed_notation.hpp"
#include "report/formula/exact_notation.hpp"
#include "report/formula/notation.hpp"
#include "report/formula/quotient.hpp"
#include "report/formula/slope_notation.hpp"
#include "report/results/solution_text.hpp"
#include "report/text/formula.hpp"

#include <algorithm>

namespace gusset {
namespace {

using Lines = std::vector<WorkingLine>;

void sentence(Lines& lines, RichLine runs) {
    if (!runs.empty()) {
        lines.push_back({LineRole::Sentence, std::move(runs)});
    }
}

void formula(Lines& lines, LineRole role, Formula tokens) {
    RichLine runs = runsOf(tokens);
    lines.push_back({role, std::move(runs), std::move(tokens)});
}

// Remarks on the result come after it, all others before.
bool comesAfter(const Remark& remark) {
    return says(remark, phrase::kActsOtherWay) || says(remark, phrase::kNegativeForce) ||
           says(remark, phrase::kSumsClose) || says(remark, phrase::kSumsMiss) ||
           says(remark, phrase::kNotComplete);
}

void remarks(Lines& lines, const Notation& notation, const Step& step, bool after) {
    for (const Remark& remark : step.remarks) {
        if (comesAfter(remark) == after) {
            sentence(lines, remarkLine(notation, remark));
        }
    }
}

Formula countingFormula(const Notation& notation) {
    const Counting& count = notation.working.counting;
    const auto number = [](int n) { return numberToken(std::to_string(n)); };
    const Token plus = operatorToken("+");
    const Token equals = operatorToken("=");
    return {variableToken("m"),
            plus,
            variableToken("r"),
            equals,
            number(count.members),
            plus,
            number(count.reactions),
            equals,
            number(count.members + count.reactions),
            separatorToken(notation),
            numberToken("2"),
            variableToken("j"),
            equals,
            numberToken("2"),
            operatorToken(kDot),
            number(count.joints),
            equals,
            number(2 * count.joints)};
}

Symbol reactionOf(const Notation& notation, const AngleLine& line) {
    const auto restraint = line.restraint.at();
    return {.kind = SymbolKind::Reaction,
            .restraint = line.restraint,
            .joint = notation.working.structure.restraints[restraint].joint};
}

void angles(Lines& lines, const Notation& notation, const Step& step) {
    const bool slopes = notation.truss.classSettings.angles == AngleStyle::Slopes;
    for (const AngleLine& line : step.angles) {
        const RichLine angle = runsOf({angleToken(line.angle)});
        if (step.kind == StepKind::WholeBody) {
            sentence(lines, say(notation.book, phrase::kAngleToHorizontal,
                                {{"r", symbolRuns(notation, reactionOf(notation, line))}}));
            formula(lines, LineRole::Equation, givenAngleFormula(notation, line));
            continue;
        }
        const RichLine members = memberNames(notation, line.members);
        sentence(lines, slopes ? say(notation.book, phrase::kSlopeIsOf, {{"members", members}})
                               : say(notation.book, phrase::kAngleIsOf,
                                     {{"angle", angle}, {"members", members}}));
        formula(lines, LineRole::Equation, angleFormula(notation, line));
    }
}

bool namesJoints(StepKind kind) {
    return kind == StepKind::Simultaneous || kind == StepKind::ClosingSums;
}

// Names the free body of an equation where a step uses two.
RichLine bodyLine(const Notation& notation, const Equation& equation) {
    const RichLine joint = jointName(notation, equation.about);
    if (equation.body.size() == notation.truss.joints.size()) {
        return say(notation.book, phrase::kWholeMoments, {{"joint", joint}});
    }
    return say(notation.book, phrase::kPartMoments,
               {{"joints", jointNames(notation, equation.body)}, {"joint", joint}});
}

// Which way each unknown force was guessed, before its equation.
void guesses(Lines& lines, const Notation& notation, const Step& step) {
    if (notation.truss.classSettings.senses != AssumedSense::Guessed || step.equations.empty()) {
        return;
    }
    for (const Found& found : step.found) {
        if (found.symbol.kind == SymbolKind::MemberForce) {
            const auto drawn = found.drawn < 0 ? phrase::kDrawnPushing : phrase::kDrawnPulling;
            sentence(lines,
                     say(notation.book, drawn, {{"symbol", symbolRuns(notation, found.symbol)}}));
        }
    }
}

void equations(Lines& lines, const Notation& notation, const Step& step) {
    guesses(lines, notation, step);
    JointId last;
    for (const Equation& equation : step.equations) {
        if (namesJoints(step.kind) && equation.about != last) {
            last = equation.about;
            sentence(lines, say(notation.book, phrase::kAtJoint,
                                {{"joint", jointName(notation, equation.about)}}));
        }
        if (!equation.body.empty() && step.kind == StepKind::ReactionPair) {
            sentence(lines, bodyLine(notation, equation));
        }
        for (Formula& line : equationLines(notation, equation, centreName(step))) {
            formula(lines, LineRole::Equation, std::move(line));
        }
    }
}

// ΣF_x = 0: A_x = 0, which is its own result.
bool isItsOwnResult(const Step& step, const Found& found) {
    const auto says = [&](const Equation& equation) {
        const std::vector<Term>& terms = equation.terms;
        return terms.size() == 1 && terms.front().sign > 0 && terms.front().factors.size() == 1 &&
               terms.front().factors.front().kind == FactorKind::Unknown &&
               terms.front().factors.front().symbol == found.symbol;
    };
    return found.as == FoundAs::Zero &&
           std::any_of(step.equations.begin(), step.equations.end(), says);
}

// The lines between the equations of a step and its answers.
struct SolvingWriter {
    const Notation& notation;
    const Step& step;
    Lines& lines;

    void operator()(const Remark& remark) const { sentence(lines, remarkLine(notation, remark)); }
    void operator()(const Equation& equation) const {
        formula(lines, LineRole::Equation, equationFormula(notation, equation, {}));
    }
    void operator()(const NumberLine& line) const {
        formula(lines, LineRole::Equation, numberLineFormula(notation, line));
    }
    void operator()(const FoundHere& found) const {
        const Found& one = step.found[found.at];
        formula(lines, LineRole::Result,
                found.by.empty() ? resultFormula(notation, one, Told::AsFound)
                                 : resultBy(notation, one, found.by));
    }
};

void results(Lines& lines, const Notation& notation, const Step& step) {
    SymbolKind last = SymbolKind::Angle;
    for (const Found& found : step.found) {
        if (step.kind == StepKind::Summary && found.symbol.kind != last) {
            last = found.symbol.kind;
            sentence(lines,
                     say(notation.book, last == SymbolKind::Reaction ? phrase::kReactions
                                                                     : phrase::kMemberForces));
        }
        if (isItsOwnResult(step, found)) {
            continue;
        }
        const bool single = step.equations.size() == 1 && step.found.size() == 1;
        formula(lines, LineRole::Result,
                resultFormula(
                    notation, found, step.kind == StepKind::Summary ? Told::AsActs : Told::AsFound,
                    single ? quotientOf(notation, step.equations.front(), found) : Formula{}));
    }
}

// How many forces are called by a letter.
int lettersIn(const Step& step) {
    int letters = 0;
    for (const Remark& remark : step.remarks) {
        letters = says(remark, phrase::kCallOne) ? 1 : says(remark, phrase::kCallTwo) ? 2 : letters;
    }
    return letters;
}

RichLine sumTitle(const Notation& notation, const Step& step) {
    return runsOf(sumName(notation, step.equations.front(), centreName(step)));
}

} // namespace

RichLine stepTitleLine(const Notation& notation, const Step& step) {
    const RichLine joint =
        step.joint.valid() ? jointName(notation, step.joint) : plainLine(centreName(step));
    switch (step.kind) {
    case StepKind::Counting:
        return say(notation.book, phrase::kTitleCounting);
    case StepKind::WholeBody:
        return say(notation.book, phrase::kTitleWholeBody);
    case StepKind::Geometry:
        return say(notation.book, phrase::kTitleSlopes);
    case StepKind::ReactionMoment:
        return say(notation.book, phrase::kTitleMoments, {{"joint", joint}});
    case StepKind::ReactionSum:
        return say(notation.book, phrase::kTitleSum, {{"sum", sumTitle(notation, step)}});
    case StepKind::ReactionPair:
        return say(notation.book, phrase::kTitleReactionsTogether);
    case StepKind::ZeroByRule:
        return step.joint.valid() ? say(notation.book, phrase::kTitleIdle, {{"joint", joint}})
                                  : say(notation.book, phrase::kTitleIdleNone);
    case StepKind::Symmetry:
        return say(notation.book, phrase::kTitleSymmetry);
    case StepKind::JointIntro:
        return say(notation.book, phrase::kTitleJoint, {{"joint", joint}});
    case StepKind::JointEquation:
        return say(notation.book, phrase::kTitleJointSum,
                   {{"joint", joint}, {"sum", sumTitle(notation, step)}});
    case StepKind::JointPair:
        return say(notation.book, phrase::kTitleJointTogether, {{"joint", joint}});
    case StepKind::SectionIntro:
        if (step.joint.valid()) {
            return say(notation.book, phrase::kTitleApart, {{"joint", joint}});
        }
        if (step.members.empty()) {
            return say(notation.book, phrase::kTitleSection);
        }
        return say(notation.book, phrase::kTitleCut,
                   {{"members", memberNames(notation, step.members)}});
    case StepKind::SectionEquation:
        return step.equations.front().kind == EquationKind::SumMoments
                   ? say(notation.book, phrase::kTitleCutMoments, {{"joint", joint}})
                   : say(notation.book, phrase::kTitleCutSum, {{"sum", sumTitle(notation, step)}});
    case StepKind::Simultaneous:
        if (const int letters = lettersIn(step); letters > 0) {
            return say(notation.book,
                       letters == 1 ? phrase::kTitleOneLetter : phrase::kTitleTwoLetters);
        }
        return step.body.size() == 1 ? say(notation.book, phrase::kTitleJointTogether,
                                           {{"joint", jointName(notation, step.body.front())}})
                                     : say(notation.book, phrase::kTitleJointsTogether,
                                           {{"joints", jointNames(notation, step.body)}});
    case StepKind::ClosingSums:
        return say(notation.book, phrase::kTitleClosingSums);
    case StepKind::Summary:
        return say(notation.book, phrase::kTitleSummary);
    }
    return {};
}

std::vector<WorkingLine> renderStep(const Notation& notation, const Step& step) {
    Lines lines;
    if (step.kind == StepKind::Counting && !notation.truss.joints.empty()) {
        sentence(lines, countLine(notation));
        formula(lines, LineRole::Equation, countingFormula(notation));
    }
    if (step.kind == StepKind::WholeBody) {
        for (RichLine& line : wholeBodyLines(notation, step)) {
            sentence(lines, std::move(line));
        }
    }
    if (step.kind == StepKind::ClosingSums) {
        sentence(lines, say(notation.book, phrase::kLeftOverSums));
    }
    remarks(lines, notation, step, false);
    angles(lines, notation, step);
    equations(lines, notation, step);
    for (const SolvingLine& line : step.solving) {
        std::visit(SolvingWriter{notation, step, lines}, line);
    }
    const bool told = !step.solving.empty() ||
                      step.kind == StepKind::WholeBody; // it is all zero there, as it says
    if (!told) {
        results(lines, notation, step);
    }
    remarks(lines, notation, step, true);
    if (step.kind == StepKind::Counting) {
        for (const Mechanism& mechanism : notation.working.mechanisms) {
            sentence(lines,
                     plainLine(mechanismSentence({notation.book, notation.truss}, mechanism)));
        }
    }
    return lines;
}

namespace {

bool goesOn(StepKind kind) {
    return kind == StepKind::JointEquation || kind == StepKind::JointPair ||
           kind == StepKind::SectionEquation;
}

} // namespace

WorkingPassagesTask::WorkingPassagesTask(const Writer& writer, const Working& working,
                                         SketchPaper paper)
    : notation_(notationOf(writer, working)), paper_(paper) {}

bool WorkingPassagesTask::advance() {
    const std::vector<Step>& steps = notation_.working.steps;
    const std::size_t i = passages_.size();
    if (i < steps.size()) {
        Passage passage{stepTitleLine(notation_, steps[i])};
        for (Sketch& sketch : bodySketches(notation_, i, paper_)) {
            passage.parts.push_back(std::move(sketch));
        }
        for (TextTable& table : loadSharesTables(notation_, steps[i].shares)) {
            passage.parts.push_back(std::move(table));
        }
        addSentence(passage, loadsNamed(notation_, steps[i]));
        for (WorkingLine& line : renderStep(notation_, steps[i])) {
            passage.parts.push_back(std::move(line));
        }
        if (!saidCarried_ && carriesUnrounded(notation_, steps[i])) {
            saidCarried_ = true;
            addSentence(passage, say(notation_.book, phrase::kCarriedInFull));
        }
        if (!saidSolved_ && roundsAnswers(notation_) && solvesUnrounded(notation_, steps[i])) {
            saidSolved_ = true;
            addSentence(passage, say(notation_.book, phrase::kSolvedInFull));
        }
        passage.goesOn = goesOn(steps[i].kind);
        passages_.push_back(std::move(passage));
    }
    return passages_.size() == steps.size();
}

Progress WorkingPassagesTask::progress() const {
    return {passages_.size(), notation_.working.steps.size()};
}

std::vector<Passage> workingPassages(const Writer& writer, const Working& working,
                                     SketchPaper paper) {
    WorkingPassagesTask task(writer, working, paper);
    return runToEnd(task).take();
}

std::string workingText(const Writer& writer, const Working& working) {
    return passagesText(workingPassages(writer, working));
}

std::string workingHtml(const Writer& writer, const Working& working) {
    return passagesHtml(workingPassages(writer, working));
}

} // namespace gusset
