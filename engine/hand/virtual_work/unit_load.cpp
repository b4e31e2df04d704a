#include "hand/virtual_work/unit_load.hpp"

#include "hand/stages/work_out.hpp"
#include "hand/virtual_work/virtual_work.hpp"

#include <cassert>
#include <optional>

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
    row.elastic = unit * force * growth.flexibility;
    row.thermal = unit * growth.thermal;
    row.misfit = unit * growth.misfit;
    return row;
}

void addTotals(UnitLoadTable& table) {
    table.elastic = totalOf(table.rows, [](const UnitLoadRow& row) { return row.elastic; });
    table.thermal = totalOf(table.rows, [](const UnitLoadRow& row) { return row.thermal; });
    table.misfit = totalOf(table.rows, [](const UnitLoadRow& row) { return row.misfit; });
    table.settlement =
        totalOf(table.settlements, [](const SettlementRow& row) { return row.contribution; });
    const std::vector<double> all{table.elastic, table.thermal, table.misfit, table.settlement};
    table.total = totalOf(all, [](double part) { return part; });
}

void addRows(const Truss& truss, const Structure& structure, const FoundForces& real,
             UnitLoadTable& table) {
    const FoundForces unit = forcesOf(table.unitWorking);
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const MemberId member{static_cast<int>(i)};
        const UnitLoadRow row =
            rowOf(member, growthOf(truss, structure, member), real.members[i], unit.members[i]);
        if (row.stiffness <= 0 && row.unit != 0 && row.force != 0) {
            table.missing.push_back(row.member);
        }
        table.rows.push_back(row);
    }
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        SettlementRow row{{static_cast<int>(i)}, unit.restraints[i], 0, 0};
        row.settle = structure.restraints[i].settle / toMetre(truss.units.displacement);
        if (row.settle != 0) {
            row.contribution = -row.unit * row.settle;
            table.settlements.push_back(row);
        }
    }
    addTotals(table);
}

} // namespace

struct UnitLoadTask::State {
    const Truss& truss;
    LoadChoice choice;
    UnitLoadTable table{};
    WorkingTask atWork; // for the real loads, then for the unit load
    std::optional<Working> real{};
    std::size_t forces = 0; // found for the first column

    bool advance() {
        if (!atWork.advance()) {
            return false;
        }
        if (!real) {
            forces = atWork.progress().done;
            real = atWork.take();
            atWork = WorkingTask(table.unitTruss, {}, solve(table.unitTruss));
            return false;
        }
        table.unitWorking = atWork.take();
        table.complete = real->complete && table.unitWorking.complete;
        if (table.complete) {
            const Truss strained = strainedAs(truss, choice);
            addRows(strained, structureOf(strained), forcesOf(*real), table);
            table.complete = table.missing.empty();
        }
        return true;
    }
};

UnitLoadTask::UnitLoadTask(const Truss& truss, const LoadChoice& choice, const Solution& solution,
                           JointId joint, DisplacementAxis axis)
    : state_(new State{
          .truss = truss, .choice = choice, .atWork = WorkingTask(truss, choice, solution)}) {
    assert(joint.valid() && joint.at() < truss.joints.size());
    state_->table.joint = joint;
    state_->table.axis = axis;
    state_->table.unitTruss = underUnitLoad(truss, joint, axis);
}

UnitLoadTask::~UnitLoadTask() = default;
UnitLoadTask::UnitLoadTask(UnitLoadTask&&) noexcept = default;
UnitLoadTask& UnitLoadTask::operator=(UnitLoadTask&&) noexcept = default;

bool UnitLoadTask::advance() { return state_->advance(); }

Progress UnitLoadTask::progress() const {
    const Progress now = state_->atWork.progress();
    return {state_->forces + now.done, 2 * now.all};
}

UnitLoadTable UnitLoadTask::take() { return std::move(state_->table); }

UnitLoadTable unitLoadTable(const Truss& truss, const LoadChoice& choice, const Solution& solution,
                            JointId joint, DisplacementAxis axis) {
    UnitLoadTask task(truss, choice, solution, joint, axis);
    return runToEnd(task).take();
}

} // namespace gusset
