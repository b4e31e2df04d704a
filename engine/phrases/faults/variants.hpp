#pragma once
// Why a truss can't be varied as wished, and the nearest wish that can be met.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kPlaceSeed = "the seed"_phrase;
inline constexpr auto kSeedIsWhole = "is no whole number of usual size: write digits alone"_phrase;
inline constexpr auto kVariantCount = "must be from 1 to {most}"_phrase;
inline constexpr auto kVariantDecimals = "must be 0 or 1"_phrase;
inline constexpr auto kNothingVaries =
    "nothing may vary: let the lengths, the rise, or the sizes of the loads vary"_phrase;
inline constexpr auto kNoLoadToVary =
    "under these loads no member carries a force: put a load on the truss"_phrase;
inline constexpr auto kNotDeterminate =
    "equilibrium alone does not determine the forces, or the truss can move: only a statically "
    "determinate truss has variants"_phrase;
inline constexpr auto kNotExact =
    "a coordinate, a slope of a roller or a load is no ratio of whole numbers, or the truss is "
    "very "
    "large: write coordinates and loads with few decimals, without self-weight"_phrase;
inline constexpr auto kBlamesRoller = "the slope of the roller at {joint} gives its reaction a "
                                      "root: turn it upright or level, or to a "
                                      "slope such as 3 : 4"_phrase;
inline constexpr auto kBlamesDecimals =
    "whole numbers can't be had with these wishes: allow one decimal"_phrase;
inline constexpr auto kBlamesLengths = "the inclined members have lengths with roots as long as "
                                       "lengths and rise may not vary: let both "
                                       "vary"_phrase;
inline constexpr auto kBlamesLoads =
    "with the loads kept as they are the forces have more decimals: let the sizes of the loads "
    "vary"_phrase;
inline constexpr auto kBlamesAll =
    "these wishes can't be met: let lengths, rise and the sizes of the loads vary, and allow one "
    "decimal"_phrase;
inline constexpr auto kStepNotNegative = "must not be negative"_phrase;
inline constexpr auto kBlamesSteps =
    "no variant was found whose lengths and loads are in these steps: allow smaller ones"_phrase;
inline constexpr auto kBlamesForm =
    "no lengths were found by which the forces of all the members asked for are such numbers: ask "
    "for fewer members, or use a form with fewer different slopes"_phrase;
inline constexpr auto kTooFewVariants =
    "these wishes give only {found} different variants: ask for {found}, or let more vary"_phrase;
inline constexpr auto kTooFewOfOne =
    "these wishes give only one variant: ask for one, or let more vary"_phrase;

inline constexpr auto kFormJoints = "must be from {fewest} to {most}"_phrase;
inline constexpr auto kBracketIsEven =
    "a bracket has an even number of joints: ask for {fewer} or {more}"_phrase;
inline constexpr auto kBlamesZeros =
    "no loading of this form was found with {wished} zero members: the nearest that was is {nearest}"_phrase;

} // namespace gusset::phrase
