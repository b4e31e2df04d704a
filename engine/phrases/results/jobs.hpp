#pragma once
// What long calculations are doing.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kJobCounted = "{what}: {done} of {all}"_phrase;
inline constexpr auto kJobAtWork = "{what}…"_phrase;
inline constexpr auto kJobWaits = "This follows when the drag pauses."_phrase;
inline constexpr auto kJobWorking = "Working out the forces"_phrase;
inline constexpr auto kJobShortest = "Looking for the shortest way"_phrase;
inline constexpr auto kJobSteps = "Writing the steps"_phrase;
inline constexpr auto kJobPolygon = "Drawing the force polygon"_phrase;
inline constexpr auto kJobReleases = "Trying what to release"_phrase;
inline constexpr auto kJobLoads = "Going through the loads"_phrase;
inline constexpr auto kJobMembers = "Going through the members"_phrase;
inline constexpr auto kJobPlaces = "Going through the places of the load"_phrase;
inline constexpr auto kJobTable = "Writing the table"_phrase;
inline constexpr auto kJobExact = "Working out the exact values"_phrase;
inline constexpr auto kCellTotal = "total"_phrase;

} // namespace gusset::phrase
