#pragma once
// Why a force or a reaction has its value: only those steps on which it rests.

#include "hand/paper/working.hpp"

#include <memory>
#include <vector>

namespace gusset {

struct Shape; // hand/paper/shape.hpp

// Of a working, the steps on which these symbols rest, in their order, without check and summary.
// They read complete by themselves: how unknown forces are drawn and what a negative one means is
// said at the first of them, wherever the whole says it.
[[nodiscard]] Working stepsFor(const Working&, const std::vector<Symbol>&);

// The shorter of two chains: by joints (as in the whole working), or by one section. Where the
// working does not reach the symbol, the whole of it, which says why. Precondition: the solution is
// solve(truss, choice)'s.
[[nodiscard]] Working explain(const Truss&, const LoadChoice&, const Solution&, const Symbol&);
// The same from the working of the whole, where that is there, and with the shape of that.
[[nodiscard]] Working explain(const Truss&, const LoadChoice&, const Solution&,
                              const Working& whole, const Symbol&, std::shared_ptr<Shape> = {});

} // namespace gusset
