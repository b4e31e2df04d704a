#pragma once
// By which slips a sheet can have come about: all ways, each tried out on a student. A test says by
// this, and before marking is asked, whether a slip can be told from others.

#include "support/classroom/student.hpp"

#include <set>
#include <vector>

namespace gusset::support {

// Where two slips give the same at one step, the name is that of what is seen: a nought or equal
// reactions; a wrong sense or a turned reaction before a sign. An arm, which may be any joint's,
// and then digits, which may be any two, only where nothing else gives it.
[[nodiscard]] bool outranks(SlipKind, SlipKind other);

// Sets of at most `most` slips that give these values, rounded to kWrittenFigures, each sorted. The
// student has not begun. A value that follows from others is taken as found so.
using SlipSets = std::set<std::vector<SlipKind>>;
[[nodiscard]] SlipSets waysTo(const std::vector<double>& written, const Student&, std::size_t most);

} // namespace gusset::support
