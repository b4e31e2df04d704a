#pragma once
// What the tables of virtual work share (unit load, force method): how much each member grows, and
// the forces that a working ends with. Private to hand/.

#include "hand/paper/working.hpp"

#include "core/tolerance.hpp"

#include <cmath>
#include <vector>

namespace gusset {

// Of one member, in the model's units.
struct MemberGrowth {
    double length = 0;      // L, length units
    double stiffness = 0;   // EA, force units; 0 where the model does not tell
    double flexibility = 0; // L/EA, displacement units per force unit; 0 likewise
    double thermal = 0;     // α·ΔT·L, displacement units
    double misfit = 0;      // made too long, displacement units
};
[[nodiscard]] MemberGrowth growthOf(const Truss&, const Structure&, MemberId);

// Of a complete working: its forces by members, its reactions by restraints, force units.
struct FoundForces {
    std::vector<double> members;
    std::vector<double> restraints;
};
[[nodiscard]] FoundForces forcesOf(const Working&);

// The truss with only these forces on its joints, a joint each, and nothing else that could strain
// it: settlement, warming and misfit of a determinate truss make no force.
[[nodiscard]] Truss underForces(const Truss&, const std::vector<Vec2>& forces);
[[nodiscard]] Truss withoutStrains(Truss);
// A case alone is its loads alone; settlement, warming and misfit act where all acts together.
[[nodiscard]] Truss strainedAs(const Truss&, const LoadChoice&);

// Adds up a column; terms that cancel to working accuracy come to zero.
template <class Row, class Column>
[[nodiscard]] double totalOf(const std::vector<Row>& rows, Column column) {
    double sum = 0;
    double size = 0;
    for (const Row& row : rows) {
        sum += column(row);
        size += std::fabs(column(row));
    }
    return std::fabs(sum) <= kZeroForce * size ? 0 : sum;
}

} // namespace gusset
