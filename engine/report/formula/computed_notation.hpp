#pragma once
// Numbers that a working computes on the way, between its equations and its answers: the factors
// and right-hand sides of equations that are solved together.

#include "report/formula/notation.hpp"

namespace gusset {

struct ComputedNumber {
    Formula tokens;
    bool inFull = true; // nothing was rounded off
};
// Of a Coefficient or an Amount: as a fraction or root where the class writes exact numbers and
// the working has them; else a coefficient as in tables and an amount as a force.
[[nodiscard]] ComputedNumber computedNumber(const Notation&, const Factor&);
// Whether the terms show all their computed numbers in full.
[[nodiscard]] bool areInFull(const Notation&, const std::vector<Term>&);

[[nodiscard]] bool isInFull(const Notation&, const NumberLine&);

// 3 · (1) − 4 · (2):  5 F_BC = −108
[[nodiscard]] Formula numberLineFormula(const Notation&, const NumberLine&);
// F_BC = 5 − 0.6 X ≈ −21.60 kN (compression): a result, and what gives it.
[[nodiscard]] Formula resultBy(const Notation&, const Found&, const std::vector<Term>& by);
// α + β ≈ 77.09°
[[nodiscard]] Formula turnedFormula(const Notation&, const TurnedAngle&);

} // namespace gusset
