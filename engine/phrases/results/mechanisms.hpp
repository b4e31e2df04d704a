#pragma once
// Mechanisms and their cures.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kMechanismAlone = "{what}."_phrase;
inline constexpr auto kMechanismMember =
    "{what}; a member between {a} and {b} would stop it."_phrase;
inline constexpr auto kMechanismSupport = "{what}; {support} would stop it."_phrase;
inline constexpr auto kMechanismEither =
    "{what}; a member between {a} and {b}, or {support}, would stop it."_phrase;
inline constexpr auto kWholeMoves = "The truss as a whole can {motion}"_phrase;
inline constexpr auto kUnsupportedMoves =
    "Nothing supports the truss: as a whole it can {motion}"_phrase;
inline constexpr auto kMotionSlide = "slide {way}"_phrase;
inline constexpr auto kMotionTurnJoint = "turn about joint {joint}"_phrase;
inline constexpr auto kMotionTurnLines =
    "turn about the point where the lines of its reactions meet"_phrase;
inline constexpr auto kMotionTurn = "turn"_phrase;
inline constexpr auto kWayHorizontal = "horizontally"_phrase;
inline constexpr auto kWayVertical = "vertically"_phrase;
inline constexpr auto kWaySloping = "along a slope"_phrase;
inline constexpr auto kLooseJointMoves =
    "Joint {joint} is joined to no member and can move {way}"_phrase;
inline constexpr auto kHangingJoint = "Joint {joint} hangs on a single member and can swing"_phrase;
inline constexpr auto kJointInLine =
    "All members at joint {joint} lie in one line, and nothing holds it "
    "across that line"_phrase;
inline constexpr auto kPartTurns = "Joints {joints} can turn together about joint {joint}"_phrase;
inline constexpr auto kPartSlides = "Joints {joints} can slide together {way}"_phrase;
inline constexpr auto kPartMoves =
    "Joints {joints} can move without any member changing its length"_phrase;
inline constexpr auto kCurePin = "a pin in place of the roller at {joint}"_phrase;
inline constexpr auto kCureVertical = "a support at {joint} that holds it vertically"_phrase;
inline constexpr auto kCureHorizontal = "a support at {joint} that holds it horizontally"_phrase;

} // namespace gusset::phrase
