#pragma once
// Kinds of profiles in the catalogue.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kKindIPE = "IPE sections"_phrase;
inline constexpr auto kKindHEA = "HEA sections"_phrase;
inline constexpr auto kKindHEB = "HEB sections"_phrase;
inline constexpr auto kKindUPE = "UPE channels"_phrase;
inline constexpr auto kKindUPN = "UPN channels"_phrase;
inline constexpr auto kKindAnglesEqual = "equal angles"_phrase;
inline constexpr auto kKindAnglesUnequal = "unequal angles"_phrase;
inline constexpr auto kKindDoubleAngles = "double angles, 10 mm apart"_phrase;
inline constexpr auto kKindTubes = "circular hollow sections"_phrase;
inline constexpr auto kKindSquareHot = "square hollow sections, hot finished"_phrase;
inline constexpr auto kKindRectangularHot = "rectangular hollow sections, hot finished"_phrase;
inline constexpr auto kKindSquareCold = "square hollow sections, cold formed"_phrase;
inline constexpr auto kKindRectangularCold = "rectangular hollow sections, cold formed"_phrase;
inline constexpr auto kKindRoundBars = "round bars"_phrase;
inline constexpr auto kKindFlatBars = "flat bars"_phrase;
inline constexpr auto kKindTimber = "timber rectangles"_phrase;
inline constexpr auto kKindWide = "W shapes"_phrase;
inline constexpr auto kKindHss = "rectangular and square HSS"_phrase;
inline constexpr auto kKindHssRound = "round HSS"_phrase;
inline constexpr auto kKindPipes = "pipes"_phrase;
inline constexpr auto kKindElls = "L shapes"_phrase;
inline constexpr auto kKindDoubleElls = "double L shapes, 3/8 in apart"_phrase;
inline constexpr auto kKindLumber = "dressed lumber"_phrase;

} // namespace gusset::phrase
