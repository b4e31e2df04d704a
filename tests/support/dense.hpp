#pragma once
// The equilibrium matrix of a truss and its inverse by the plainest dense elimination: an
// independent check that shares no code with the engine. Rows: ΣF_x and ΣF_y of each joint;
// columns: member forces (tension positive), then the scalar reactions (a pin's x and y, a roller's
// along its direction).

#include "model/truss/truss.hpp"

#include <optional>
#include <vector>

namespace gusset::support {

using DenseMatrix = std::vector<std::vector<double>>; // rows

[[nodiscard]] DenseMatrix denseEquilibrium(const Truss&);

// Gauss–Jordan with row pivoting. None if the matrix is not square or a pivot is below 1e-6.
[[nodiscard]] std::optional<DenseMatrix> denseInverse(DenseMatrix);

[[nodiscard]] double largestEntry(const DenseMatrix&);

} // namespace gusset::support
