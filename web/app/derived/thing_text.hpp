#pragma once
// A picked thing in words: for the strip above the tools, and for a screen reader.

#include "app/derived/derived.hpp"
#include "app/state/thing.hpp"

#include <string>

namespace gusset {

[[nodiscard]] std::string thingTitle(const AppState&, const ThingId&); // "Pin at A"
[[nodiscard]] std::string memberLength(const Truss&, MemberId);
// "24.75 kN tension"; empty if the truss has no forces.
[[nodiscard]] std::string memberForce(const AppState&, const Derived&, MemberId);
// The title, the values, and what the thing carries, for those who can't see it.
[[nodiscard]] std::string thingHeard(const AppState&, const Derived&, const ThingId&);

} // namespace gusset
