#pragma once
// What members are made of, as far as the model says, in SI.

#include "model/truss/truss.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct MemberMake {
    std::optional<double> area;     // m²
    std::optional<double> radius;   // m, radius of gyration about the weak axis
    std::optional<double> modulus;  // Pa
    std::optional<double> strength; // Pa
    // Whether the formulas of steel standards apply: not a timber section, and E between 180 and
    // 220 GPa, as for all structural steels. If stresses have no unit, E is not checked.
    bool steel = false;
};

[[nodiscard]] std::vector<MemberMake> makesOf(const Truss&); // one per member

} // namespace gusset
