#pragma once
// The text around the working in the notebook: its pages, its steps, and the conventions of the
// class in which it is written.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kPageTruss = "Truss"_phrase;
inline constexpr auto kPageForce = "Force"_phrase;
inline constexpr auto kPageDisplacement = "Displacement"_phrase;
inline constexpr auto kPagePolygon = "Force polygon"_phrase;
inline constexpr auto kPageSettings = "Settings"_phrase;
inline constexpr auto kPreviousStep = "Previous step"_phrase;
inline constexpr auto kNextStep = "Next step"_phrase;
inline constexpr auto kOneOfMany = "{i} of {n}"_phrase;
inline constexpr auto kAllSteps = "All steps"_phrase;
inline constexpr auto kShortestWay = "shortest way"_phrase;
inline constexpr auto kByASection = "by a section"_phrase;
inline constexpr auto kMethodItself = "method"_phrase;
inline constexpr auto kStateGiven = "given loads"_phrase;
inline constexpr auto kStateRedundant = "redundant"_phrase;
inline constexpr auto kStateFirst = "first redundant"_phrase;
inline constexpr auto kStateSecond = "second redundant"_phrase;
inline constexpr auto kVertical = "vertical"_phrase;
inline constexpr auto kHorizontal = "horizontal"_phrase;

inline constexpr auto kHowWritten = "How the working is written. The results stay the same."_phrase;
inline constexpr auto kMomentsPositive = "Moments are positive"_phrase;
inline constexpr auto kClockwise = "clockwise"_phrase;
inline constexpr auto kAnticlockwise = "anticlockwise"_phrase;
inline constexpr auto kResolvedBy = "Inclined forces are resolved by"_phrase;
inline constexpr auto kByOneAngle = "one angle"_phrase;
inline constexpr auto kByCosines = "cosines"_phrase;
inline constexpr auto kBySlopes = "slopes"_phrase;
inline constexpr auto kDirectionsCalled = "Directions are called"_phrase;
inline constexpr auto kAxesHV = "H and V"_phrase;
inline constexpr auto kAxesXY = "x and y"_phrase;
inline constexpr auto kForceWritten = "A member force is written"_phrase;
inline constexpr auto kAsForceBelow = "F with AB below"_phrase;
inline constexpr auto kAsEnds = "AB"_phrase;
inline constexpr auto kAsNumbered = "S₁"_phrase;
inline constexpr auto kUnknownDrawn = "Unknown forces are drawn"_phrase;
inline constexpr auto kDrawnAway = "away from the joint"_phrase;
inline constexpr auto kDrawnExpected = "in the expected sense"_phrase;
inline constexpr auto kNumbersGiven = "Numbers are given as"_phrase;
inline constexpr auto kExactNumbers = "exact numbers"_phrase;
inline constexpr auto kDecimals = "decimals"_phrase;
inline constexpr auto kSignificant = "significant figures"_phrase;
inline constexpr auto kEquationsBegin = "Equations are written"_phrase;
inline constexpr auto kSymbolsFirst = "in symbols, then in numbers"_phrase;
inline constexpr auto kNumbersOnly = "in numbers at once"_phrase;
inline constexpr auto kDecimalsFollow = "Decimals follow a"_phrase;
inline constexpr auto kPoint = "point: 2.5"_phrase;
inline constexpr auto kComma = "comma: 2,5"_phrase;
inline constexpr auto kValuesGo = "From one step to the next values go"_phrase;
inline constexpr auto kInFull = "in full"_phrase;
inline constexpr auto kRounded = "rounded, as on paper"_phrase;

} // namespace gusset::phrase
