#pragma once
// The force polygon, as a table and drawn.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kPolygonTitle = "Force polygon"_phrase;
inline constexpr auto kPolygonOpening =
    "Letters name the spaces around the truss, clockwise, and figures those "
    "between its members. Each space is a point of the polygon; the line "
    "between two points is the force that divides the two spaces."_phrase;
inline constexpr auto kPolygonCaption = "Lines of the force polygon, as they are drawn"_phrase;
inline constexpr auto kColumnLine = "Line"_phrase;
inline constexpr auto kColumnStandsFor = "Stands for"_phrase;
inline constexpr auto kLoadAt = "load at {joint}"_phrase;
inline constexpr auto kReactionAt = "reaction at {joint}"_phrase;
inline constexpr auto kPolygonNoWorking =
    "Equilibrium alone does not give the forces of this truss, "
    "so its polygon can't be drawn."_phrase;
inline constexpr auto kPolygonCrossing =
    "{a} and {b} cross without a joint, so they do not divide the plane "
    "into spaces: this truss has no force polygon."_phrase;
inline constexpr auto kPolygonNotConnected =
    "No member ties {joint} to the rest of the truss, so the spaces "
    "around it can't be told apart."_phrase;
inline constexpr auto kPolygonForceInside =
    "At {joint} a force acts inside the truss, where it lies in no space "
    "of the outside: the polygon would not close around it."_phrase;
inline constexpr auto kPolygonScale = "1 cm = {force}"_phrase;
inline constexpr auto kPolygonSays =
    "Force polygon of {n} lines, drawn to the scale {scale}."_phrase;
inline constexpr auto kSpacesSays =
    "The truss with its forces, and its spaces lettered: {spaces}."_phrase;

} // namespace gusset::phrase
