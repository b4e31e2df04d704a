#pragma once
// What is wrong with a model (errors: it can't be computed) and what its author should know of it
// (notes).

#include "core/outcome.hpp"
#include "model/truss.hpp"

namespace gusset {

// Numbers outside ±kLargestNumber are refused: their squares must stay finite.
inline constexpr double kLargestNumber = 1e100;

struct Findings {
    Issues errors;
    Issues notes;
};

// Errors: labels empty, too long or twice; references to nothing; zero-length and double members;
// numbers that are not finite; words without meaning. Notes: joints on one spot, members that
// cross, joints without a member, and what is kept but left out of account.
[[nodiscard]] Findings validate(const Truss&);

} // namespace gusset
