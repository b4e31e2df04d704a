#pragma once
// The pieces that a truss falls into. Private to exchange/drawings.

#include "model/truss/truss.hpp"

#include <vector>

namespace gusset {

struct TrussPart {
    JointId joint;   // the first of it
    int members = 0; // at least one: a joint by itself is no part
};

[[nodiscard]] std::vector<TrussPart> partsOf(const Truss&);

} // namespace gusset
