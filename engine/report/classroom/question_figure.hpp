#pragma once
// The truss of an exercise as a figure, with nothing in it that is to be found.

#include "classroom/exercise/exercise.hpp"
#include "hand/paper/working.hpp"
#include "report/sketch/sketch.hpp"
#include "report/text/writer.hpp"

#include <optional>
#include <vector>

namespace gusset {

// That of a truss that was not solved, with its loads: nothing that is found can get out of it.
[[nodiscard]] Working workingOfNothing(const Truss&, const LoadChoice&);

// Supports, dimensions, and the loads of this choice; the members that are asked for, unless all
// are, in another ink. Nothing for a truss with too many joints to be read, or with none.
[[nodiscard]] std::optional<Sketch> questionFigure(const Writer&, const LoadChoice&,
                                                   const std::vector<Question>&);

} // namespace gusset
