#pragma once
// What a link asks to look at, behind its model: `&case=<name>` or `&combination=<id>`.

#include "statics/equilibrium/structure.hpp"

#include <string>
#include <string_view>

namespace gusset {

// Empty for all loads.
[[nodiscard]] std::string linkTailOf(const LoadChoice&);

struct LinkTail {
    std::string_view model; // the fragment before it
    LoadChoice loads;       // as asked for, decoded; whether there is such a case is not known here
};
// `fragment` begins with "m=" or "j=".
[[nodiscard]] LinkTail withoutTail(std::string_view fragment);

} // namespace gusset
