#pragma once
// Which multiple of the loads makes all answers whole. Private to classroom/variants.

#include "classroom/variants/variants.hpp"

#include <cstdint>
#include <optional>

namespace gusset {

// The smallest whole number by which the loads have to be multiplied for friendly answers; none if
// an answer holds a root, or that number is beyond all use.
[[nodiscard]] std::optional<std::int64_t>
friendlyMultiple(const ExactSolution&, const std::vector<MemberId>& asked, int decimals);

// Whether a number that people wrote is a whole multiple of a step.
[[nodiscard]] bool isMultiple(double number, double step);

// Whether the supports share the load equally, so that a reaction guessed by symmetry is right.
[[nodiscard]] bool sharesEqually(const Truss&, const ExactSolution&);

} // namespace gusset
