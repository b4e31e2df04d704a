#pragma once
// The check of one member written out as by hand: what is given, each formula with its numbers and
// its result, which check governs, and the caution.

#include "design/member_checks.hpp"
#include "report/derivation/passage.hpp"
#include "report/text/writer.hpp"

namespace gusset {

[[nodiscard]] std::vector<Passage> checkPassages(const Writer&, const MemberCheck&);

} // namespace gusset
