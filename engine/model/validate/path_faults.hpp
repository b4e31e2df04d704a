#pragma once
// Whether a load can move along a path of joints.

#include "core/outcome.hpp"
#include "model/truss/truss.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

class MemberIndex;

// What hinders a load on its way along the path: joints that no member joins, or a path that turns
// back or climbs upright, so that no place on it has one abscissa. `at` is the place of the path.
[[nodiscard]] std::optional<Issue> faultOfPath(const Truss&, const MemberIndex&,
                                               const std::vector<JointId>& path,
                                               const std::string& at);

// The faults of the paths of moving loads. Not errors: a member may be redrawn under a path that is
// to stay.
[[nodiscard]] Issues pathNotes(const Truss&);

} // namespace gusset
