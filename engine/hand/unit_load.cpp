#include "hand/unit_load.hpp"

#include "core/tolerance.hpp"

#include <cassert>
#include <cmath>

namespace gusset {
namespace {

// Nothing but the unit load: settlement, warming and misfit of a determinate truss make no force.
Truss underUnitLoad(const Truss& truss, JointId joint, DisplacementAxis axis) {
    Truss unit = truss;
    const bool level = axis == DisplacementAxis::X;
    Load load;
    load.what = JointForce{joint, level ? 1.0 : 0.0, level ? 0.0 : 1.0};
    unit.loads = {load};
    unit.combinations.clear();
    unit.units.force = ForceUnit::Plain;
    for (Member& member : unit.members) {
        member.warming = 0;
        member.misfit = 0;
    }
    return unit;
}

struct FoundForces {
    std::vector<double> members;
    std::vector<double> restraints;
};

// What a complete working ends with.
FoundForces forcesOf(const Working& working) {
    assert(working.complete);
    FoundForces forces;
    for (const Found& found : working.steps.back().found) {
        (found.symbol.kind == SymbolKind::Reaction ? forces.restraints : forces.members)
            .push_back(found.value);
    }
    return forces;
}

UnitLoadRow rowOf(const Truss& truss, const Structure& structure, MemberId member) {
    const Bar& bar = structure.bars[member.at()];
    UnitLoadRow row;
    row.member = member;
    row.length = length(memberVector(truss, member));
    row.stiffness = bar.stiffness / toNewton(truss.units.force);
    return row;
}

void fillRow(const Truss& truss, const Structure& structure, UnitLoadRow& row) {
    const Bar& bar = structure.bars[row.member.at()];
    const double displacementUnit = toMetre(truss.units.displacement);
    const double misfit = truss.members[row.member.at()].misfit; // displacement units
    if (row.stiffness > 0) {
        row.elastic = row.unit * row.force * bar.length / row.stiffness / displacementUnit;
    }
    row.thermal = row.unit * (bar.strain / displacementUnit - misfit);
    row.misfit = row.unit * misfit;
}

// Adds up a column; terms that cancel to working accuracy come to zero.
template <class Row, class Column>
double totalOf(const std::vector<Row>& rows, Column column) {
    double sum = 0;
    double size = 0;
    for (const Row& row : rows) {
        sum += column(row);
        size += std::fabs(column(row));
    }
    return std::fabs(sum) <= kZeroForce * size ? 0 : sum;
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
        UnitLoadRow row = rowOf(truss, structure, {static_cast<int>(i)});
        row.force = real.members[i];
        row.unit = unit.members[i];
        fillRow(truss, structure, row);
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
    addRows(truss, structureOf(truss), forcesOf(real), table);
    table.complete = table.missing.empty();
    return table;
}

} // namespace gusset
