#pragma once
// A displacement by a unit load.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kUnitLoadTitle = "Displacement of joint {joint} by a unit load"_phrase;
inline constexpr auto kUnitLoadOpening =
    "Put a unit load {direction} at {joint}, and nothing else: it gives the "
    "forces n. The given loads give the forces N."_phrase;
inline constexpr auto kUnitLoadTheorem =
    "The unit load does as much work on the displacement sought as the "
    "forces n do on what each member grows, less what the reactions r "
    "do on the settlements: 1\u00B7\u0394 = \u03A3 n\u00B7e "
    "\u2212 \u03A3 r\u00B7\u03B4."_phrase;
inline constexpr auto kUnitLoadCaption = "What each member adds to the displacement"_phrase;
inline constexpr auto kSettlementCaption = "What the settlements add"_phrase;
inline constexpr auto kColumnReaction = "Reaction"_phrase;
inline constexpr auto kMovesBy = "{joint} moves {size} {direction}."_phrase;
inline constexpr auto kDoesNotMove = "{joint} does not move in this direction."_phrase;
inline constexpr auto kUnitLoadNoWorking =
    "Equilibrium alone does not give the forces of this truss, "
    "so the table can't be made."_phrase;
inline constexpr auto kUnitLoadNoStiffness =
    "E and A are needed of {members}: give each a section with an area "
    "and a material with E."_phrase;

} // namespace gusset::phrase
