#pragma once
// Trusses of the usual forms under loads of every kind.

#include "support/random.hpp"

#include "model/truss/truss.hpp"

#include <cstdint>

namespace gusset::support {

// Loads of every kind: at joints, at both supports, between joints, along a chord; often the same
// on both sides.
void addLoadsOfEveryKind(Truss&, Random&);
[[nodiscard]] Truss usualForm(std::uint64_t seed); // under such loads

} // namespace gusset::support
