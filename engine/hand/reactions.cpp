// Reactions by the equations of the whole truss, chosen as a person would choose them: a moment
// centre through which all unknown lines but one pass, at a joint if there is one; sums that hold
// one unknown; a centre off the truss where two lines cross; and several equations together when
// all else fails.

#include "core/tolerance.hpp"
#include "hand/stages.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

struct Choice {
    StepKind kind = StepKind::ReactionMoment;
    Equation equation;
    Remark remark;
};

std::vector<Symbol> symbolsOf(const std::vector<Acting>& forces) {
    std::vector<Symbol> symbols;
    for (const Acting& force : forces) {
        symbols.push_back(force.symbol);
    }
    return symbols;
}

std::vector<Symbol> through(const Sheet& sheet, const Body& body, Vec2 point) {
    std::vector<Symbol> symbols;
    for (const Acting& force : body.unknowns) {
        if (passesThrough(sheet, force, point)) {
            symbols.push_back(force.symbol);
        }
    }
    return symbols;
}

int unknownReactionsAt(const Body& body, JointId joint) {
    return static_cast<int>(std::count_if(body.unknowns.begin(), body.unknowns.end(),
                                          [&](const Acting& force) { return force.at == joint; }));
}

// Moments about the joint through which all unknown lines but one pass. Among several: the one with
// the most unknowns at the joint itself, then the shortest equation.
std::optional<Choice> byMomentAtJoint(const Sheet& sheet, const Body& body) {
    std::optional<Choice> best;
    std::pair<int, std::size_t> bestScore;
    for (const JointId joint : body.joints) {
        const Vec2 point = positionOf(sheet, joint);
        const auto passing = through(sheet, body, point);
        if (passing.size() + 1 != body.unknowns.size()) {
            continue;
        }
        Equation equation = momentsAbout(sheet, body, point, joint);
        const std::pair score{-unknownReactionsAt(body, joint), equation.terms.size()};
        if (!best || score < bestScore) {
            bestScore = score;
            best = Choice{StepKind::ReactionMoment,
                          equation,
                          {.kind = RemarkKind::MomentCentreChosen,
                           .joint = joint,
                           .symbols = passing,
                           .at = point}};
        }
    }
    return best;
}

std::optional<Choice> bySum(const Sheet& sheet, const Body& body) {
    std::optional<Choice> best;
    double bestCoefficient = 0;
    for (const EquationKind kind : {EquationKind::SumX, EquationKind::SumY}) {
        Equation equation = sumOf(sheet, body, kind);
        const auto unknowns = unknownsOf(equation);
        if (unknowns.size() != 1) {
            continue;
        }
        const double coefficient = std::fabs(coefficientOf(equation, unknowns.front()));
        // The second must be clearly better: the first is the one that is written first on paper.
        if (coefficient > 1.001 * bestCoefficient) {
            bestCoefficient = coefficient;
            best = Choice{StepKind::ReactionSum, equation, {.kind = RemarkKind::SumLeavesOne}};
        }
    }
    return best;
}

std::optional<Vec2> crossing(const Sheet& sheet, const Acting& a, const Acting& b) {
    const double sine = cross(a.along, b.along);
    if (std::fabs(sine) <= kParallel) {
        return std::nullopt;
    }
    const Vec2 from = positionOf(sheet, a.at);
    const double along = cross(positionOf(sheet, b.at) - from, b.along) / sine;
    return from + along * a.along;
}

// A letter that no joint has, for a point off the truss.
std::string freeLetter(const Truss& truss) {
    for (const char* letter : {"O", "P", "Q", "R", "S", "T", "U", "V", "W", "X", "Y", "Z"}) {
        if (!findJoint(truss, letter).valid()) {
            return letter;
        }
    }
    return "O\u2032";
}

JointId nearestJoint(const Sheet& sheet, Vec2 point) {
    JointId nearest{0};
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        if (length(positionOf(sheet, joint) - point) < length(positionOf(sheet, nearest) - point)) {
            nearest = joint;
        }
    }
    return nearest;
}

// Moments about a point off the truss where two unknown lines cross and all but one pass.
std::optional<Choice> byMomentOffTruss(const Sheet& sheet, const Body& body) {
    for (std::size_t i = 0; i < body.unknowns.size(); ++i) {
        for (std::size_t k = i + 1; k < body.unknowns.size(); ++k) {
            const auto point = crossing(sheet, body.unknowns[i], body.unknowns[k]);
            if (!point) {
                continue;
            }
            const auto passing = through(sheet, body, *point);
            if (passing.size() + 1 == body.unknowns.size()) {
                return Choice{StepKind::ReactionMoment,
                              momentsAbout(sheet, body, *point, {}),
                              {.kind = RemarkKind::CentreOffTruss,
                               .joint = nearestJoint(sheet, *point),
                               .symbols = passing,
                               .at = *point,
                               .text = freeLetter(sheet.truss)}};
            }
        }
    }
    return std::nullopt;
}

// Across parallel unknowns, when all but one are parallel to each other and to no axis.
std::optional<Choice> bySumAcross(const Sheet& sheet, const Body& body) {
    for (const Acting& one : body.unknowns) {
        const Vec2 across{-one.along.y, one.along.x};
        Equation equation = sumAlong(sheet, body, across);
        if (unknownsOf(equation).size() == 1) {
            return Choice{StepKind::ReactionSum, equation, {.kind = RemarkKind::SumLeavesOne}};
        }
    }
    return std::nullopt;
}

std::optional<Choice> chooseEquation(const Sheet& sheet, const Body& body) {
    const bool first = body.unknowns.size() == sheet.structure.restraints.size();
    std::optional<Choice> choice = first ? byMomentAtJoint(sheet, body) : bySum(sheet, body);
    if (!choice) {
        choice = first ? bySum(sheet, body) : byMomentAtJoint(sheet, body);
    }
    if (!choice) {
        choice = bySumAcross(sheet, body);
    }
    return choice ? choice : byMomentOffTruss(sheet, body);
}

void remarkOn(Step& step, const Found& found) {
    if (found.as == FoundAs::Opposite) {
        step.remarks.push_back({.kind = RemarkKind::NegativeReaction, .symbol = found.symbol});
    }
}

void write(Sheet& sheet, const Body& body, Choice choice) {
    Step step;
    step.kind = choice.kind;
    step.joint = choice.equation.about;
    step.body = body.joints;
    step.remarks.push_back(choice.remark);
    step.found.push_back(solveFor(sheet, choice.equation));
    step.restraints.push_back(step.found.front().symbol.restraint);
    step.equations.push_back(choice.equation);
    remarkOn(step, step.found.front());
    sheet.steps.push_back(step);
}

// Two or three reactions left, none of which an equation of the whole holds alone.
void writeTogether(Sheet& sheet, const Body& body) {
    Step step;
    step.kind = StepKind::ReactionPair;
    step.body = body.joints;
    const auto unknowns = symbolsOf(body.unknowns);
    step.remarks.push_back({.kind = RemarkKind::ReactionsTogether, .symbols = unknowns});
    step.equations = {sumOf(sheet, body, EquationKind::SumX),
                      sumOf(sheet, body, EquationKind::SumY)};
    if (unknowns.size() > 2) {
        const JointId centre = body.unknowns.front().at;
        step.equations.push_back(momentsAbout(sheet, body, positionOf(sheet, centre), centre));
    }
    if (!solveTogether(sheet, step.equations, unknowns, step.found)) {
        return;
    }
    for (const Found& found : step.found) {
        step.restraints.push_back(found.symbol.restraint);
        remarkOn(step, found);
    }
    sheet.steps.push_back(step);
}

} // namespace

void writeWholeBody(Sheet& sheet) {
    Step step;
    step.kind = StepKind::WholeBody;
    const Body body = wholeBody(sheet);
    step.body = body.joints;
    for (std::size_t i = 0; i < sheet.structure.restraints.size(); ++i) {
        step.restraints.push_back(static_cast<int>(i));
    }
    for (const AngleLine& line : sheet.angles) {
        if (line.restraint >= 0) {
            step.angles.push_back(line);
        }
    }
    if (body.unknowns.size() > 3) {
        step.remarks.push_back(
            {.kind = RemarkKind::ReactionsNotEnough, .symbols = symbolsOf(body.unknowns)});
    }
    sheet.steps.push_back(step);
}

void writeReactions(Sheet& sheet) {
    for (;;) {
        const Body body = wholeBody(sheet);
        if (body.unknowns.empty()) {
            return;
        }
        const auto choice = chooseEquation(sheet, body);
        if (choice) {
            write(sheet, body, *choice);
        } else {
            if (sheet.structure.restraints.size() <= 3) {
                writeTogether(sheet, body);
            }
            return;
        }
    }
}

} // namespace gusset
