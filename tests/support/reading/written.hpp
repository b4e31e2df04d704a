#pragma once
// Helpers for tests that look into workings: the working of a truss, and its text.

#include "hand/paper/working.hpp"
#include "model/truss/truss.hpp"

#include <string>

namespace gusset::support {

[[nodiscard]] Working workingOf(const Truss&);
[[nodiscard]] std::string textOf(const Truss&);        // of that working, in English
[[nodiscard]] std::string resultsTextOf(const Truss&); // solved, in English
[[nodiscard]] bool contains(const std::string& text, const std::string& part);
// The member "A-B"; none if there is no such member.
[[nodiscard]] MemberId memberNamed(const Truss&, const std::string& name);

} // namespace gusset::support
