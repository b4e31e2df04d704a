#pragma once
// Reads the printed slopes of a working: tan α = 1.5/2, α = 36.87°, sin α = 0.6, …

#include "support/reading/formula_value.hpp"

#include "model/truss/truss.hpp"

#include <string>
#include <vector>

namespace gusset::support {

// The names of the members, or of the reaction, to which a sentence assigns the next slope.
[[nodiscard]] std::vector<std::string> slopingIn(const std::string& sentence);

// An objection to a line of slopes of the members or the reaction `of`, or empty: every value in it
// must agree with the truss. The sines and cosines that it gives are added to the names.
[[nodiscard]] std::string objectionToSlope(const Formula&, const std::vector<std::string>& of,
                                           const Truss&, Names&);

} // namespace gusset::support
