#pragma once
// Envelopes: the greatest forces of each member.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kEnvelopeCaption = "Greatest tension and compression of each member"_phrase;
inline constexpr auto kEnvelopeUnder =
    "Greatest tension and compression of each member under {load}"_phrase;
inline constexpr auto kEnvelopeOver =
    "Greatest tension and compression of each member under the cases {choices}, each alone."_phrase;
inline constexpr auto kEnvelopeOfCombinations =
    "Greatest tension and compression of each member under the combinations {choices}."_phrase;
inline constexpr auto kEnvelopeOfOneCombination =
    "Tension and compression of each member under {combination}, the only combination."_phrase;
inline constexpr auto kEnvelopeOfOne =
    "An envelope gives the greatest tension and the greatest compression of each member over several cases or combinations. Here all loads act together, so there is nothing to choose from. Under Model, give each load a case, such as dead or wind, and add combinations of the cases; this page then shows which of them is worst for each member."_phrase;
inline constexpr auto kAxleOn = "{axle} on {joint} {way}"_phrase;
inline constexpr auto kPlacedFromTo = "{from} to {to}"_phrase;
inline constexpr auto kPlacedWorst = "worst place"_phrase;
inline constexpr auto kAxleExplained =
    "2 on D →: axle 2 stands on joint D, the load facing right."_phrase;
inline constexpr auto kEnvelopeHeading = "Envelope"_phrase;

} // namespace gusset::phrase
