#pragma once
// Sections on demand: a member named, or a cut drawn across the truss. The working goes from the
// reactions straight to the cut, and holds nothing that the answer doesn't rest on.

#include "hand/paper/working.hpp"

#include <memory>

namespace gusset {

struct Shape; // hand/paper/shape.hpp

// One member's force by one section: moments about the point where the other cut members meet, or a
// sum of forces where these are parallel. Where there is no such section, or no working at all, the
// working is not complete and its one step says why. What follows from joints and members alone may
// come from another working of the same.
[[nodiscard]] Working workSection(const Truss&, const LoadChoice&, const Solution&, MemberId,
                                  std::shared_ptr<Shape> = {});

// All members that this cut can give, by the side with fewer forces. Not complete, with a step that
// says why and which other cut would do, when the members don't cut the truss in two, or when no
// equation holds one of them alone.
[[nodiscard]] Working workCut(const Truss&, const LoadChoice&, const Solution&,
                              const std::vector<MemberId>& cut);

} // namespace gusset
