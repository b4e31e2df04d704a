#include "core/tolerance.hpp"
#include "hand/stages.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

bool allKnown(const std::vector<std::optional<double>>& values) {
    return std::all_of(values.begin(), values.end(), [](const auto& v) { return v.has_value(); });
}

bool allFound(const Sheet& sheet) { return allKnown(sheet.forces) && allKnown(sheet.reactions); }

void writeNothingActs(Sheet& sheet) {
    Step step;
    step.kind = StepKind::WholeBody;
    step.remarks.push_back({.kind = RemarkKind::NoLoads});
    for (std::size_t i = 0; i < sheet.reactions.size(); ++i) {
        step.found.push_back(record(sheet, reactionSymbol(sheet, static_cast<int>(i)), 0));
    }
    for (std::size_t i = 0; i < sheet.forces.size(); ++i) {
        step.found.push_back(record(sheet, forceSymbol({static_cast<int>(i)}), 0));
    }
    sheet.steps.push_back(step);
}

void writeForces(Sheet& sheet) {
    writeWholeBody(sheet);
    writeAllReactions(sheet);
    writeGeometry(sheet);
    writeSymmetry(sheet);
    writeIdleMembers(sheet);
    writeMirrorImages(sheet);
    while (!allFound(sheet)) {
        if (!writeNextJoint(sheet) && !writeSection(sheet) && !writeSimultaneous(sheet)) {
            return;
        }
        writeMirrorImages(sheet);
        writeReactions(sheet); // a reaction found at a joint may free another one
    }
    writeCheck(sheet);
}

RemarkKind countRemark(const Solution& solution) {
    switch (solution.status) {
    case Status::Determinate:
        return RemarkKind::CountDeterminate;
    case Status::Indeterminate:
        return RemarkKind::CountIndeterminate;
    default:
        break;
    }
    return solution.solved ? RemarkKind::CountBalanced : RemarkKind::CountMechanism;
}

} // namespace

void writeCounting(Sheet& sheet, const Solution& solution) {
    Step step;
    step.kind = StepKind::Counting;
    step.remarks.push_back(
        {.kind = sheet.truss.joints.empty() ? RemarkKind::NothingDrawn : countRemark(solution)});
    sheet.steps.push_back(step);
}

void writeCheck(Sheet& sheet) {
    Step step;
    step.kind = StepKind::Check;
    double worst = 0;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        const Body body = bodyOf(sheet, {joint});
        for (const EquationKind kind : unusedAxes(sheet, joint)) {
            Equation equation = sumOf(sheet, body, kind);
            if (equation.terms.empty()) {
                continue;
            }
            equation.about = joint;
            worst = std::max(worst, std::fabs(valueOf(equation)));
            step.equations.push_back(equation);
            step.body.push_back(joint);
        }
    }
    if (step.equations.empty()) {
        return;
    }
    step.body.erase(std::unique(step.body.begin(), step.body.end()), step.body.end());
    if (worst <= kResidual * sheet.scale) {
        step.remarks.push_back({.kind = RemarkKind::Closes});
    } else {
        step.remarks.push_back({.kind = RemarkKind::ClosesTo, .number = worst});
    }
    sheet.steps.push_back(step);
}

void writeSummary(Sheet& sheet) {
    Step step;
    step.kind = StepKind::Summary;
    for (std::size_t i = 0; i < sheet.reactions.size(); ++i) {
        if (sheet.reactions[i]) {
            const Symbol symbol = reactionSymbol(sheet, static_cast<int>(i));
            step.found.push_back(record(sheet, symbol, *sheet.reactions[i]));
        }
    }
    for (std::size_t i = 0; i < sheet.forces.size(); ++i) {
        if (sheet.forces[i]) {
            const Symbol symbol = forceSymbol({static_cast<int>(i)});
            step.found.push_back(record(sheet, symbol, *sheet.forces[i]));
            step.found.back().drawn = drawnSense(sheet, symbol);
            step.members.push_back(symbol.member);
        }
    }
    if (!allFound(sheet)) {
        step.remarks.push_back({.kind = RemarkKind::NotComplete});
    }
    sheet.steps.push_back(step);
}

Working workOut(const Truss& truss, const LoadChoice& choice, const Solution& solution) {
    Working working;
    working.counting = solution.counting;
    if (solution.status == Status::Invalid) {
        return working;
    }
    Sheet sheet = makeSheet(truss, choice);
    writeCounting(sheet, solution);
    if (solution.solved && solution.counting.redundants == 0 && !truss.joints.empty()) {
        if (sheet.scale == 0) {
            writeNothingActs(sheet);
        } else {
            writeForces(sheet);
        }
        writeSummary(sheet);
        working.complete = allFound(sheet);
        working.exact = exactValuesOf(truss, choice);
    }
    working.steps = std::move(sheet.steps);
    working.structure = std::move(sheet.structure);
    working.loads = std::move(sheet.loads);
    return working;
}

} // namespace gusset
