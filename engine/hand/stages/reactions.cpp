// Reactions from the equations of the whole truss, chosen as a person would: a moment centre
// through which all unknown lines but one pass, at a joint if possible; sums with one unknown; a
// centre off the truss where two lines cross; and several equations together when all else fails.

#include "core/angle.hpp"
#include "core/tolerance.hpp"
#include "hand/paper/isolate.hpp"
#include "hand/paper/solve_pair.hpp"
#include "hand/paper/stages.hpp"
#include "hand/stages/section_step.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

// Two or three reactions left, none of which is alone in an equation of the whole truss.
void writeTogether(Sheet& sheet, const Body& body) {
    Step step;
    step.kind = StepKind::ReactionPair;
    step.body = body.joints;
    const auto unknowns = symbolsOf(body.unknowns);
    step.remarks.push_back(remarkThat(phrase::kReactionsTogether, {{"reactions", unknowns}}));
    step.equations = {sumOf(sheet, body, EquationKind::SumX),
                      sumOf(sheet, body, EquationKind::SumY)};
    if (unknowns.size() > 2) {
        const JointId centre = body.unknowns.front().at;
        step.equations.push_back(momentsAbout(sheet, body, positionOf(sheet, centre), centre));
    }
    for (const Equation& equation : step.equations) {
        noteUses(sheet, body, equation, step);
    }
    const bool solved = unknowns.size() == 2
                            ? solvePairOf(sheet, step, unknowns)
                            : solveTogether(sheet, step.equations, unknowns, step.found);
    if (!solved) {
        return;
    }
    noteFound(sheet, step);
    sheet.steps.push_back(step);
}

} // namespace

void writeReactionEquation(Sheet& sheet, const Body& body, Isolation choice) {
    Step step;
    step.kind = choice.equation.kind == EquationKind::SumMoments ? StepKind::ReactionMoment
                                                                 : StepKind::ReactionSum;
    step.joint = choice.equation.about;
    step.body = body.joints;
    step.remarks.push_back(choice.remark);
    step.remarks.insert(step.remarks.end(), choice.details.begin(), choice.details.end());
    noteUses(sheet, body, choice.equation, step);
    step.found.push_back(solveFor(sheet, choice.equation));
    step.equations.push_back(choice.equation);
    noteFound(sheet, step);
    sheet.steps.push_back(step);
}

namespace {

std::vector<FactoredCase> casesOf(const Combination& combination) {
    std::vector<FactoredCase> cases;
    for (const auto& [name, factor] : combination.factors) {
        cases.push_back({factor, name});
    }
    return cases;
}

void noteChoice(const Sheet& sheet, Step& step) {
    const std::string name = choiceName(sheet.choice);
    if (const Combination* combination = combinationOf(sheet.truss, sheet.choice)) {
        step.remarks.push_back(remarkThat(phrase::kLoadsOfCombination,
                                          {{"name", name}, {"cases", casesOf(*combination)}}));
    } else if (isOneCase(sheet.choice)) {
        step.remarks.push_back(remarkThat(phrase::kLoadsOfCase, {{"name", name}}));
    } else if (const auto cases = caseNames(sheet.truss); cases.size() > 1) {
        step.remarks.push_back(remarkThat(phrase::kLoadsOfAllCases, {{"cases", cases}}));
    }
}

// The only load on its joint, at an angle: its components are in the list of loads, and where they
// come from is said here.
void noteInclined(const Sheet& sheet, const AngledForce& load, Step& step) {
    const Vec2 force = sheet.loads[load.joint.at()];
    if (std::fabs(cross(force, {1, 0})) <= kParallel * length(force) ||
        std::fabs(cross(force, {0, 1})) <= kParallel * length(force)) {
        return;
    }
    const Degrees angle{toDegrees(std::atan2(std::fabs(force.y), std::fabs(force.x)))};
    step.remarks.push_back(remarkThat(phrase::kLoadInclined, {{"size", GivenForce{length(force)}},
                                                              {"joint", load.joint},
                                                              {"angle", angle},
                                                              {"direction", force},
                                                              {"across", Vec2{force.x, 0}},
                                                              {"upright", Vec2{0, force.y}}}));
}

// Which loads these are, and what was done to them before they are listed.
void noteLoads(const Sheet& sheet, Step& step) {
    noteChoice(sheet, step);
    std::vector<int> onJoint(sheet.truss.joints.size());
    std::vector<const AngledForce*> angled;
    bool shares = false;
    const std::vector<double> factors = LoadFactors(sheet.truss).under(sheet.choice);
    for (std::size_t i = 0; i < factors.size(); ++i) {
        const Load& load = sheet.truss.loads[i];
        if (factors[i] == 0) {
            continue;
        }
        const JointId joint = jointOf(load);
        if (joint.valid()) {
            ++onJoint[joint.at()];
        } else {
            shares = true;
        }
        if (const auto* at = std::get_if<AngledForce>(&load.what)) {
            angled.push_back(at);
        }
    }
    for (const AngledForce* load : angled) {
        if (!shares && onJoint[load->joint.at()] == 1) {
            noteInclined(sheet, *load, step);
        }
    }
    if (shares) {
        step.remarks.push_back(remarkThat(phrase::kLoadsShared));
        step.shares = loadShares(sheet.truss, sheet.structure, sheet.choice);
    }
}

} // namespace

void writeWholeBody(Sheet& sheet) {
    Step step;
    step.kind = StepKind::WholeBody;
    const Body body = wholeBody(sheet);
    step.body = body.joints;
    for (std::size_t i = 0; i < sheet.structure.restraints.size(); ++i) {
        step.restraints.push_back({static_cast<int>(i)});
    }
    for (const AngleLine& line : sheet.angles) {
        if (line.restraint.valid()) {
            step.angles.push_back(line);
        }
    }
    noteLoads(sheet, step);
    if (body.unknowns.size() > 3) {
        step.remarks.push_back(
            remarkThat(phrase::kMoreThanThree, {{"reactions", symbolsOf(body.unknowns)}}));
    }
    sheet.steps.push_back(step);
}

namespace {

std::size_t countOpen(const Sheet& sheet) { return sheet.reactions.size() - sheet.reactionsFound; }

// Both a horizontal and a vertical reaction of the joint are unknown.
bool isOpenPin(const Sheet& sheet, JointId joint) {
    bool level = false;
    bool plumb = false;
    for (const RestraintId restraint : sheet.restraintsOf[joint.at()]) {
        const auto i = restraint.at();
        const Vec2 along = sheet.structure.restraints[i].along;
        level = level || (!sheet.reactions[i] && std::fabs(along.y) <= kParallel);
        plumb = plumb || (!sheet.reactions[i] && std::fabs(along.x) <= kParallel);
    }
    return level && plumb;
}

std::vector<JointId> openPinsOf(const Sheet& sheet) {
    std::vector<JointId> pins;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        if (isOpenPin(sheet, {static_cast<int>(i)})) {
            pins.push_back({static_cast<int>(i)});
        }
    }
    return pins;
}

// Whether this pin is open, and so far from those after it in the list that no point lies, within
// the tolerance, on lines of both.
bool standsApart(const Sheet& sheet, const std::vector<JointId>& pins, std::size_t at) {
    for (std::size_t i = at + 1; i < pins.size(); ++i) {
        const Vec2 gap = positionOf(sheet, pins[i]) - positionOf(sheet, pins[at]);
        if (length(gap) <= 4 * sheet.spot) {
            return false;
        }
    }
    return isOpenPin(sheet, pins[at]);
}

// With three open pins, no equation of the whole truss holds one unknown alone: moments about a
// point leave at least one unknown of every pin except one at that point, and a sum leaves at least
// one of each. Pins that are no longer open are removed from the list, so that all calls together
// take n steps.
bool hasThreeOpenPins(Sheet& sheet) {
    std::vector<JointId>& pins = sheet.openPins;
    for (std::size_t good = 0; good < 3; ++good) {
        while (pins.size() > good && !standsApart(sheet, pins, pins.size() - 1 - good)) {
            pins.erase(pins.end() - 1 - static_cast<std::ptrdiff_t>(good));
        }
        if (pins.size() == good) {
            return false;
        }
    }
    return true;
}

// The supports of a simple beam: two vertical reactions, and one horizontal one at one of their
// joints.
struct BeamSupports {
    RestraintId level;
    RestraintId left;
    RestraintId right;
};

std::optional<BeamSupports> beamSupports(const Sheet& sheet) {
    const std::vector<Restraint>& restraints = sheet.structure.restraints;
    if (restraints.size() != 3 || sheet.reactionsFound > 0) {
        return std::nullopt;
    }
    BeamSupports supports;
    for (std::size_t i = 0; i < restraints.size(); ++i) {
        const RestraintId id{static_cast<int>(i)};
        if (std::fabs(restraints[i].along.y) <= kParallel) {
            supports.level = id;
        } else if (std::fabs(restraints[i].along.x) <= kParallel) {
            (supports.left.valid() ? supports.right : supports.left) = id;
        }
    }
    if (!supports.level.valid() || !supports.right.valid()) {
        return std::nullopt;
    }
    const JointId level = restraints[supports.level.at()].joint;
    const bool atEnd = level == restraints[supports.left.at()].joint ||
                       level == restraints[supports.right.at()].joint;
    return atEnd ? std::optional(supports) : std::nullopt;
}

// Symmetric as given: the vertical reactions are half of the load each.
void writeMirroredReactions(Sheet& sheet) {
    const auto supports = beamSupports(sheet);
    const auto images = supports ? imagesAsGiven(sheet) : std::nullopt;
    if (!images) {
        return;
    }
    const std::vector<Restraint>& restraints = sheet.structure.restraints;
    const JointId left = restraints[supports->left.at()].joint;
    Vec2 load;
    for (const Vec2 each : sheet.loads) {
        load = load + each;
    }
    if ((*images)[left.at()] != restraints[supports->right.at()].joint ||
        left == (*images)[left.at()] || isNothing(sheet, load.y)) {
        return;
    }
    const Symbol level = reactionSymbol(sheet, supports->level);
    const auto isolation = isolate(sheet, wholeBody(sheet), level);
    if (!isolation || isolation->equation.kind != EquationKind::SumX) {
        return;
    }
    writeReactionEquation(sheet, wholeBody(sheet), *isolation);
    Step step;
    step.kind = StepKind::ReactionSum;
    const Body body = wholeBody(sheet);
    step.body = body.joints;
    step.remarks.push_back(remarkThat(phrase::kReactionsMirror,
                                      {{"level", level}, {"reactions", symbolsOf(body.unknowns)}}));
    step.uses = {level};
    step.equations = {sumOf(sheet, body, EquationKind::SumY)};
    for (const RestraintId restraint : {supports->left, supports->right}) {
        const double half = -load.y / 2 / restraints[restraint.at()].along.y;
        step.found.push_back(record(sheet, reactionSymbol(sheet, restraint), half));
        putValue(step.equations.front(), step.found.back().symbol, step.found.back().value);
    }
    noteFound(sheet, step);
    sheet.steps.push_back(step);
}

} // namespace

void writeReactions(Sheet& sheet) {
    writeMirroredReactions(sheet);
    if (sheet.openReactions == 0 && countOpen(sheet) > 0) {
        sheet.openPins = openPinsOf(sheet);
    }
    // If the whole truss gave nothing, it gives nothing until another reaction is known.
    for (std::size_t open = countOpen(sheet); open > 0 && open != sheet.openReactions;
         open = countOpen(sheet)) {
        if (hasThreeOpenPins(sheet)) {
            sheet.openReactions = open;
            return;
        }
        const Body body = wholeBody(sheet);
        const bool first = body.unknowns.size() == sheet.structure.restraints.size();
        const auto choice = isolateAny(sheet, body, first ? Preference::Moments : Preference::Sums);
        if (choice) {
            writeReactionEquation(sheet, body, *choice);
        } else {
            if (sheet.structure.restraints.size() <= 3) {
                writeTogether(sheet, body);
            }
            sheet.openReactions = countOpen(sheet);
            return;
        }
    }
}

void writeAllReactions(Sheet& sheet) {
    writeReactions(sheet);
    while (countOpen(sheet) > 0 && writeHingedReaction(sheet)) {
        writeReactions(sheet);
    }
}

} // namespace gusset
