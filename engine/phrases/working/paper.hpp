#pragma once
// The working as a document for paper: its parts, what is sought, and its first and last figures.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kLanguageTag = "en"_phrase; // of HTML's lang attribute, by BCP 47
inline constexpr auto kPartGiven = "Given"_phrase;
inline constexpr auto kPartWorking = "Working"_phrase;
inline constexpr auto kPartResults = "Results"_phrase;
inline constexpr auto kSoughtAll = "Find the reactions and the forces in all members."_phrase;
inline constexpr auto kSoughtMember = "Find the force in {member}."_phrase;
inline constexpr auto kSoughtByCut = "Find what a cut through {members} gives."_phrase;
inline constexpr auto kSoughtAcross = "Find how far joint {joint} moves horizontally."_phrase;
inline constexpr auto kSoughtUpright = "Find how far joint {joint} moves vertically."_phrase;
inline constexpr auto kSoughtInfluence = "Find the influence line of {effect}."_phrase;
inline constexpr auto kSoughtPolygon =
    "Find the forces in all members by drawing a force polygon."_phrase;
inline constexpr auto kFigureGiven =
    "The truss as it is given, with its supports, loads and dimensions."_phrase;
inline constexpr auto kFigureAnswer =
    "The truss with its reactions and the force in every member, as they are listed."_phrase;
inline constexpr auto kForcesIn = "Forces in {unit}. T is tension, C is compression."_phrase;
inline constexpr auto kForcesSigns = "T is tension, C is compression."_phrase;

} // namespace gusset::phrase
