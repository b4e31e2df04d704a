#pragma once
// Kinds of load cases, combinations and how loads come.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kActionPermanent = "permanent"_phrase;
inline constexpr auto kActionImposedA = "imposed, homes (A)"_phrase;
inline constexpr auto kActionImposedB = "imposed, offices (B)"_phrase;
inline constexpr auto kActionImposedC = "imposed, where people gather (C)"_phrase;
inline constexpr auto kActionImposedD = "imposed, shops (D)"_phrase;
inline constexpr auto kActionImposedE = "imposed, stores (E)"_phrase;
inline constexpr auto kActionImposedF = "imposed, vehicles up to 30 kN (F)"_phrase;
inline constexpr auto kActionImposedG = "imposed, vehicles up to 160 kN (G)"_phrase;
inline constexpr auto kActionImposedH = "imposed, roofs (H)"_phrase;
inline constexpr auto kActionSnow = "snow, up to 1000 m"_phrase;
inline constexpr auto kActionSnowHigh = "snow, above 1000 m"_phrase;
inline constexpr auto kActionWind = "wind"_phrase;

inline constexpr auto kSizeHeel = "Height over the supports"_phrase;
inline constexpr auto kSizeTie = "Tie raised by"_phrase;
inline constexpr auto kSizeOverhang = "Overhang on plan"_phrase;
inline constexpr auto kSizeDepth = "Depth of the girder"_phrase;
inline constexpr auto kSizeTopWidth = "Width at the top"_phrase;

inline constexpr auto kSpreadAreaOnPlan = "on the area, on plan"_phrase;
inline constexpr auto kSpreadAreaOnSlope = "on the area, along the slope"_phrase;
inline constexpr auto kSpreadAreaNormal = "on the area, square to it"_phrase;
inline constexpr auto kSpreadLineOnPlan = "along the chord, on plan"_phrase;
inline constexpr auto kSpreadLineOnSlope = "along the chord, on the slope"_phrase;
inline constexpr auto kSpreadPerJoint = "on each joint"_phrase;

inline constexpr auto kLoadsAsTheyCome = "Loads as they come"_phrase;
inline constexpr auto kLoadsAsTheyComeApart =
    "Loads as they come, to trusses {length} apart"_phrase;
inline constexpr auto kColumnStandsFor = "Stands for"_phrase;
inline constexpr auto kColumnHowItComes = "How it comes"_phrase;
inline constexpr auto kColumnChord = "Chord"_phrase;
inline constexpr auto kChordUpper = "upper"_phrase;
inline constexpr auto kChordLower = "lower"_phrase;
inline constexpr auto kLeftAndRight = "{left} left, {right} right of the ridge"_phrase;
inline constexpr auto kOwnWeightOfMembers = "own weight of the members"_phrase;
inline constexpr auto kUpperCarries = "What the joints of the upper chord carry"_phrase;
inline constexpr auto kLowerCarries = "What the joints of the lower chord carry"_phrase;
inline constexpr auto kColumnOnPlan = "On plan"_phrase;
inline constexpr auto kColumnAlongSlope = "Along the slope"_phrase;
inline constexpr auto kSharedByHalves =
    "Each joint carries half of what lies on either side of it along the chord. A load on the area is multiplied by that length and by the distance between trusses, a load along the chord by the length alone."_phrase;
inline constexpr auto kShareOfLoad = "{case}: {load}, {how}"_phrase;
inline constexpr auto kShareOfLoadAlone = "{load}, {how}"_phrase;

inline constexpr auto kRuleEn610 = "EN 1990, 6.10"_phrase;
inline constexpr auto kRuleEn610ab = "EN 1990, 6.10a and 6.10b"_phrase;
inline constexpr auto kRuleAsceLrfd = "ASCE 7-16, strength (LRFD)"_phrase;
inline constexpr auto kRuleAsceAsd = "ASCE 7-16, allowable stress (ASD)"_phrase;

inline constexpr auto kFactorPermanentUp = "Permanent, unfavourable"_phrase;
inline constexpr auto kFactorPermanentDown = "Permanent, favourable"_phrase;
inline constexpr auto kFactorVariable = "Variable"_phrase;
inline constexpr auto kFactorXi = "ξ, of permanent actions in 6.10b"_phrase;

// Of the form's fields, and what is wrong with what was typed there.
inline constexpr auto kFieldSpan = "Span"_phrase;
inline constexpr auto kFieldRise = "Rise"_phrase;
inline constexpr auto kFieldSpacing = "Distance between trusses"_phrase;
inline constexpr auto kFieldLoad = "Load"_phrase;
inline constexpr auto kFieldLoadRight = "Load on the right slope"_phrase;
inline constexpr auto kFieldFault = "{field}: {fault}"_phrase;

inline constexpr auto kLoadInUnit = "“{typed}”: this load is in {unit}"_phrase;

inline constexpr auto kStrengthNumber = "strength {number}"_phrase;
inline constexpr auto kServiceNumber = "service {number}"_phrase;

inline constexpr auto kNoKindsToCombine =
    "no load case says what it stands for: give at least one a kind, such as permanent or snow"_phrase;
inline constexpr auto kFactorsMustBePositive =
    "factors of combinations must be numbers that are not negative, at most 10"_phrase;
inline constexpr auto kTooManyCombinations =
    "these cases make more than {most} combinations: give fewer of them a kind, and combine the others by hand"_phrase;

inline constexpr auto kSpacingMustBePositive =
    "the distance between trusses must be greater than zero"_phrase;
inline constexpr auto kRoofLoadTooLarge = "the loads must be numbers of reasonable size"_phrase;
inline constexpr auto kOnlyWindLifts =
    "the load of case {case} would lift the roof: only wind does; a load that presses down is positive"_phrase;

} // namespace gusset::phrase
