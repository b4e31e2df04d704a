#pragma once
// What a student's equations give, and what they give with a slip in them.

#include "support/classroom/student.hpp"

#include <optional>
#include <vector>

namespace gusset::support {

inline constexpr double kFlat = 1e-9;           // of unit vectors and lengths: only rounding error
using Table = std::vector<std::vector<double>>; // share of each pull in each row

// The unknowns among the pulls, by as many rows; none if these do not determine them well.
[[nodiscard]] std::optional<Result> solved(const std::vector<Pull>&, const Table&);
// All slips that could be made at a step, into its list.
void listSlips(const std::vector<Pull>&, const std::vector<Row>&, const Structure&, StudentStep&);

} // namespace gusset::support
