#include "hand/stages/work_out.hpp"

#include "core/tolerance.hpp"
#include "hand/paper/stages.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace gusset {
namespace {

std::size_t countAll(const Sheet& sheet) { return sheet.forces.size() + sheet.reactions.size(); }

bool allFound(const Sheet& sheet) { return sheet.order.size() == countAll(sheet); }

void writeNothingActs(Sheet& sheet) {
    Step step;
    step.kind = StepKind::WholeBody;
    step.remarks.push_back(remarkThat(phrase::kNothingActs));
    for (std::size_t i = 0; i < sheet.reactions.size(); ++i) {
        step.found.push_back(record(sheet, reactionSymbol(sheet, {static_cast<int>(i)}), 0));
    }
    for (std::size_t i = 0; i < sheet.forces.size(); ++i) {
        step.found.push_back(record(sheet, forceSymbol({static_cast<int>(i)}), 0));
    }
    sheet.steps.push_back(step);
}

// The stages before the first joint, in order.
constexpr std::array kOpening{writeWholeBody, writeAllReactions, writeGeometry,
                              writeSymmetry,  writeIdleMembers,  writeMirrorImages};

// One joint, cut or group of joints, with its immediate consequences. False when nothing is left to
// write.
bool writeNext(Sheet& sheet) {
    if (allFound(sheet) || (!writeNextJoint(sheet) && !writeSection(sheet) &&
                            !writeLetters(sheet) && !writeSimultaneous(sheet))) {
        return false;
    }
    writeMirrorImages(sheet);
    writeReactions(sheet); // a reaction found at a joint may make another one solvable
    return true;
}

Remark countRemark(const Solution& solution) {
    switch (solution.status) {
    case Status::Determinate:
        return remarkThat(phrase::kCountDeterminate);
    case Status::Indeterminate:
        return remarkThat(phrase::kCountIndeterminate, {{"degree", solution.counting.redundants}});
    default:
        break;
    }
    return remarkThat(solution.solved ? phrase::kCountBalanced : phrase::kCountMechanism);
}

} // namespace

void writeCounting(Sheet& sheet, const Solution& solution) {
    Step step;
    step.kind = StepKind::Counting;
    step.remarks.push_back(sheet.truss.joints.empty() ? remarkThat(phrase::kNothingDrawn)
                                                      : countRemark(solution));
    sheet.steps.push_back(step);
}

void writeClosingSums(Sheet& sheet) {
    Step step;
    step.kind = StepKind::ClosingSums;
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
        step.remarks.push_back(remarkThat(phrase::kSumsClose));
    } else {
        step.remarks.push_back(remarkThat(phrase::kSumsMiss, {{"number", worst}}));
    }
    sheet.steps.push_back(step);
}

void writeSummary(Sheet& sheet) {
    Step step;
    step.kind = StepKind::Summary;
    for (std::size_t i = 0; i < sheet.reactions.size(); ++i) {
        if (sheet.reactions[i]) {
            const Symbol symbol = reactionSymbol(sheet, {static_cast<int>(i)});
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
        step.remarks.push_back(remarkThat(phrase::kNotComplete));
    }
    sheet.steps.push_back(step);
}

struct WorkingTask::State {
    enum class Stage { Opening, Forces, Check, Summary, Exact, Done };

    const Truss& truss;
    LoadChoice choice;
    Sheet sheet;
    Working working{};
    Stage stage = Stage::Opening;
    std::size_t opened = 0; // stages of kOpening done
    std::optional<ExactValuesTask> exact{};

    void begin(const Solution& solution) {
        writeCounting(sheet, solution);
        if (!solution.solved || solution.counting.redundants != 0 || truss.joints.empty()) {
            stage = Stage::Done;
        } else if (sheet.scale == 0) {
            writeNothingActs(sheet);
            stage = Stage::Summary;
        }
    }

    Stage next() {
        switch (stage) {
        case Stage::Opening:
            kOpening[opened++](sheet);
            return opened < kOpening.size() ? Stage::Opening : Stage::Forces;
        case Stage::Forces:
            if (writeNext(sheet)) {
                return Stage::Forces;
            }
            return allFound(sheet) ? Stage::Check : Stage::Summary;
        case Stage::Check:
            writeClosingSums(sheet);
            return Stage::Summary;
        case Stage::Summary:
            writeSummary(sheet);
            working.complete = allFound(sheet);
            exact.emplace(truss, choice);
            return Stage::Exact;
        case Stage::Exact:
            if (!exact->advance()) {
                return Stage::Exact;
            }
            working.exact = exact->take();
            return Stage::Done;
        case Stage::Done:
            break;
        }
        return Stage::Done;
    }
};

WorkingTask::WorkingTask(const Truss& truss, const LoadChoice& choice, const Solution& solution,
                         std::shared_ptr<Shape> shape) {
    Working working;
    working.counting = solution.counting;
    working.mechanisms = solution.mechanisms;
    if (solution.status == Status::Invalid) {
        state_ = std::make_unique<State>(
            State{truss, choice, {truss}, std::move(working), State::Stage::Done});
        return;
    }
    state_ = std::make_unique<State>(
        State{truss, choice, makeSheet(truss, choice, std::move(shape)), std::move(working)});
    state_->begin(solution);
}

WorkingTask::~WorkingTask() = default;
WorkingTask::WorkingTask(WorkingTask&&) noexcept = default;
WorkingTask& WorkingTask::operator=(WorkingTask&&) noexcept = default;

bool WorkingTask::advance() {
    state_->stage = state_->next();
    return state_->stage == State::Stage::Done;
}

Progress WorkingTask::progress() const {
    const Sheet& sheet = state_->sheet;
    return {sheet.order.size(), countAll(sheet)};
}

Working WorkingTask::take() {
    Working working = std::move(state_->working);
    working.steps = std::move(state_->sheet.steps);
    working.structure = std::move(state_->sheet.structure);
    working.loads = std::move(state_->sheet.loads);
    return working;
}

void WorkingTask::takeFirst(std::vector<JointId> joints) {
    std::reverse(joints.begin(), joints.end());
    state_->sheet.wanted = std::move(joints);
}

std::optional<OutOfTurn> WorkingTask::outOfTurn() const { return state_->sheet.outOfTurn; }

OrderedWorking workOutInOrder(const Truss& truss, const LoadChoice& choice,
                              const Solution& solution, std::vector<JointId> order) {
    WorkingTask task(truss, choice, solution);
    task.takeFirst(std::move(order));
    (void)runToEnd(task);
    OrderedWorking made;
    made.refused = task.outOfTurn();
    made.working = task.take();
    return made;
}

Working workOut(const Truss& truss, const LoadChoice& choice, const Solution& solution) {
    WorkingTask task(truss, choice, solution);
    return runToEnd(task).take();
}

} // namespace gusset
