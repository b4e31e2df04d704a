#pragma once
// Checks of members as JSON, in the model's units, numbers to 12 significant digits.

#include "core/outcome.hpp"
#include "design/member_checks.hpp"

#include <string>
#include <vector>

namespace gusset {

// Sentences for people, in the language of the caller's choice. The caution is always written;
// warnings about the forces, and notes, are left out if there are none.
struct CheckSentences {
    std::vector<std::string> caution;
    std::vector<std::string> warnings{};
};
[[nodiscard]] std::string writeChecks(const PhraseBook&, const Truss&, const MemberChecks&,
                                      const CheckSentences&, const Issues& notes = {});

} // namespace gusset
