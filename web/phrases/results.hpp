#pragma once
// The notebook's pages of results.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kPageForces = "Forces"_phrase;
inline constexpr auto kPageInfluence = "Influence lines"_phrase;
inline constexpr auto kPageChecks = "Checks"_phrase;

inline constexpr auto kUnder = "Under"_phrase;
inline constexpr auto kAllLoads = "all loads"_phrase;
inline constexpr auto kExactValues = "Exact values"_phrase;
inline constexpr auto kFilterAll = "all"_phrase;
inline constexpr auto kFilterPicked = "picked"_phrase;
inline constexpr auto kNoneOfThem = "None of them."_phrase;

inline constexpr auto kPlay = "Play"_phrase;
inline constexpr auto kSmaller = "Smaller"_phrase;
inline constexpr auto kLarger = "Larger"_phrase;
inline constexpr auto kShowMotion = "Show how it moves"_phrase;
inline constexpr auto kAnotherMotion = "Another way"_phrase;

inline constexpr auto kOver = "Over"_phrase;
inline constexpr auto kOverCombinations = "combinations"_phrase;
inline constexpr auto kOverCases = "cases"_phrase;
inline constexpr auto kOpenModel = "Open the model"_phrase;
inline constexpr auto kExtremes = "Extremes"_phrase;

inline constexpr auto kTravelsAlong = "A unit load travels along"_phrase;
inline constexpr auto kBottomChord = "bottom chord"_phrase;
inline constexpr auto kTopChord = "top chord"_phrase;
inline constexpr auto kPickedJoints = "picked joints"_phrase;
inline constexpr auto kPickPath = "Pick another path"_phrase;
inline constexpr auto kTapPath =
    "Tap the joints of the path on the board: its two ends will do where members join them in one "
    "line."_phrase;
inline constexpr auto kNoneYet = "none yet"_phrase;
inline constexpr auto kEffectUp = "upwards ↑"_phrase;
inline constexpr auto kEffectRight = "to the right →"_phrase;
inline constexpr auto kTapForLine =
    "Tap a member or a joint on the board for its own line; drag across the plot to read it "
    "off."_phrase;
inline constexpr auto kWorkingByHand = "The working by hand"_phrase;
inline constexpr auto kAllUnderThese = "All members under these loads"_phrase;

inline constexpr auto kLoadsShown = "the loads shown"_phrase;
inline constexpr auto kWorstOfAll = "the worst of all"_phrase;
inline constexpr auto kUseOnBoard = "Utilisation on the board"_phrase;
inline constexpr auto kCheckedBy = "Checked by"_phrase;
inline constexpr auto kByEuler = "Euler"_phrase;
inline constexpr auto kBucklingCurve = "Buckling curve"_phrase;
inline constexpr auto kFactorM0 = "γM0, of the section"_phrase;
inline constexpr auto kFactorM1 = "γM1, of the member"_phrase;
inline constexpr auto kFactorM2 = "γM2, of net sections"_phrase;
inline constexpr auto kStrengthDividedBy = "safety factor of strength"_phrase;
inline constexpr auto kCriticalDividedBy = "safety factor of buckling"_phrase;
inline constexpr auto kFactorPhi = "φ"_phrase;
inline constexpr auto kFactorOmega = "Ω"_phrase;
inline constexpr auto kFactorK = "K, effective length factor"_phrase;
inline constexpr auto kSlendernessPressed = "largest slenderness in compression"_phrase;
inline constexpr auto kSlendernessPulled = "largest slenderness in tension"_phrase;
inline constexpr auto kMovementLimit = "x of the largest movement of a joint, L/x"_phrase;
inline constexpr auto kFactorModification = "k_mod, of timber"_phrase;
inline constexpr auto kFactorTimber = "γM, of timber"_phrase;
inline constexpr auto kFactorStraightness = "β_c, of timber"_phrase;
inline constexpr auto kLengthsOfPicked = "Buckling lengths of what is picked"_phrase;
inline constexpr auto kPickForLengths =
    "Pick members on the board to give them a K of their own, or joints to say whether they are held out of the plane of the truss."_phrase;
inline constexpr auto kFactorInPlane = "K in the plane of the truss"_phrase;
inline constexpr auto kFactorOutOfPlane = "K out of it"_phrase;
inline constexpr auto kAsInChecks = "as for all"_phrase;
inline constexpr auto kHeldOutOfPlane = "Held out of the plane"_phrase;
inline constexpr auto kNoLimit = "no limit"_phrase;

} // namespace gusset::phrase
