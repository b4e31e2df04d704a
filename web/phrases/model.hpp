#pragma once
// The notebook's page of the model, besides the columns of its tables: what stands below them, load
// combinations, moving loads, and units.

#include "core/phrase.hpp"
#include "phrases/model/tables.hpp"

namespace gusset::phrase {

inline constexpr auto kHowLoads =
    "Type 5 @ 30° for a size and an angle, or 3, −4 for two parts; sums and units are read as "
    "well: 2*1.5 kN."_phrase;
inline constexpr auto kAddSelfWeight = "Add self-weight"_phrase;
inline constexpr auto kLoadAlongPicked = "Load along the picked joints"_phrase;

inline constexpr auto kHowSections =
    "Made as: A 1200, r 25, or round D, chs D × t, shs B × t, rhs H × B × t, angle H × B × t, flat "
    "B × t, timber B × H."_phrase;
inline constexpr auto kGivePicked = "Give the picked members the section"_phrase;
inline constexpr auto kGiveBare = "Give all members that have none the section"_phrase;
inline constexpr auto kAddSteel = "Add steel"_phrase;
inline constexpr auto kAddTimber = "Add timber"_phrase;
inline constexpr auto kUsualMaterials =
    "Steel: nominal values of EN 1993-1-1; timber: C24 of EN 338. What is built with has its own "
    "certificate."_phrase;

inline constexpr auto kCellCombination = "combination"_phrase;
inline constexpr auto kCellOfCase = "of case"_phrase;
inline constexpr auto kCellTimes = "times"_phrase;
inline constexpr auto kNewName = "new name"_phrase;
inline constexpr auto kRemoveCombination = "Remove combination"_phrase;

inline constexpr auto kHeadMoving = "Moving loads"_phrase;
inline constexpr auto kCellAxle = "axle"_phrase;
inline constexpr auto kBehindFirst = "behind the first"_phrase;
inline constexpr auto kPushesDown = "pushes down"_phrase;
inline constexpr auto kAxlePlace = "place"_phrase;
inline constexpr auto kRemoveAxle = "Remove axle"_phrase;
inline constexpr auto kSpreadLoadDown = "spread load, down"_phrase;
inline constexpr auto kItsLength = "its length"_phrase;
inline constexpr auto kLongAsWorst = "as long as is worst"_phrase;
inline constexpr auto kRemoveMoving = "Remove moving load"_phrase;
inline constexpr auto kAddMoving = "Add a load that moves here"_phrase;
inline constexpr auto kWhereMovingAdded =
    "Results, Influence: choose a path there and add a load that moves along it."_phrase;

// What a screen reader calls the fields of combinations and moving loads.
inline constexpr auto kHeadCases = "Load cases"_phrase;
inline constexpr auto kCellStandsFor = "stands for"_phrase;
inline constexpr auto kCellCopy = "copy"_phrase;
inline constexpr auto kCopyCase = "Copy load case"_phrase;
inline constexpr auto kRemoveCase = "Remove load case"_phrase;
inline constexpr auto kNameOfCase = "name of load case {case}"_phrase;
inline constexpr auto kKindOfCase = "what load case {case} stands for"_phrase;
inline constexpr auto kCaseStandsFor =
    "a load case may stand for one of these, or for nothing: {words}"_phrase;
inline constexpr auto kNameOfCombination = "name of combination {combination}"_phrase;
inline constexpr auto kNameOfNewCombination = "name of a new combination"_phrase;
inline constexpr auto kFactorOfCase = "factor of case {case} in combination {combination}"_phrase;
inline constexpr auto kNameOfMoving = "name of moving load {load}"_phrase;
inline constexpr auto kPlaceOfAxle = "place of axle {n} of moving load {load}"_phrase;
inline constexpr auto kForceOfAxle = "force of axle {n} of moving load {load}"_phrase;
inline constexpr auto kSpreadOfMoving = "spread load of moving load {load}"_phrase;
inline constexpr auto kSpreadLengthOfMoving =
    "length of the spread load of moving load {load}"_phrase;
inline constexpr auto kVehicle = "vehicle {n}"_phrase; // a new moving load is named so

inline constexpr auto kHeadUnits = "Units"_phrase;
inline constexpr auto kForcesIn = "Forces in"_phrase;
inline constexpr auto kLengthsIn = "Lengths in"_phrase;
inline constexpr auto kNone = "none"_phrase;
inline constexpr auto kKeepNumbers = "Keep the numbers when the unit changes"_phrase;

} // namespace gusset::phrase
