#pragma once
// Sections on request: for a given member, or a cut drawn across the truss. The working goes from
// the reactions straight to the cut, and holds only what the answer depends on.

#include "hand/paper/working.hpp"

#include <memory>

namespace gusset {

struct Shape; // hand/paper/shape.hpp

// One member's force by one section: moments about the point where the other cut members meet, or a
// sum of forces where these are parallel. If there is no such section, or no working at all, the
// working is not complete and its one step says why. The shape may be shared with another working
// that has the same joints and members.
[[nodiscard]] Working workSection(const Truss&, const LoadChoice&, const Solution&, MemberId,
                                  std::shared_ptr<Shape> = {});

// All members that this cut can give, from the side with fewer forces. When the members don't cut
// the truss in two, or no equation holds one of them alone, the working is not complete and has a
// step that says why and which other cut would work.
[[nodiscard]] Working workCut(const Truss&, const LoadChoice&, const Solution&,
                              const std::vector<MemberId>& cut);

} // namespace gusset
