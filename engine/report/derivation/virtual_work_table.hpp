#pragma once
// What the tables of virtual work have in common, whichever method they belong to.

#include "hand/virtual_work/unit_load.hpp"
#include "report/formula/notation.hpp"
#include "report/results/table.hpp"

#include <initializer_list>

namespace gusset {

// What a member adds to a sum: four significant figures; 0 alone.
[[nodiscard]] std::string contribution(double, const NumberStyle&);
// A force under a unit load or a unit redundant: four decimals.
[[nodiscard]] std::string unitForce(double, const NumberStyle&);
// EA: six significant figures at most; what it is computed from is known no better.
[[nodiscard]] std::string stiffnessText(double, const NumberStyle&);
// n·N·L: the names with dots between.
[[nodiscard]] Formula product(std::initializer_list<Token>);
[[nodiscard]] Token overStiffness(); // L/EA

// Of the supports that move; r and settle are the names of the columns.
[[nodiscard]] TextTable settlementTable(const Notation&, const std::vector<SettlementRow>&,
                                        const Token& r, const Token& settle);

} // namespace gusset
