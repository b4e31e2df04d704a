#pragma once
// Long parallel-chord trusses on a pin and a roller, for timing and for tests at size.

#include "model/truss/truss.hpp"

#include <vector>

namespace gusset::support {

enum class Web {
    Pratt,  // posts and one diagonal per panel: 4·panels + 1 members
    Warren, // triangles without posts: 4·panels − 1 members
    Double, // posts and both diagonals: 5·panels + 1 members, indeterminate to the degree `panels`
};

// Bottom joints B0 …, top joints T0 …; panels of 3 m, 3 m high; 10 kN down on every inner bottom
// joint. Precondition: panels ≥ 1.
[[nodiscard]] Truss stripTruss(Web, int panels);

// The number of panels that gives at least this many members.
[[nodiscard]] int panelsFor(Web, int members);

// Its bottom joints in order.
[[nodiscard]] std::vector<JointId> bottomChord(const Truss&, int panels);

// Six panels of 3 m, 3 m high, with a cart of two axles of 10 kN, 3 m apart, on its bottom chord.
[[nodiscard]] Truss stripWithCart();

} // namespace gusset::support
