#pragma once
// Limits on sizes and lengths in a model.

#include <cstddef>

namespace gusset {

// Numbers outside ±kLargestNumber are refused: their squares must stay finite.
inline constexpr double kLargestNumber = 1e100;

// For materials and sections, whose products and quotients must also stay finite.
inline constexpr double kSmallestSize = 1e-30;
inline constexpr double kLargestSize = 1e30;

inline constexpr std::size_t kLongestLabel = 40;  // characters of a label, an id, a case
inline constexpr std::size_t kLongestTitle = 200; // characters
inline constexpr std::size_t kMostIssues = 20;    // reported at once, errors and notes separately
inline constexpr int kMostDigits = 12;            // in a class's numbers

} // namespace gusset
