#pragma once
// What the names in a printed working refer to, by the conventions that the class chose: F_AB, AB
// or S_1; A_x and A_y along the axes, and R_A otherwise.

#include "statics/solve/solution.hpp"

#include <map>
#include <string>

namespace gusset::support {

struct Truth {
    double value = 0; // the solver's, in the model's force units; tension positive
    Vec2 along{};     // the direction of a reaction; null for a member
};
// Fewer entries than forces and reactions if two of them have the same name.
[[nodiscard]] std::map<std::string, Truth> printedTruths(const Truss&, const Solution&);

// The sizes of the loads on the joints by their names, P_A, or P_Ax and P_Ay; class units.
[[nodiscard]] std::map<std::string, double> printedLoads(const Truss&);

} // namespace gusset::support
