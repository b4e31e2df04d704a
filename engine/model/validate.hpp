#pragma once
// What is wrong with a model (errors: it can't be computed) and what its author should know of it
// (notes).

#include "core/outcome.hpp"
#include "model/truss.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

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

struct Findings {
    Issues errors;
    Issues notes;
};

// Errors: names empty, too long, twice, or such that nobody can see them or tell them apart;
// references to nothing; zero-length and double members; numbers that are not finite; words without
// meaning. Notes: joints on one spot, members that cross or run through a joint, joints without a
// member, names that are drawn alike in letters of several alphabets, and what leftOut() says.
[[nodiscard]] Findings validate(const Truss&);

// What the model holds that has no part in results: absentCases(), and what this version reads,
// keeps and does not compute, one note a kind.
[[nodiscard]] Issues leftOut(const Truss&);
// Factors of combinations for cases in which there is no load.
[[nodiscard]] Issues absentCases(const Truss&);

// What is wrong with a name (label, id, case, title) as such, as the end of a sentence: "is longer
// than 40 characters". Nothing when it will do.
[[nodiscard]] std::optional<std::string> faultOfName(std::string_view name, std::size_t longest);

} // namespace gusset
