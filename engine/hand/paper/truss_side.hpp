#pragma once
// Where a part of a truss lies, as one says of the part that is looked at.

#include "model/truss/truss.hpp"

#include <vector>

namespace gusset {

enum class TrussSide { Left, Right, Upper, Lower, None };
// The side on which all of the part lies, beside all the rest; none if there is no such side.
[[nodiscard]] TrussSide sideOf(const Truss&, const std::vector<JointId>& part);

} // namespace gusset
