#pragma once
// Whether a load can move along a path of joints.

#include "core/outcome.hpp"
#include "model/truss/truss.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

class MemberIndex;

// What prevents a load from moving along the path: consecutive joints that no member connects, or a
// path that turns back or runs vertically, so that a place on it has no unique abscissa. `at` is
// the place of the path.
[[nodiscard]] std::optional<Issue> faultOfPath(const Truss&, const MemberIndex&,
                                               const std::vector<JointId>& path,
                                               const std::string& at);

// The faults in the paths of moving loads. These are not errors: the user may redraw a member and
// keep the path.
[[nodiscard]] Issues pathNotes(const Truss&);

} // namespace gusset
