// Sections, strains and loads of random trusses; see random_truss.hpp.
#include "support/random.hpp"
#include "support/trusses/random_truss.hpp"

namespace gusset::support {

Truss withSections(Truss truss, std::uint64_t seed) {
    Random random(seed);
    truss.materials.push_back({"steel", 210e3, {}, 7850, 1.2e-5, {}});
    truss.sections.push_back({"light", "steel", 400, {}, "", {}, {}});
    truss.sections.push_back({"heavy", "steel", 1500, {}, "", {}, {}});
    truss.sections.push_back({"tube", "steel", {}, {}, "chs", {{"D", 60.3}, {"t", 3.2}}, {}});
    for (Member& member : truss.members) {
        member.section = random.pick(truss.sections).id;
    }
    return truss;
}

void addRandomStrains(Truss& truss, std::uint64_t seed) {
    Random random(seed);
    for (Member& member : truss.members) {
        if (random.oneIn(4)) {
            member.warming = random.integer(-30, 40);
        }
        if (random.oneIn(4)) {
            member.misfit = random.decimal(-3, 3, 2);
        }
    }
    Support& support = truss.supports[static_cast<std::size_t>(
        random.integer(0, static_cast<int>(truss.supports.size()) - 1))];
    if (support.kind == SupportKind::Roller) {
        support.settleAlong = random.decimal(-10, 10, 2);
    } else {
        support.settle = {0, random.decimal(-10, 10, 2)};
    }
}

void addRandomLoads(Truss& truss, std::uint64_t seed) {
    Random random(seed);
    for (int i = random.integer(1, 4); i > 0; --i) {
        const JointId joint = JointId{random.integer(0, static_cast<int>(truss.joints.size()) - 1)};
        const double size = random.decimal(1, 20, 2);
        const double sideways = random.oneIn(2) ? 0 : random.decimal(-10, 10, 2);
        Load load;
        if (random.oneIn(5)) {
            load.what = AngledForce{joint, size, 5.0 * random.integer(0, 71)};
        } else {
            load.what = JointForce{joint, sideways, -size};
        }
        truss.loads.push_back(load);
    }
}

} // namespace gusset::support
