#include "hand/virtual_work/influence_by_hand.hpp"

#include "core/tolerance.hpp"
#include "hand/paper/shape.hpp"
#include "hand/paper/stages.hpp"
#include "hand/stages/explain.hpp"
#include "hand/stages/section_step.hpp"
#include "hand/stages/work_out.hpp"
#include "hand/virtual_work/reaction_law.hpp"
#include "hand/virtual_work/virtual_work.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace gusset {
namespace {

Truss loadedAt(const Truss& unloaded, const std::vector<JointId>& joints) {
    std::vector<Vec2> forces(unloaded.joints.size());
    for (const JointId joint : joints) {
        forces[joint.at()] = {0, -1};
    }
    return underForces(unloaded, forces);
}

// The only reaction along this axis at the joint.
InfluenceEnd findReaction(const Structure& structure, const Effect& effect, Symbol& symbol) {
    int along = 0;
    int inclined = 0;
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        const Restraint& restraint = structure.restraints[i];
        if (restraint.joint != effect.joint) {
            continue;
        }
        const Vec2 d = restraint.along;
        const bool level = std::fabs(d.y) <= kParallel;
        inclined += !level && std::fabs(d.x) > kParallel ? 1 : 0;
        if (effect.horizontal ? level : std::fabs(d.x) <= kParallel) {
            ++along;
            symbol = {.kind = SymbolKind::Reaction,
                      .restraint = {static_cast<int>(i)},
                      .joint = effect.joint};
        }
    }
    if (inclined > 0 || along > 1) {
        return InfluenceEnd::SeveralSupports;
    }
    return along == 1 ? InfluenceEnd::Complete : InfluenceEnd::NoSupport;
}

// One equation of the whole truss with this reaction alone; false if there is none.
bool writeReactionAlone(Sheet& sheet, const Symbol& symbol) {
    if (valueOf(sheet, symbol)) {
        return true;
    }
    const Body body = wholeBody(sheet);
    const auto isolation = isolate(sheet, body, symbol);
    if (isolation) {
        writeReactionEquation(sheet, body, *isolation);
    }
    return isolation.has_value();
}

// Writes the reactions of the part that the whole truss gives one at a time, or as many as needed.
void writeReactionsOf(Sheet& sheet, const std::vector<JointId>& part) {
    bool alone = true;
    for (const Acting& force : bodyOf(sheet, part).unknowns) {
        if (force.symbol.kind == SymbolKind::Reaction) {
            alone = writeReactionAlone(sheet, force.symbol) && alone;
        }
    }
    if (!alone) {
        writeAllReactions(sheet);
    }
}

Working workingOf(Sheet& sheet) {
    Working working;
    working.structure = sheet.structure;
    working.loads = sheet.loads;
    working.exact = exactValuesOf(sheet.truss, {});
    working.steps = std::move(sheet.steps);
    return working;
}

struct Task {
    const Truss& unloaded;
    const std::vector<JointId>& path;
    Symbol symbol;
    std::vector<JointId> part; // Section: one side of the cut; Joint: only that joint
    InfluenceWay way;
    std::shared_ptr<Shape> shape = std::make_shared<Shape>(); // the same for every position

    [[nodiscard]] std::vector<JointId> otherPart() const {
        std::vector<JointId> other;
        for (std::size_t i = 0; i < unloaded.joints.size(); ++i) {
            const JointId joint{static_cast<int>(i)};
            if (!std::binary_search(part.begin(), part.end(), joint)) {
                other.push_back(joint);
            }
        }
        return other;
    }
};

// The end of the member whose joint gives its force alone, as for a hanger; none if there is none.
JointId jointThatGives(const Sheet& sheet, const Symbol& symbol) {
    const Member& member = sheet.truss.members[symbol.member.at()];
    for (const JointId end : {member.a, member.b}) {
        const auto isolation = isolate(sheet, bodyOf(sheet, {end}), symbol);
        if (isolation && difficulty(isolation->way) <= 1 &&
            isolation->equation.kind != EquationKind::SumMoments) {
            return end;
        }
    }
    return {};
}

// Chooses one joint, or the best cut for the member when the whole path is loaded; the reactions
// are then known.
void chooseWay(Task& task) {
    if (task.symbol.kind == SymbolKind::Reaction) {
        task.way = InfluenceWay::Reaction;
        return;
    }
    const Truss all = loadedAt(task.unloaded, task.path);
    Sheet sheet = makeSheet(all, {}, task.shape);
    writeAllReactions(sheet);
    if (const JointId joint = jointThatGives(sheet, task.symbol); joint.valid()) {
        task.way = InfluenceWay::Joint;
        task.part = {joint};
        return;
    }
    const auto section = bestSection(sheet, task.symbol);
    task.way = section ? InfluenceWay::Section : InfluenceWay::Joints;
    if (section) {
        task.part = section->body.joints;
        std::sort(task.part.begin(), task.part.end());
    }
}

bool writeJointOrdinate(const Task& task, Sheet& sheet) {
    writeReactionsOf(sheet, task.part);
    const Body body = bodyOf(sheet, task.part);
    const auto isolation = isolate(sheet, body, task.symbol);
    if (!isolation) {
        return false;
    }
    writeSectionEquation(sheet, body, *isolation);
    sheet.steps.back().kind = StepKind::JointEquation;
    sheet.steps.back().joint = task.part.front();
    return true;
}

// Uses the part without the load. False when no equation of it holds the member alone.
bool writeSectionOrdinate(const Task& task, JointId load, Sheet& sheet) {
    const bool onPart = std::binary_search(task.part.begin(), task.part.end(), load);
    const std::vector<JointId> part = onPart ? task.otherPart() : task.part;
    writeReactionsOf(sheet, part);
    const Body body = bodyOf(sheet, part);
    const auto isolation = isolate(sheet, body, task.symbol);
    if (isolation) {
        writeSectionEquation(sheet, body, *isolation);
    }
    return isolation.has_value();
}

// The steps for a load at this joint in the chosen way; nothing if that does not reach the effect.
std::optional<Working> chainFor(const Task& task, const Truss& loaded, JointId load) {
    Sheet sheet = makeSheet(loaded, {}, task.shape);
    sheet.saidAway = true; // the opening says how forces are drawn, and what a sign means
    sheet.saidNegative = true;
    writeGeometry(sheet);
    bool written = false;
    if (task.way == InfluenceWay::Reaction) {
        written = writeReactionAlone(sheet, task.symbol);
    } else if (task.way == InfluenceWay::Joint) {
        written = writeJointOrdinate(task, sheet);
    } else if (task.way == InfluenceWay::Section) {
        written = writeSectionOrdinate(task, load, sheet);
    }
    return written ? std::optional(stepsFor(workingOf(sheet), {task.symbol})) : std::nullopt;
}

std::optional<double> foundValue(const Working& chain, const Symbol& symbol) {
    for (const Step& step : chain.steps) {
        for (const Found& found : step.found) {
            if (found.symbol == symbol) {
                return found.value;
            }
        }
    }
    return std::nullopt;
}

// Remarks that are made once, before the first position.
bool speaksOfSign(const Remark& remark) {
    return says(remark, phrase::kActsOtherWay) || says(remark, phrase::kNegativeForce) ||
           says(remark, phrase::kAssumedAway);
}

// Reactions that are zero for every position of the load are mentioned once.
bool isAlwaysZero(const InfluenceByHand& line, const Step& step) {
    return step.kind == StepKind::ReactionSum && step.found.front().symbol != line.symbol &&
           std::all_of(line.ordinates.begin(), line.ordinates.end(), [&](const auto& ordinate) {
               const auto value = foundValue(ordinate.chain, step.found.front().symbol);
               return !value || *value == 0;
           });
}

// Removes from the chains what the opening says, and every reason given before.
void tidyChains(InfluenceByHand& line) {
    std::vector<std::pair<std::vector<JointId>, JointId>> explained;
    std::vector<Symbol> zero;
    for (const InfluenceOrdinate& ordinate : line.ordinates) {
        for (const Step& step : ordinate.chain.steps) {
            const bool isNew =
                isAlwaysZero(line, step) &&
                std::find(zero.begin(), zero.end(), step.found.front().symbol) == zero.end();
            if (isNew) {
                zero.push_back(step.found.front().symbol);
                line.opening.steps.push_back(step);
            }
        }
    }
    for (InfluenceOrdinate& ordinate : line.ordinates) {
        std::erase_if(ordinate.chain.steps, [&](const Step& step) {
            return step.kind == StepKind::WholeBody || step.kind == StepKind::Counting ||
                   step.kind == StepKind::Geometry ||
                   (step.found.size() == 1 &&
                    std::find(zero.begin(), zero.end(), step.found.front().symbol) != zero.end());
        });
        for (Step& step : ordinate.chain.steps) {
            std::erase_if(step.remarks, speaksOfSign);
            const auto key = std::pair(step.body, step.joint);
            const bool equation = step.kind == StepKind::ReactionMoment ||
                                  step.kind == StepKind::SectionEquation ||
                                  step.kind == StepKind::JointEquation;
            if (equation && std::find(explained.begin(), explained.end(), key) != explained.end()) {
                // The remark with the name of a centre off the truss is kept.
                std::erase_if(step.remarks, [](const Remark& remark) {
                    return !says(remark, phrase::kCentreOffTruss);
                });
            }
            explained.push_back(key);
        }
    }
}

// The slopes that any of the chains uses, in order.
Step geometryOf(const InfluenceByHand& line) {
    Step geometry;
    geometry.kind = StepKind::Geometry;
    for (const InfluenceOrdinate& ordinate : line.ordinates) {
        for (const Step& step : ordinate.chain.steps) {
            for (const AngleLine& angle : step.angles) {
                const bool known =
                    std::any_of(geometry.angles.begin(), geometry.angles.end(),
                                [&](const AngleLine& other) { return other.angle == angle.angle; });
                if (step.kind == StepKind::Geometry && !known) {
                    geometry.angles.push_back(angle);
                    geometry.members.insert(geometry.members.end(), angle.members.begin(),
                                            angle.members.end());
                }
            }
        }
    }
    std::sort(geometry.angles.begin(), geometry.angles.end(),
              [](const AngleLine& a, const AngleLine& b) { return a.angle.index < b.angle.index; });
    return geometry;
}

// Writes the slopes and the cut.
void writeOpening(const Task& task, InfluenceByHand& line) {
    Sheet sheet = makeSheet(task.unloaded, {}, task.shape);
    const Step geometry = geometryOf(line);
    if (!geometry.angles.empty()) {
        sheet.steps.push_back(geometry);
    }
    if (task.way == InfluenceWay::Section) {
        Step step;
        step.kind = StepKind::SectionIntro;
        step.members = cutMembers(sheet, task.part);
        step.body = task.part;
        step.remarks = {remarkThat(phrase::kCutForAll, {{"members", step.members}})};
        sheet.steps.push_back(step);
    }
    line.opening = workingOf(sheet);
}

// Where the slope changes: vertical pieces of a path have no slope of their own.
std::vector<JointId> cornersOf(const std::vector<InfluenceOrdinate>& ordinates) {
    double largest = 0;
    for (const InfluenceOrdinate& ordinate : ordinates) {
        largest = std::max(largest, std::fabs(ordinate.value));
    }
    std::vector<JointId> corners;
    for (std::size_t i = 1; i + 1 < ordinates.size(); ++i) {
        const auto& [before, here, after] =
            std::tie(ordinates[i - 1], ordinates[i], ordinates[i + 1]);
        const double span = after.place - before.place;
        const double share = (here.place - before.place) / span;
        const double straight = before.value + share * (after.value - before.value);
        if (std::fabs(here.value - straight) > kZeroForce * largest) {
            corners.push_back(here.at);
        }
    }
    return corners;
}

InfluenceEnd beginningOf(const Truss& truss, const Effect& effect, Symbol& symbol) {
    const Solution solution = solve(truss);
    if (effect.kind == EffectKind::Displacement) {
        return InfluenceEnd::Displacement;
    }
    if (solution.status != Status::Determinate) {
        return InfluenceEnd::NotByEquilibrium;
    }
    if (effect.kind == EffectKind::MemberForce) {
        symbol = forceSymbol(effect.member);
        return InfluenceEnd::Complete;
    }
    return findReaction(structureOf(truss), effect, symbol);
}

} // namespace

struct InfluenceByHandTask::State {
    const Truss& truss;
    InfluenceByHand line{};
    std::optional<Task> task{}; // set once it has begun
    Truss loaded{};             // for the current position, if that is worked in full:
    Solution solution{};
    std::optional<WorkingTask> whole{};
    std::optional<ExactPathTask> exact{}; // set once all positions are worked

    void begin() {
        line.unloaded = underForces(truss, {});
        line.unloaded.units.force = ForceUnit::Plain;
        line.unloaded.classSettings.carry = CarriedValues::Full;
        line.unloaded.classSettings.form = NumberForm::Exact;       // ordinates are fractions
        line.unloaded.classSettings.senses = AssumedSense::Tension; // one sense for all positions
        line.end = beginningOf(line.unloaded, line.effect, line.symbol);
        task.emplace(Task{line.unloaded, line.path, line.symbol, {}, InfluenceWay::Joints});
        if (line.end == InfluenceEnd::Complete) {
            chooseWay(*task);
            line.way = task->way;
            line.joint = task->way == InfluenceWay::Joint ? task->part.front() : JointId{};
        }
    }
    void add(Working chain) {
        const auto value = foundValue(chain, line.symbol);
        if (!value) {
            line.end = InfluenceEnd::NotWorkedOut;
            return;
        }
        const JointId joint = line.path[line.ordinates.size()];
        const double start = truss.joints[line.path.front().at()].at.x;
        line.ordinates.push_back(
            {joint, std::fabs(truss.joints[joint.at()].at.x - start), std::move(chain), *value});
    }
    void workPlace() {
        if (whole) {
            if (whole->advance()) {
                const Working all = whole->take();
                whole.reset();
                add(explain(loaded, {}, solution, all, line.symbol, task->shape));
            }
            return;
        }
        const JointId joint = line.path[line.ordinates.size()];
        loaded = loadedAt(line.unloaded, {joint});
        if (auto chain = chainFor(*task, loaded, joint)) {
            add(*std::move(chain));
            return;
        }
        solution = solve(loaded);
        whole.emplace(loaded, LoadChoice{}, solution, task->shape);
    }
    void finish() {
        writeOpening(*task, line);
        line.law = reactionLaw(line.unloaded, line);
        tidyChains(line);
        for (const ExactSolution& each : exact->take()) {
            line.exact.push_back(exactEffect(each, line.effect));
        }
        line.corners = cornersOf(line.ordinates);
    }
    bool advance() {
        if (!task) {
            begin();
        } else if (line.ordinates.size() < line.path.size()) {
            workPlace();
        } else if (!exact) {
            exact.emplace(line.unloaded, line.path);
        } else if (exact->advance()) {
            finish();
            return true;
        }
        return line.end != InfluenceEnd::Complete;
    }
};

InfluenceByHandTask::InfluenceByHandTask(const Truss& truss, const std::vector<JointId>& path,
                                         const Effect& effect)
    : state_(new State{truss}) {
    state_->line.effect = effect;
    state_->line.path = path;
}

InfluenceByHandTask::~InfluenceByHandTask() = default;
InfluenceByHandTask::InfluenceByHandTask(InfluenceByHandTask&&) noexcept = default;
InfluenceByHandTask& InfluenceByHandTask::operator=(InfluenceByHandTask&&) noexcept = default;

bool InfluenceByHandTask::advance() { return state_->advance(); }

Progress InfluenceByHandTask::progress() const {
    const std::size_t exact = state_->exact ? state_->exact->progress().done : 0;
    return {state_->line.ordinates.size() + exact, 2 * state_->line.path.size()};
}

InfluenceByHand InfluenceByHandTask::take() { return std::move(state_->line); }

InfluenceByHand influenceByHand(const Truss& truss, const std::vector<JointId>& path,
                                const Effect& effect) {
    InfluenceByHandTask task(truss, path, effect);
    return runToEnd(task).take();
}

} // namespace gusset
