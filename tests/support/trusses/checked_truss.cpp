#include "support/trusses/checked_truss.hpp"

#include "support/random.hpp"
#include "support/trusses/small_truss.hpp"

namespace gusset::support {

Truss steelGable() {
    Truss truss = gable();
    truss.materials.push_back({"steel", 210e3, 235, 7850, 1.2e-5, {}});
    truss.sections.push_back({"bar", "steel", 1000, 25, "", {}, {}});
    for (Member& member : truss.members) {
        member.section = "bar";
    }
    return truss;
}

Truss withChecks(Truss truss, std::uint64_t seed) {
    Random random(seed);
    for (Material& material : truss.materials) {
        material.strength = random.integer(200, 460);
    }
    for (Section& section : truss.sections) {
        if (section.shape.empty()) {
            section.radius = random.integer(12, 60);
        }
    }
    truss.checks.formula = static_cast<ColumnFormula>(seed % 3);
    truss.checks.curve = static_cast<BucklingCurve>(random.integer(0, 4));
    truss.checks.safety = static_cast<AiscSafety>(random.integer(0, 1));
    truss.checks.effectiveLength = random.decimal(0.5, 1.5, 10);
    return truss;
}

} // namespace gusset::support
