#pragma once
// The force polygon, as a table and drawn.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kPolygonTitle = "Force polygon"_phrase;
inline constexpr auto kPolygonOpening =
    "Capital letters name the spaces around the truss, clockwise, and figures those between its "
    "members. Each space is a point of the polygon; the line between two points is the force that "
    "divides the two spaces."_phrase;
inline constexpr auto kPolygonOpeningLetters =
    "Capital letters name the spaces, first those around the truss, clockwise, then those between "
    "its members. Each space is a point of the polygon; the line between two points is the force "
    "that divides the two spaces."_phrase;
inline constexpr auto kPolygonOutside =
    "Draw the loads and reactions to scale, one after the other, clockwise round the truss: "
    "{lines}. They end where they began."_phrase;
inline constexpr auto kPolygonMeets =
    "Through {a} draw parallel to {member}, through {b} parallel to {other}: the two lines meet at "
    "{point}."_phrase;
inline constexpr auto kPolygonMeasured =
    "No point that is left lies on two known lines. The working gives {member}: from {a} draw "
    "{size} parallel to {member}, {direction}, to {point}."_phrase;
inline constexpr auto kPolygonCheck =
    "The line {line} joins two known points: that it is parallel to {member} is a check."_phrase;
inline constexpr auto kPolygonNoLength =
    "{a} and {b} are the same point: {member} carries no force."_phrase;
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
