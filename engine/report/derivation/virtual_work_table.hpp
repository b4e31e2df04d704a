#pragma once
// What all tables of virtual work have in common, whatever the method.

#include "hand/virtual_work/unit_load.hpp"
#include "report/formula/notation.hpp"
#include "report/results/table.hpp"

#include <initializer_list>

namespace gusset {

// A member's contribution to a sum: four significant figures; zero as a plain 0.
[[nodiscard]] std::string contribution(double, const NumberStyle&);
// A force under a unit load or a unit redundant: four decimals.
[[nodiscard]] std::string unitForce(double, const NumberStyle&);
// EA: six significant figures at most, as the inputs are known no better.
[[nodiscard]] std::string stiffnessText(double, const NumberStyle&);
// n·N·L: the names with dots between them.
[[nodiscard]] Formula product(std::initializer_list<Token>);
[[nodiscard]] Token overStiffness(); // L/EA

// For the supports that move; r and settle are the column names.
[[nodiscard]] TextTable settlementTable(const Notation&, const std::vector<SettlementRow>&,
                                        const Token& r, const Token& settle);

} // namespace gusset
