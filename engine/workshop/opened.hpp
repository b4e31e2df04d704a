#pragma once
// A truss, its groups and what there is to choose from. Private to workshop.

#include "core/phrase.hpp"
#include "model/truss/truss.hpp"

#include <string>
#include <vector>

namespace gusset {

// To open it on the board; empty if it is too large for a link.
[[nodiscard]] std::string linkOrNothing(const Truss&);

// With what is to be said of how it came.
[[nodiscard]] std::string openReply(const PhraseBook&, const Truss&,
                                    const std::vector<std::string>& notes = {});

} // namespace gusset
