#pragma once
// Lines become a truss: ends within a tolerance become one joint, an end on another line makes a
// joint there, and lines that merely cross do not. Whatever was decided, and whatever is doubtful,
// is told.

#include "exchange/drawings/lines_found.hpp"
#include "model/truss/truss.hpp"

namespace gusset {

struct Traced {
    Truss truss; // joints and members alone; valid
    Issues notes;
};

// The same truss whatever the order of the lines: joints from left to right, and upwards where one
// stands above another; members in the order of their joints. Drawings in mm and cm become metres.
// Fails if there are no lines, or too many, or if the tolerance or the width leaves none.
[[nodiscard]] Outcome<Traced> trussOfLines(const LinesFound&, const DrawingWishes&);

// What is said of tables too: which unit was taken, that it is unlikely, what is still missing.
void tellUnit(const std::optional<LengthUnit>& stated, const std::optional<LengthUnit>& typed,
              LengthUnit otherwise, Issues&);
void tellUnlikelySize(const Truss&, Issues&);
void tellNoSupports(Issues&);
inline constexpr LengthUnit kUnstatedUnit = LengthUnit::m;
// In which a truss is kept that was drawn in another unit: metres for mm and cm.
[[nodiscard]] LengthUnit keptUnit(LengthUnit);

} // namespace gusset
