#pragma once
// The profiles of each group by their weight.

#include "design/sizing/sizing.hpp"

#include <vector>

namespace gusset {

struct Weighed {
    Section section;
    double weight = 0; // kg/m
};
using WeighedList = std::vector<Weighed>; // from the lightest

// Fails as lightest() does.
[[nodiscard]] Outcome<std::vector<WeighedList>> listsOf(const Truss&, const SizingWish&);
// In place of a section of the same id, or as one more.
void putSection(Truss&, const Section&);

} // namespace gusset
