#pragma once
// The check of one member as a person writes it: what is given, each formula with its numbers and
// its result, which check governs, and the caution.

#include "design/member_checks.hpp"
#include "report/derivation/passage.hpp"
#include "report/text/phrases.hpp"

namespace gusset {

[[nodiscard]] std::vector<Passage> checkPassages(const PhraseBook&, const Truss&,
                                                 const MemberCheck&);

} // namespace gusset
