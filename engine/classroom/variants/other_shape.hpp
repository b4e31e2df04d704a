#pragma once
// Other lengths and another rise for the same form. Private to classroom/variants.

#include "classroom/variants/dice.hpp"
#include "classroom/variants/variants.hpp"

#include <optional>

namespace gusset {

// The lengths of one axis: equal ones change alike.
struct AxisGaps {
    std::vector<double> places; // distinct coordinates, in order
    std::vector<int> place;     // of each joint
    std::vector<int> kind;      // of each gap between places
    std::vector<double> gaps;   // of each kind
    double grid = 1;            // new coordinates are multiples of this: a power of ten
};
struct Gaps {
    AxisGaps x;
    AxisGaps y;
};
[[nodiscard]] Gaps gapsOf(const Truss&);

// One throw: most are of no use, and are told apart quickly. `needed`: whether each member must
// have a rational length.
[[nodiscard]] std::optional<Truss> otherShape(const Truss&, const Gaps&, const VariantWishes&,
                                              const std::vector<bool>& needed, Dice&);

} // namespace gusset
