#pragma once
// The loads that a link asks to show, after its model: `&case=<name>` or `&combination=<id>`.

#include "statics/equilibrium/structure.hpp"

#include <string>
#include <string_view>

namespace gusset {

// Empty for all loads.
[[nodiscard]] std::string linkTailOf(const LoadChoice&);

struct LinkTail {
    std::string_view model; // the fragment before it
    LoadChoice loads;       // as asked for, decoded; not checked against the model
};
// `fragment` begins with "m=" or "j=".
[[nodiscard]] LinkTail withoutTail(std::string_view fragment);

} // namespace gusset
