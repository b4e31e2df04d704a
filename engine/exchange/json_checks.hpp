#pragma once
// Checks of members as JSON, in the model's units, numbers to 12 significant digits.

#include "core/outcome.hpp"
#include "design/member_checks.hpp"

#include <string>
#include <vector>

namespace gusset {

// `caution`: sentences for people, in the language of the caller's choice. Never left out. Notes
// are, where there are none.
[[nodiscard]] std::string writeChecks(const Truss&, const MemberChecks&,
                                      const std::vector<std::string>& caution,
                                      const Issues& notes = {});

} // namespace gusset
