#pragma once
// The equations of the force method. Private to report/. i and k count from 0.

#include "report/derivation/force_method_tables.hpp"

namespace gusset {

// δ_10 = Σ n_1·N_0·L/EA + Σ n_1·α·ΔT·L − … ≈ −2.964 mm, with the separate parts in between if there
// are several.
[[nodiscard]] Formula givenDisplacementFormula(const ForceMethodNotes&, std::size_t i);
// δ_12 = δ_21 = Σ n_1·n_2·L/EA ≈ 0.1234 mm/kN
[[nodiscard]] Formula unitDisplacementFormula(const ForceMethodNotes&, std::size_t i,
                                              std::size_t k);
// δ_10 + X_1·δ_11 + X_2·δ_12 = 0:  −2.964 + X_1·0.1234 + X_2·0.02 = 0
[[nodiscard]] Formula conditionFormula(const ForceMethodNotes&, std::size_t i);
// X_1 = F_BD ≈ 2.71 kN (tension)
[[nodiscard]] Formula redundantFormula(const ForceMethodNotes&, std::size_t i);

} // namespace gusset
