#include "statics/equilibrium/structure.hpp"

#include "statics/equilibrium/bar_properties.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

Bar barOf(const Structure& structure, const Member& member) {
    Bar bar;
    bar.a = member.a.index;
    bar.b = member.b.index;
    const Vec2 run = structure.joints[member.b.at()] - structure.joints[member.a.at()];
    bar.length = length(run);
    bar.along = {run.x / bar.length, run.y / bar.length};
    return bar;
}

void addRestraints(const Truss& truss, int index, Structure& structure) {
    const Support& support = truss.supports[static_cast<std::size_t>(index)];
    const double toSi = toMetre(truss.units.displacement);
    Restraint restraint;
    restraint.support = SupportId{index};
    restraint.joint = support.joint;
    if (support.kind == SupportKind::Roller) {
        restraint.along = directionOf(support.reaction);
        restraint.settle = support.settleAlong * toSi;
        structure.restraints.push_back(restraint);
        return;
    }
    restraint.along = {1, 0};
    restraint.settle = support.settle.x * toSi;
    structure.restraints.push_back(restraint);
    restraint.along = {0, 1};
    restraint.settle = support.settle.y * toSi;
    structure.restraints.push_back(restraint);
}

} // namespace

Structure structureOf(const Truss& truss) {
    Structure structure;
    const double toSi = toMetre(truss.units.length);
    structure.joints.reserve(truss.joints.size());
    structure.bars.reserve(truss.members.size());
    for (const Joint& joint : truss.joints) {
        structure.joints.push_back(toSi * joint.at);
    }
    for (const Member& member : truss.members) {
        structure.bars.push_back(barOf(structure, member));
    }
    addBarProperties(truss, structure);
    for (std::size_t i = 0; i < truss.supports.size(); ++i) {
        addRestraints(truss, static_cast<int>(i), structure);
    }
    const Extent box = extent(truss);
    structure.extent = toSi * std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    return structure;
}

bool hasStrains(const Structure& structure) {
    return std::any_of(structure.bars.begin(), structure.bars.end(),
                       [](const Bar& bar) { return bar.strain != 0; }) ||
           std::any_of(structure.restraints.begin(), structure.restraints.end(),
                       [](const Restraint& restraint) { return restraint.settle != 0; });
}

Structure withoutStrains(Structure structure) {
    for (Bar& bar : structure.bars) {
        bar.strain = 0;
    }
    for (Restraint& restraint : structure.restraints) {
        restraint.settle = 0;
    }
    return structure;
}

bool hasLoad(const std::vector<Vec2>& loads) {
    return std::any_of(loads.begin(), loads.end(), [](Vec2 load) { return load != Vec2{}; });
}

double largestComponent(const std::vector<Vec2>& vectors) {
    double largest = 0;
    for (const Vec2 v : vectors) {
        largest = std::max({largest, std::abs(v.x), std::abs(v.y)});
    }
    return largest;
}

} // namespace gusset
