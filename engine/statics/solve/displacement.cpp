#include "statics/solve/displacement.hpp"

namespace gusset {

std::vector<double> elongationsOf(const Structure& structure, const std::vector<double>& forces) {
    std::vector<double> elongations;
    elongations.reserve(structure.bars.size());
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        const double elastic = bar.stiffness > 0 ? forces[i] * bar.length / bar.stiffness : 0;
        elongations.push_back(elastic + bar.strain);
    }
    return elongations;
}

std::vector<Vec2> displacementsOf(const Structure& structure, const Equilibrium& equilibrium,
                                  const std::vector<double>& elongations) {
    // A bar's column pulls its joints together, so vᵀ·A is its shortening.
    std::vector<double> right;
    right.reserve(equilibrium.factors.columns);
    for (double elongation : elongations) {
        right.push_back(-elongation);
    }
    for (const Restraint& restraint : structure.restraints) {
        right.push_back(restraint.settle);
    }
    const std::vector<double> rows = solveTransposed(equilibrium.factors, right);
    std::vector<Vec2> displacements;
    displacements.reserve(structure.joints.size());
    for (std::size_t i = 0; i + 1 < rows.size(); i += 2) {
        displacements.push_back({rows[i], rows[i + 1]});
    }
    return displacements;
}

double strainEnergyOf(const Structure& structure, const std::vector<double>& forces) {
    double energy = 0;
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        if (bar.stiffness > 0) {
            energy += forces[i] * forces[i] * bar.length / (2 * bar.stiffness);
        }
    }
    return energy;
}

} // namespace gusset
