#pragma once
// What the tables of virtual work share (unit load, force method): each member's elongation, and
// the forces at the end of a working. Private to hand/.

#include "hand/paper/working.hpp"

#include "core/tolerance.hpp"

#include <cmath>
#include <vector>

namespace gusset {

// For one member, in the model's units.
struct MemberGrowth {
    double length = 0;      // L, length units
    double stiffness = 0;   // EA, force units; 0 if the model does not give it
    double flexibility = 0; // L/EA, displacement units per force unit; 0 likewise
    double alpha = 0;       // α, per K; 0 if the model does not give it
    double warming = 0;     // ΔT, K
    double thermal = 0;     // α·ΔT·L, displacement units
    double misfit = 0;      // ΔL, made too long, displacement units
};
[[nodiscard]] MemberGrowth growthOf(const Truss&, const Structure&, MemberId);

// From a complete working: forces by member, reactions by restraint, force units.
struct FoundForces {
    std::vector<double> members;
    std::vector<double> restraints;
};
[[nodiscard]] FoundForces forcesOf(const Working&);

// The truss with only these forces on its joints, one per joint, and nothing else that strains it:
// settlement, temperature and misfit cause no forces in a statically determinate truss.
[[nodiscard]] Truss underForces(const Truss&, const std::vector<Vec2>& forces);
[[nodiscard]] Truss withoutStrains(Truss);
// A single case is its loads alone; settlement, temperature and misfit act when all cases act
// together, or in a combination.
[[nodiscard]] Truss strainedAs(const Truss&, const LoadChoice&);

// The total of a column; terms that cancel to working accuracy give zero.
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
