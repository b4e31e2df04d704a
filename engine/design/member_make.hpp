#pragma once
// What members are made of, as far as the model tells, in SI.

#include "model/truss/truss.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct MemberMake {
    std::optional<double> area;     // m²
    std::optional<double> radius;   // m, radius of gyration about the weak axis
    std::optional<double> modulus;  // Pa
    std::optional<double> strength; // Pa
    // Whether the formulas of steel standards are for it: no timber section, and E between 180 and
    // 220 GPa, which all structural steels have. Plain numbers are taken at their author's word.
    bool steel = false;
};

[[nodiscard]] std::vector<MemberMake> makesOf(const Truss&); // a member each

} // namespace gusset
