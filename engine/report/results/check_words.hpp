#pragma once
// Words that rows and sentences about checks share.

#include "design/member_checks.hpp"
#include "report/text/writer.hpp"

#include <vector>

namespace gusset {

[[nodiscard]] RichLine givenNumber(const Truss&, double); // as it was typed
[[nodiscard]] RichLine lacksText(const PhraseBook&,
                                 const std::vector<Lack>&); // "area and strength"

} // namespace gusset
