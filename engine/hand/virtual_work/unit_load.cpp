#include "hand/virtual_work/unit_load.hpp"

#include "hand/stages/work_out.hpp"
#include "hand/virtual_work/release.hpp"
#include "hand/virtual_work/virtual_work.hpp"

#include <cassert>
#include <optional>
#include <utility>

namespace gusset {
namespace {

Truss underUnitLoad(const Truss& truss, JointId joint, DisplacementAxis axis) {
    std::vector<Vec2> forces(truss.joints.size());
    forces[joint.at()] = axis == DisplacementAxis::X ? Vec2{1, 0} : Vec2{0, 1};
    Truss unit = underForces(truss, forces);
    unit.units.force = ForceUnit::Plain;
    return unit;
}

UnitLoadRow rowOf(MemberId member, const MemberGrowth& growth, double force, double unit) {
    UnitLoadRow row;
    row.member = member;
    row.force = force;
    row.unit = unit;
    row.length = growth.length;
    row.stiffness = growth.stiffness;
    row.alpha = growth.alpha;
    row.warming = growth.warming;
    row.elastic = force * growth.flexibility;
    row.thermal = growth.thermal;
    row.misfit = growth.misfit;
    const std::vector<double> parts{row.elastic, row.thermal, row.misfit};
    row.growth = totalOf(parts, [](double part) { return part; });
    row.work = unit * row.growth;
    return row;
}

void addTotals(UnitLoadTable& table) {
    table.members = totalOf(table.rows, [](const UnitLoadRow& row) { return row.work; });
    table.settlement =
        totalOf(table.settlements, [](const SettlementRow& row) { return row.contribution; });
    const std::vector<double> both{table.members, table.settlement};
    table.total = totalOf(both, [](double part) { return part; });
}

// `unit`: of the whole truss.
void addRows(const Truss& truss, const Structure& structure, const std::vector<double>& real,
             const FoundForces& unit, UnitLoadTable& table) {
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const MemberId member{static_cast<int>(i)};
        const UnitLoadRow row =
            rowOf(member, growthOf(truss, structure, member), real[i], unit.members[i]);
        if (row.stiffness <= 0 && row.unit != 0 && row.force != 0) {
            table.missing.push_back(row.member);
        }
        table.rows.push_back(row);
    }
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        SettlementRow row{{static_cast<int>(i)}, unit.restraints[i], 0, 0};
        row.settle = structure.restraints[i].settle / toMetre(truss.units.displacement);
        if (row.settle != 0 && row.unit != 0) {
            row.contribution = -row.unit * row.settle;
            table.settlements.push_back(row);
        }
    }
    addTotals(table);
}

std::vector<double> finalForcesOf(const ForceMethod& method) {
    std::vector<double> forces;
    for (const ForceMethodRow& row : method.rows) {
        forces.push_back(row.force);
    }
    return forces;
}

} // namespace

// First N, by equilibrium or by the force method; then n.
struct UnitLoadTask::State {
    const Truss& truss;
    LoadChoice choice;
    Truss strained{};
    UnitLoadTable table{};
    std::optional<ForceMethodTask> method{};
    std::optional<WorkingTask> atWork{};
    bool hasReal = false;
    std::vector<double> real{}; // N of each member
    std::size_t forces = 0;     // found for the first column

    void beginUnit(const Truss& carries) {
        hasReal = true;
        table.unitTruss = underUnitLoad(carries, table.joint, table.axis);
        atWork.emplace(table.unitTruss, LoadChoice{}, solve(table.unitTruss));
    }
    // False when there are no forces N.
    bool takeMethod() {
        table.method = method->take();
        if (table.method->end != ForceMethodEnd::Complete) {
            return false;
        }
        method.reset();
        real = finalForcesOf(*table.method);
        beginUnit(releasedTruss(strained, structureOf(strained), table.method->releases));
        return true;
    }
    bool takeReal() {
        forces = atWork->progress().done;
        const Working working = atWork->take();
        if (!working.complete) {
            return false;
        }
        real = forcesOf(working).members;
        beginUnit(truss);
        return true;
    }
    void takeUnit() {
        table.unitWorking = atWork->take();
        table.complete = table.unitWorking.complete;
        if (table.complete) {
            const Structure structure = structureOf(strained);
            const auto releases = table.method ? table.method->releases : std::vector<Release>{};
            addRows(strained, structure, real,
                    forcesOfWhole(structure, releases, forcesOf(table.unitWorking), nullptr),
                    table);
            table.complete = table.missing.empty();
        }
    }
    bool advance() {
        if (method) {
            return method->advance() && !takeMethod();
        }
        if (!atWork->advance()) {
            return false;
        }
        if (!hasReal) {
            return !takeReal();
        }
        takeUnit();
        return true;
    }
};

UnitLoadTask::UnitLoadTask(const Truss& truss, const LoadChoice& choice, const Solution& solution,
                           JointId joint, DisplacementAxis axis)
    : state_(new State{.truss = truss, .choice = choice, .strained = strainedAs(truss, choice)}) {
    assert(joint.valid() && joint.at() < truss.joints.size());
    state_->table.joint = joint;
    state_->table.axis = axis;
    if (solution.status == Status::Indeterminate) {
        state_->method.emplace(truss, choice, solution);
    } else {
        state_->atWork.emplace(truss, choice, solution);
    }
}

UnitLoadTask::~UnitLoadTask() = default;
UnitLoadTask::UnitLoadTask(UnitLoadTask&&) noexcept = default;
UnitLoadTask& UnitLoadTask::operator=(UnitLoadTask&&) noexcept = default;

bool UnitLoadTask::advance() { return state_->advance(); }

Progress UnitLoadTask::progress() const {
    if (state_->method) {
        return state_->method->progress();
    }
    const Progress now = state_->atWork->progress();
    return {state_->forces + now.done, 2 * now.all};
}

UnitLoadTable UnitLoadTask::take() { return std::move(state_->table); }

UnitLoadTable unitLoadTable(const Truss& truss, const LoadChoice& choice, const Solution& solution,
                            JointId joint, DisplacementAxis axis) {
    UnitLoadTask task(truss, choice, solution, joint, axis);
    return runToEnd(task).take();
}

} // namespace gusset
