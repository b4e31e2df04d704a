#pragma once
// Tables that can be sorted and searched.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kOrderBy = "Order by {column}"_phrase;
// Announced when the rows have been sorted.
inline constexpr auto kAsDrawn = "{table} as drawn"_phrase;
inline constexpr auto kOrderedRising = "{table} ordered by {column}, rising"_phrase;
inline constexpr auto kOrderedFalling = "{table} ordered by {column}, falling"_phrase;

inline constexpr auto kFindJoint = "find a joint"_phrase;
inline constexpr auto kFindMember = "find a member"_phrase;
inline constexpr auto kFindMemberOrSection = "find a member or a section"_phrase;
inline constexpr auto kFindJointOrCase = "find a joint or a case"_phrase;
inline constexpr auto kFindMaterial = "find a material"_phrase;
inline constexpr auto kFindSection = "find a section"_phrase;
inline constexpr auto kShowAll = "Show all"_phrase;
inline constexpr auto kShownOf = "{shown} of {rows} shown"_phrase;

} // namespace gusset::phrase
