#pragma once
// What a model asks of students.

#include "classroom/exercise/exercise.hpp"
#include "core/outcome.hpp"

#include <vector>

namespace gusset::cli {

[[nodiscard]] std::vector<MemberId> allMembers(const Truss&);
// Its exercise; of a model without one, all reactions and all member forces.
[[nodiscard]] Outcome<Exercise> askedOf(const Truss&);

} // namespace gusset::cli
