#pragma once
// The position of a part of a truss, as used to name the part considered.

#include "model/truss/truss.hpp"

#include <vector>

namespace gusset {

enum class TrussSide { Left, Right, Upper, Lower, None };
// The side where all of the part lies, clear of all the rest; none if there is no such side.
[[nodiscard]] TrussSide sideOf(const Truss&, const std::vector<JointId>& part);

} // namespace gusset
