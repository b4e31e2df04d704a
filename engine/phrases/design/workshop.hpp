#pragma once
// What can't be answered on the page that chooses profiles.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kNothingToDo = "this request asks for nothing that is known here"_phrase;
inline constexpr auto kNoKindsChosen =
    "there is nothing to choose from: take at least one kind of profiles, or a list of your own"_phrase;
inline constexpr auto kNoneOfGrade =
    "none of these profiles is made of {grade}: classes of timber go with timber, grades of steel with all other kinds"_phrase;
inline constexpr auto kNoGroupLeft =
    "there is no group left to choose profiles for: make one, or take the groups by role again"_phrase;
inline constexpr auto kNoSupportsYet =
    "the truss has no supports yet: put them on at the board, then choose profiles"_phrase;
inline constexpr auto kNoLoadsYet =
    "the truss has no loads yet: put them on at the board, then choose profiles"_phrase;
inline constexpr auto kNoCaseForWeight =
    "the own weight can’t be added to the load case {case}: the truss has no such case"_phrase;
inline constexpr auto kDeflectionRange =
    "a limit on the deflection is L/x, with x from 10 to 10,000; or there is none"_phrase;
inline constexpr auto kOneGroupEach =
    "the groups must be of members that the truss has, each in one of them"_phrase;
inline constexpr auto kNoSuchJoint = "the truss has no joint {joint}"_phrase;
inline constexpr auto kPlaceIsNumbers = "the place of a joint is two numbers, x and y"_phrase;
inline constexpr auto kPlaceIsTaken =
    "joint {joint} would come to lie on joint {other}: a joint needs a place of its own"_phrase;
inline constexpr auto kNothingToCompare =
    "there is nothing to compare: one of the two trusses has no joint yet"_phrase;
inline constexpr auto kDrawingWidth = "the width of a drawing is a length greater than zero"_phrase;
inline constexpr auto kRangeRises = "the range must begin above zero and rise"_phrase;
inline constexpr auto kNotFromOutline =
    "this truss is not, or no more, as a form on the start page makes it, so that its rise and panels can’t be varied"_phrase;

} // namespace gusset::phrase
