#pragma once
// Why a force or a reaction has its value: only the steps that it depends on.

#include "hand/paper/working.hpp"

#include <memory>
#include <vector>

namespace gusset {

struct Shape; // hand/paper/shape.hpp

// The steps of a working that these symbols depend on, in order, without check and summary. They
// are complete by themselves: how unknown forces are drawn and what a negative one means is said at
// the first step that needs it, wherever the whole working says it.
[[nodiscard]] Working stepsFor(const Working&, const std::vector<Symbol>&);

// The shorter of two chains: by joints (as in the whole working), or by one section. If the working
// does not reach the symbol, all of it, which says why. Precondition: the solution is solve(truss,
// choice)'s.
[[nodiscard]] Working explain(const Truss&, const LoadChoice&, const Solution&, const Symbol&);
// The same from an existing working of the whole truss, with that working's shape.
[[nodiscard]] Working explain(const Truss&, const LoadChoice&, const Solution&,
                              const Working& whole, const Symbol&, std::shared_ptr<Shape> = {});

} // namespace gusset
