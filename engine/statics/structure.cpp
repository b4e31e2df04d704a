#include "statics/structure.hpp"

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

std::string caseOf(const Load& load) { return load.caseId.empty() ? kDefaultCase : load.caseId; }

// Every span between two joints of the chord is a simple beam: half its load goes to each end.
void addChordLoad(const Truss& truss, const ChordLoad& load, double factor,
                  std::vector<Vec2>& loads) {
    const double newtonsPerUnit = factor * toNewton(truss.units.force);
    for (std::size_t i = 0; i + 1 < load.chord.size(); ++i) {
        const JointId a = load.chord[i];
        const JointId b = load.chord[i + 1];
        const double span = std::abs(truss.joints[b.at()].at.x - truss.joints[a.at()].at.x);
        const double half = load.perLength * span / 2 * newtonsPerUnit;
        loads[a.at()].y += half;
        loads[b.at()].y += half;
    }
}

} // namespace

Structure structureOf(const Truss& truss) {
    Structure structure;
    const double toSi = toMetre(truss.units.length);
    for (const Joint& joint : truss.joints)
        structure.joints.push_back(toSi * joint.at);
    for (const Member& member : truss.members)
        structure.bars.push_back(barOf(structure, member));
    for (std::size_t i = 0; i < truss.supports.size(); ++i)
        addRestraints(truss, static_cast<int>(i), structure);
    const Extent box = extent(truss);
    structure.extent = toSi * std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    return structure;
}

std::vector<std::string> caseNames(const Truss& truss) {
    std::vector<std::string> names;
    for (const Load& load : truss.loads)
        if (std::find(names.begin(), names.end(), caseOf(load)) == names.end())
            names.push_back(caseOf(load));
    return names;
}

double caseFactor(const Truss& truss, const LoadChoice& choice, const Load& load) {
    if (!choice.combinationId.empty()) {
        for (const Combination& combination : truss.combinations) {
            if (combination.id != choice.combinationId)
                continue;
            for (const auto& [name, factor] : combination.factors)
                if (name == caseOf(load))
                    return factor;
        }
        return 0;
    }
    return choice.caseId.empty() || choice.caseId == caseOf(load) ? 1 : 0;
}

std::vector<Vec2> jointLoads(const Truss& truss, const LoadChoice& choice) {
    std::vector<Vec2> loads(truss.joints.size());
    for (const Load& load : truss.loads) {
        const double factor = caseFactor(truss, choice, load);
        if (factor == 0)
            continue;
        if (const auto* chord = std::get_if<ChordLoad>(&load.what))
            addChordLoad(truss, *chord, factor, loads);
        const std::optional<Vec2> force = forceOf(load);
        if (!force)
            continue;
        Vec2& sum = loads[jointOf(load).at()];
        sum = sum + factor * toNewton(truss.units.force) * *force;
    }
    return loads;
}

} // namespace gusset
