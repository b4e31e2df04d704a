#include "hand/virtual_work/virtual_work.hpp"

#include <cassert>

namespace gusset {

namespace {

double expansionOf(const Truss& truss, const Member& member) {
    for (const Section& section : truss.sections) {
        for (const Material& material : truss.materials) {
            if (section.id == member.section && material.id == section.material) {
                return material.alpha.value_or(0);
            }
        }
    }
    return 0;
}

} // namespace

MemberGrowth growthOf(const Truss& truss, const Structure& structure, MemberId member) {
    const Bar& bar = structure.bars[member.at()];
    const double displacementUnit = toMetre(truss.units.displacement);
    MemberGrowth growth;
    growth.length = length(memberVector(truss, member));
    growth.stiffness = bar.stiffness / toNewton(truss.units.force);
    if (growth.stiffness > 0) {
        growth.flexibility = bar.length / growth.stiffness / displacementUnit;
    }
    growth.warming = truss.members[member.at()].warming;
    growth.alpha = growth.warming != 0 ? expansionOf(truss, truss.members[member.at()]) : 0;
    growth.misfit = truss.members[member.at()].misfit;
    growth.thermal = bar.strain / displacementUnit - growth.misfit;
    if (std::fabs(growth.thermal) <= kZeroForce * std::fabs(growth.misfit)) {
        growth.thermal = 0; // rounding error of that difference
    }
    return growth;
}

FoundForces forcesOf(const Working& working) {
    assert(working.complete);
    FoundForces forces;
    for (const Found& found : working.steps.back().found) {
        (found.symbol.kind == SymbolKind::Reaction ? forces.restraints : forces.members)
            .push_back(found.value);
    }
    return forces;
}

Truss underForces(const Truss& truss, const std::vector<Vec2>& forces) {
    Truss loaded = withoutStrains(truss);
    loaded.loads.clear();
    loaded.combinations.clear();
    loaded.moving.clear();
    for (std::size_t i = 0; i < forces.size(); ++i) {
        if (forces[i] != Vec2{}) {
            Load load;
            load.what = JointForce{{static_cast<int>(i)}, forces[i].x, forces[i].y};
            loaded.loads.push_back(load);
        }
    }
    return loaded;
}

Truss withoutStrains(Truss truss) {
    for (Member& member : truss.members) {
        member.warming = 0;
        member.misfit = 0;
    }
    for (Support& support : truss.supports) {
        support.settle = {};
        support.settleAlong = 0;
    }
    return truss;
}

Truss strainedAs(const Truss& truss, const LoadChoice& choice) {
    return isOneCase(choice) ? withoutStrains(truss) : truss;
}

} // namespace gusset
