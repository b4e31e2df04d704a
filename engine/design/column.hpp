#pragma once
// The strength of a straight member in axial compression: Euler's critical force; EN
// 1993-1-1:2005, 6.3.1; ANSI/AISC 360-16, chapter E3; of timber EN 1995-1-1:2004, 6.3.2. All cover
// flexural buckling only. Any consistent units: every stress in one unit, every length in one.

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

struct TimberReduction { // EN 1995-1-1:2004, 6.3.2
    double relative = 0; // λ_rel = λ/π · √(f_c,0,k / E_0,05), (6.21)
    double k = 0;        // (1 + β_c (λ_rel − 0.3) + λ_rel²) / 2, (6.27)
    double kc = 1; // 1 / (k + √(k² − λ_rel²)), (6.25); 1 up to λ_rel = 0.3, by (2) there
};
[[nodiscard]] TimberReduction timberReduction(double betaC, double relativeSlenderness);

// λ of two pieces tied together at distances `spacing`, each with the least radius `single`: AISC
// 360-16, (E6-2), connectors welded or with pretensioned bolts; angles back to back, K_i = 0.5.
[[nodiscard]] double slendernessOfPair(double slenderness, double spacing, double single);

} // namespace gusset
