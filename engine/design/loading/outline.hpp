#pragma once
// The outline of a truss: its form with its sizes, the distance between trusses, and the loads as
// they come. A truss is made from it, and can be made anew from another one while nobody touched
// its joints.

#include "design/loading/combinations.hpp"
#include "design/loading/roof_loads.hpp"
#include "model/forms/forms.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

struct OutlineLoad {
    RoofLoad load{};
    std::string kind{}; // of its case: a word of design/loading/actions, or empty
    LoadedChord on = LoadedChord::Upper;
};

struct Outline {
    FormSpec form{}; // without its own loads
    double spacing = 1;
    std::vector<OutlineLoad> loads{};
    std::string selfWeight{};              // the case that it is added to, or empty
    std::optional<CombinationWish> rule{}; // of the combinations, if there are to be any
};

// With loads, kinds of cases and combinations. Fails as layForm and combinationsOf do, on a spacing
// or a load that is no number of reasonable size, and on snow, permanent and imposed loads that
// would lift the roof.
[[nodiscard]] Outcome<Truss> trussOf(const PhraseBook&, const Outline&);

// The shares of each load, in the order of the outline: what the joints get can be checked by hand.
// Precondition: trussOf succeeds.
[[nodiscard]] std::vector<std::vector<ChordShare>> sharesOf(const PhraseBook&, const Outline&);

// Whether a truss still has the joints, members and supports that the outline gives.
[[nodiscard]] bool isUntouched(const PhraseBook&, const Truss&, const Outline&);
// Whether it is untouched, and every load that the outline gives still stands; there may be others.
[[nodiscard]] bool carriesLoadsOf(const PhraseBook&, const Truss&, const Outline&);

} // namespace gusset
