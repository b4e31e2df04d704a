#pragma once
// A displacement by a unit load.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kUnitLoadTitle = "Displacement of joint {joint} by a unit load"_phrase;
inline constexpr auto kUnitLoadOpening =
    "Put a unit load {direction} at {joint}, and nothing else: it causes the member forces {n}. "
    "The given loads cause the forces {force}."_phrase;
inline constexpr auto kUnitLoadUnloaded =
    "Put a unit load {direction} at {joint}, and nothing else: it causes the member forces {n}. "
    "No load acts on the truss, so its own forces {force} are zero."_phrase;
inline constexpr auto kRealByMethod =
    "The truss is statically indeterminate: the force method gives its forces {force}, with "
    "{redundants} as redundant."_phrase;
inline constexpr auto kRealByMethodTwo =
    "The truss is statically indeterminate: the force method gives its forces {force}, with "
    "{redundants} as redundants."_phrase;
inline constexpr auto kUnitOnReleased =
    "Put a unit load {direction} at {joint} of the released truss, without {released}, and "
    "nothing else: it causes the member forces {n}."_phrase;
inline constexpr auto kReleasedIsEnough =
    "The released truss will do for {n}: these forces need only balance the unit load. That "
    "everything fits together is already in the elongations {e}, which are those of the whole "
    "truss."_phrase;
inline constexpr auto kElongationIs =
    "The elongation {e} is how much longer a member becomes; it is negative where the member "
    "becomes shorter:"_phrase;
inline constexpr auto kWarmedBy = "Warmer by {change}: {members}."_phrase;
inline constexpr auto kCooledBy = "Colder by {change}: {members}."_phrase;
inline constexpr auto kMadeTooLong = "Made {size} too long: {members}."_phrase;
inline constexpr auto kMadeTooShort = "Made {size} too short: {members}."_phrase;
inline constexpr auto kUnitLoadTheorem =
    "The unit load does as much work on the displacement {d} sought as the forces {n} do on the "
    "elongations {e}:"_phrase;
inline constexpr auto kUnitLoadTheoremSettling =
    "The unit load on the displacement {d} sought, and its reactions {r} on the settlements {s}, "
    "do as much work as the forces {n} do on the elongations {e}:"_phrase;
inline constexpr auto kUnitLoadCaption = "What each member adds to the displacement"_phrase;
inline constexpr auto kSettlementCaption = "What the settlements add"_phrase;
inline constexpr auto kColumnReaction = "Reaction"_phrase;
inline constexpr auto kPartsCarryMore =
    "The parts carry more figures than their sum, so that they add up."_phrase;
inline constexpr auto kMovesBy = "{joint} moves {size} {direction}."_phrase;
inline constexpr auto kDoesNotMove = "{joint} does not move in this direction."_phrase;
inline constexpr auto kUnitLoadNoWorking =
    "Equilibrium alone does not give the forces of this truss, "
    "so the table can't be made."_phrase;
inline constexpr auto kUnitLoadNoStiffness =
    "E and A are needed of {members}: give each a section with an area "
    "and a material with E."_phrase;

} // namespace gusset::phrase
