#pragma once
// What is wrong with a list of profiles. Each is said with its row, and the other rows are read.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kPlaceList = "the list"_phrase;
inline constexpr auto kListHasNoProfiles =
    "holds no profiles: it needs a row of headings and a row for each profile"_phrase;
inline constexpr auto kListIsNoText =
    "is no plain text, or UTF-16: save the table as CSV in UTF-8"_phrase;
inline constexpr auto kListLacksColumn =
    "has no column \"{column}\": its headings must be {columns}, and the dimensions' letters"_phrase;
inline constexpr auto kListColumnUnknown =
    "the column \"{column}\" is none of a profile's: it is left out"_phrase;
inline constexpr auto kProfileNameless = "has no name: it is left out"_phrase;
inline constexpr auto kProfileName = "\"{name}\" is left out: {fault}"_phrase;
inline constexpr auto kProfileTwice = "\"{name}\" is in row {row} too: this one is left out"_phrase;
inline constexpr auto kProfileShape =
    "\"{name}\" is left out: no shape \"{shape}\", use one of {shapes}"_phrase;
inline constexpr auto kProfileUnit =
    "\"{name}\" is left out: no unit \"{unit}\", use one of {units}"_phrase;
inline constexpr auto kProfileNumber =
    "\"{name}\" is left out: its {key} is no number: {text}"_phrase;
inline constexpr auto kProfileFault = "\"{name}\" is left out: {fault}"_phrase;
inline constexpr auto kProfileTooSmall =
    "\"{name}\" is left out: it measures only {size} {unit}: is the unit right?"_phrase;
inline constexpr auto kProfileTooLarge =
    "\"{name}\" is left out: it measures {size} {unit}: is the unit right?"_phrase;

} // namespace gusset::phrase
