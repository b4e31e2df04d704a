#pragma once
// The strength of a straight member in axial compression, by three methods: Euler's critical force;
// EN 1993-1-1:2005, 6.3.1; ANSI/AISC 360-16, chapter E3. All cover flexural buckling only. Any
// consistent units: every stress in one unit, every length in one.

#include "model/truss/check_settings.hpp"

namespace gusset {

// π²·E/λ²: Euler's critical stress, AISC's F_e.
[[nodiscard]] double elasticStress(double modulus, double slenderness);

struct BucklingReduction {   // EN 1993-1-1:2005, 6.3.1.2
    double relative = 0;     // λ̄ = √(f_y / σ_cr)
    double imperfection = 0; // α of the curve, table 6.1
    double phi = 0;          // Φ = (1 + α (λ̄ − 0.2) + λ̄²) / 2
    double chi = 1; // χ = 1 / (Φ + √(Φ² − λ̄²)) ≤ 1; χ = 1 up to λ̄ = 0.2, by (4) there
};
[[nodiscard]] double imperfectionOf(BucklingCurve);
[[nodiscard]] BucklingReduction bucklingReduction(BucklingCurve, double relativeSlenderness);

struct CriticalStress {   // AISC 360-16, E3
    bool elastic = false; // F_y / F_e > 2.25: F_cr = 0.877 F_e; else 0.658^(F_y/F_e) F_y
    double stress = 0;
};
[[nodiscard]] CriticalStress criticalStress(double yield, double elasticStress);

} // namespace gusset
