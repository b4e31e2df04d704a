#pragma once
// Combinations of load cases, written out from what the cases stand for.
//
// EN 1990:2002 with A1:2005, 6.4.3.2 and 6.5.3, with table A1.2(B): persistent situations, each
// variable action leading in turn, permanent actions unfavourable and favourable. ASCE 7-16, 2.3.1
// and 2.4.1. Wind cases are alternatives of each other, and so are snow cases; imposed loads of
// roofs (category H) do not act with snow or wind (EN 1991-1-1:2002, 3.3.2(1)). Accidents,
// earthquakes, temperature and fatigue are not covered.

#include "core/outcome.hpp"
#include "core/phrase.hpp"
#include "design/loading/actions.hpp"

#include <string>
#include <vector>

namespace gusset {

enum class CombinationRule { En610, En610ab, AsceLrfd, AsceAsd };

struct NationalFactors { // in place of ruleOf(action).psi
    CaseKind action = CaseKind::Snow;
    CombinationFactors psi{};
};

struct CombinationWish {
    CombinationRule rule = CombinationRule::En610;
    // EN 1990:2002, table A1.2(B), recommended values:
    double permanentUp = 1.35;
    double permanentDown = 1.0; // permanent actions that are favourable
    double variable = 1.5;
    double xi = 0.85; // of 6.10b
    std::vector<NationalFactors> national{};
    bool service = true; // also those of serviceability: 6.14b, 6.15b and 6.16b
};

struct CombinationsMade {
    std::vector<Combination> combinations;
    std::vector<std::string> leftOut; // cases of no known kind
    int repeats = 0;                  // with the same factors as another, written once
};

// Fails if no case has a kind, on factors that are no positive numbers, and on more than
// kMostCombinations. Ids are numbered, in the language of the book.
inline constexpr std::size_t kMostCombinations = 300;
[[nodiscard]] Outcome<CombinationsMade> combinationsOf(const PhraseBook&, const Truss&,
                                                       const CombinationWish&);

// For each of the truss's combinations, whether it gives the greatest tension or compression of any
// member over all combinations of its limit state. One that gives none is covered by the others.
// Fails as envelopeOf does.
[[nodiscard]] Outcome<std::vector<bool>> governing(const Truss&);

} // namespace gusset
