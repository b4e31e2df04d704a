#pragma once
// Members as they are named on the command line: A-B by the labels of their joints.

#include "core/outcome.hpp"
#include "model/truss.hpp"

#include <string_view>
#include <vector>

namespace gusset::cli {

// "A-B", either way round; labels may hold hyphens themselves.
[[nodiscard]] Outcome<MemberId> memberNamed(const Truss&, std::string_view name);
// "A-B,C-D"
[[nodiscard]] Outcome<std::vector<MemberId>> membersNamed(const Truss&, std::string_view names);

} // namespace gusset::cli
