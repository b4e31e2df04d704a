#include "hand/unit_load.hpp"

#include "hand/virtual_work.hpp"

#include <cassert>

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
        SettlementRow row{static_cast<int>(i), unit.restraints[i], 0, 0};
        row.settle = structure.restraints[i].settle / toMetre(truss.units.displacement);
        if (row.settle != 0) {
            row.contribution = -row.unit * row.settle;
            table.settlements.push_back(row);
        }
    }
    addTotals(table);
}

} // namespace

UnitLoadTable unitLoadTable(const Truss& truss, const LoadChoice& choice, const Solution& solution,
                            JointId joint, DisplacementAxis axis) {
    assert(joint.valid() && joint.at() < truss.joints.size());
    UnitLoadTable table;
    table.joint = joint;
    table.axis = axis;
    const Working real = workOut(truss, choice, solution);
    table.unitTruss = underUnitLoad(truss, joint, axis);
    table.unitWorking = workOut(table.unitTruss, {}, solve(table.unitTruss));
    if (!real.complete || !table.unitWorking.complete) {
        return table;
    }
    const Truss strained = strainedAs(truss, choice);
    addRows(strained, structureOf(strained), forcesOf(real), table);
    table.complete = table.missing.empty();
    return table;
}

} // namespace gusset
