#pragma once
// Small systems of equations, solved as a student does. Private to classroom/marking.

#include <cstddef>
#include <vector>

namespace gusset {

using Rows = std::vector<std::vector<double>>;
// Turns the first columns, as many as there are rows, into the unit matrix; false if they have no
// inverse.
[[nodiscard]] bool eliminate(Rows&);
[[nodiscard]] std::size_t rankOf(Rows);

} // namespace gusset
