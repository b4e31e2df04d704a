#pragma once
// The steps of a working: titles, directions, the forces on the whole truss, slopes, the check at
// the end.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kUp = "up"_phrase;
inline constexpr auto kDown = "down"_phrase;
inline constexpr auto kLeft = "to the left"_phrase;
inline constexpr auto kRight = "to the right"_phrase;
inline constexpr auto kUpLeft = "up to the left"_phrase;
inline constexpr auto kUpRight = "up to the right"_phrase;
inline constexpr auto kDownLeft = "down to the left"_phrase;
inline constexpr auto kDownRight = "down to the right"_phrase;
inline constexpr auto kTitleCounting = "Count"_phrase;
inline constexpr auto kTitleWholeBody = "The whole truss"_phrase;
inline constexpr auto kTitleMoments = "Moments about {joint}"_phrase;
inline constexpr auto kTitleSum = "{sum} of the whole truss"_phrase;
inline constexpr auto kTitleReactionsTogether = "Reactions together"_phrase;
inline constexpr auto kTitleSlopes = "Slopes"_phrase;
inline constexpr auto kTitleIdle = "Zero force at {joint}"_phrase;
inline constexpr auto kTitleIdleNone = "Zero-force members"_phrase;
inline constexpr auto kTitleSymmetry = "Symmetry"_phrase;
inline constexpr auto kTitleJoint = "Joint {joint}"_phrase;
inline constexpr auto kTitleJointSum = "Joint {joint}, {sum}"_phrase;
inline constexpr auto kTitleJointTogether = "Joint {joint}, both sums"_phrase;
inline constexpr auto kTitleApart = "Apart at {joint}"_phrase;
inline constexpr auto kTitleSection = "Section"_phrase;
inline constexpr auto kTitleCut = "Section through {members}"_phrase;
inline constexpr auto kTitleCutSum = "Section, {sum}"_phrase;
inline constexpr auto kTitleCutMoments = "Section, moments about {joint}"_phrase;
inline constexpr auto kTitleJointsTogether = "Joints {joints} together"_phrase;
inline constexpr auto kTitleClosingSums = "Check"_phrase;
inline constexpr auto kTitleSummary = "All forces"_phrase;
inline constexpr auto kCountThings = "{members}, {reactions}, {joints}."_phrase;
inline constexpr auto kTakeOffSupports =
    "Take the whole truss off its supports and put their forces there "
    "instead."_phrase;
inline constexpr auto kPinGives =
    "The pin at {joint} gives {x}, drawn to the right, and {y}, drawn up."_phrase;
inline constexpr auto kRollerGives = "The roller at {joint} gives {r}, drawn {direction}."_phrase;
inline constexpr auto kLoadOneWay = "Load at {joint}: {size} {direction}."_phrase;
inline constexpr auto kLoadTwoWays =
    "Load at {joint}: {size} {direction} and {size2} {direction2}."_phrase;
inline constexpr auto kLoadNamed = "{load} stands for the load at {joint}."_phrase;
inline constexpr auto kLoadsNamed = "{loads} stand for the loads at {joints}."_phrase;
inline constexpr auto kAngleToHorizontal = "{r} is inclined to the horizontal at"_phrase;
inline constexpr auto kMomentsClockwise = "Moments count positive clockwise."_phrase;
inline constexpr auto kMomentsAnticlockwise = "Moments count positive anticlockwise."_phrase;
inline constexpr auto kWholeMoments = "The whole truss about {joint}:"_phrase;
inline constexpr auto kPartMoments = "The part {joints} about {joint}:"_phrase;
inline constexpr auto kAngleIsOf =
    "{angle} is the inclination to the horizontal of {members}."_phrase;
inline constexpr auto kSlopeIsOf = "The slope of {members}:"_phrase;
inline constexpr auto kRiseOverLength = "rise over length"_phrase;
inline constexpr auto kRunOverLength = "run over length"_phrase;
inline constexpr auto kAtJoint = "At {joint}"_phrase;
inline constexpr auto kCarriedInFull =
    "Numbers are written rounded and carried in full, so a last figure may differ from what the "
    "written numbers give."_phrase;
inline constexpr auto kLeftOverSums =
    "Equations that were not needed must balance by themselves."_phrase;

} // namespace gusset::phrase
