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
// for a truss with too many joints to be read, or with none. Marks of a member belong to its
// number, those of a support to the number of its first restraint, counted on from the members.
[[nodiscard]] std::optional<Sketch> givenFigure(const Notation&,
                                                const std::vector<MemberId>& asked);
// With every force as it acts, "16.67 C" at a member. Nothing likewise.
[[nodiscard]] std::optional<Sketch> answerFigure(const Notation&, const FinalForces&);

// A figure for a sheet, with every value on it in letters that stay readable when it is scaled down
// to the sheet's width.
struct FullFigure {
    Sketch sketch;
    bool numbered = false; // members carry numbers, from 1 in the order of the model, as their
                           // forces have no room
    bool complete = true;  // all that belongs to it has room
};
// With supports, loads and dimensions. Nothing for a truss that is not drawn, likewise.
// The height of the space is that of the truss alone.
[[nodiscard]] std::optional<FullFigure> loadsFigure(const Notation&, const FigureSpace&);
[[nodiscard]] std::optional<FullFigure> forcesFigure(const Notation&, const FinalForces&,
                                                     const FigureSpace&);

} // namespace gusset
