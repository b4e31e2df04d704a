#pragma once
// How large and how long anything in a model may be.

#include <cstddef>

namespace gusset {

// Numbers outside ±kLargestNumber are refused: their squares must stay finite.
inline constexpr double kLargestNumber = 1e100;

// Of materials and sections, whose products and quotients must stay numbers too.
inline constexpr double kSmallestSize = 1e-30;
inline constexpr double kLargestSize = 1e30;

inline constexpr std::size_t kLongestLabel = 40;  // characters of a label, an id, a case
inline constexpr std::size_t kLongestTitle = 200; // characters
inline constexpr std::size_t kMostIssues = 20;    // that are told at once, errors and notes apart
inline constexpr int kMostDigits = 12;            // of a class's numbers

} // namespace gusset
