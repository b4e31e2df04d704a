#pragma once
// The code of a variant, which tells the sheets of a series apart: on paper, in its link, and in
// what is handed in.

#include "classroom/exercise/exercise.hpp"

#include <string>

namespace gusset {

// Five letters or digits that can't be taken for one another; within a series no two are the same.
// Empty for an exercise that is no variant.
[[nodiscard]] std::string variantCode(const Exercise&);

} // namespace gusset
