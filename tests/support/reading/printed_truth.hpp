#pragma once
// What the names in a printed working stand for, by the conventions that the class chose: F_AB, AB
// or S_1; A_x and A_y along the axes and R_A else.

#include "statics/solve/solution.hpp"

#include <map>
#include <string>

namespace gusset::support {

struct Truth {
    double value = 0; // the solver's, in the model's force units; tension positive
    Vec2 along{};     // of a reaction, in which it acts; null for a member
};
// Fewer than there are forces and reactions when two of them have one name.
[[nodiscard]] std::map<std::string, Truth> printedTruths(const Truss&, const Solution&);

} // namespace gusset::support
