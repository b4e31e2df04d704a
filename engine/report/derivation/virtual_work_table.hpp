#pragma once
// What all tables of virtual work have in common, whatever the method.

#include "hand/virtual_work/unit_load.hpp"
#include "report/formula/notation.hpp"
#include "report/results/table.hpp"

#include <initializer_list>

namespace gusset {

// Of a sum, and of what is added up in it, in a class that counts decimals: as many figures as a
// slide rule gives.
inline constexpr int kSumFigures = 4;
// A sum: with the figures of the class; zero as a plain 0.
[[nodiscard]] std::string sumText(double, const NumberStyle&);
// A part of a sum, with the decimals that all of its parts have; zero as a plain 0.
[[nodiscard]] std::string shareText(double, int decimals, const NumberStyle&);
// " ≈ 1.42 − 2.78 = −1.36": the parts that are not zero, and what the printed ones add up to.
void addPrintedSum(Formula&, const std::vector<double>& parts, int decimals, const NumberStyle&);
// A force under a unit load or a unit redundant: four decimals.
[[nodiscard]] std::string unitForce(double, const NumberStyle&);
// EA: six significant figures at most, as the inputs are known no better.
[[nodiscard]] std::string stiffnessText(double, const NumberStyle&);
// n·N·L: the names with dots between them.
[[nodiscard]] Formula product(std::initializer_list<Token>);
[[nodiscard]] Token overStiffness();   // L/EA
[[nodiscard]] Formula thermalGrowth(); // α·ΔT·L
// Δ stands before what is given (ΔL, ΔT, the settlement Δ of a support), and δ is what is sought.
[[nodiscard]] Token misfitGrowth(); // ΔL
[[nodiscard]] Token settledToken(); // Δ

// For the supports that move; r is the name of a column, `decimals` those of the last one.
[[nodiscard]] TextTable settlementTable(const Notation&, const std::vector<SettlementRow>&,
                                        const Token& r, int decimals);

} // namespace gusset
