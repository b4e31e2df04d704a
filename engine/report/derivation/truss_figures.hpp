#pragma once
// The whole truss in two figures: as it is given, and with all that was found.

#include "report/formula/notation.hpp"
#include "report/sketch/sketch.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct FinalForces {               // force units
    std::vector<double> members;   // in the order of the model
    std::vector<double> reactions; // in the order of the restraints
};
// Those that a working finds; nothing if it is not complete.
[[nodiscard]] std::optional<FinalForces> finalForces(const Notation&);

// With supports, loads and dimensions, and the members that are asked for in another ink. Nothing
// for a truss with too many joints to be read, or with none.
[[nodiscard]] std::optional<Sketch> givenFigure(const Notation&,
                                                const std::vector<MemberId>& asked);
// With every force as it acts, "16.67 C" at a member. Nothing likewise.
[[nodiscard]] std::optional<Sketch> answerFigure(const Notation&, const FinalForces&);

} // namespace gusset
