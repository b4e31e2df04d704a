#pragma once
// What a model asks of students.

#include "classroom/exercise/exercise.hpp"
#include "cli/arguments.hpp"
#include "core/outcome.hpp"

#include <string>

namespace gusset::cli {

// Its exercise; of a model without one, all reactions and all member forces.
[[nodiscard]] Outcome<Exercise> askedOf(const Truss&);

// A link to the page of exercises, at the address given by --address; only a fragment if there is
// none.
[[nodiscard]] std::string exerciseAddress(const Arguments&, const std::string& link);

} // namespace gusset::cli
