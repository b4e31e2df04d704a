#pragma once
// What is wrong with a model, or with a name in it. A fault follows the place that it is about, as
// in "members[3].b: there is no such joint", so it begins with a small letter and has no full stop.
// Words in quotes are keys of the model file.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kFaultAt = "{place}: {fault}"_phrase;

inline constexpr auto kNumberTooLarge =
    "the number is too large to compute with: keep it within ±1e100"_phrase;
inline constexpr auto kMustBePositive = "must be greater than 0"_phrase;
inline constexpr auto kSizeBeyondReach =
    "is too small or too large to compute with: keep it from 1e-30 to 1e30"_phrase;
inline constexpr auto kMustBeUpTo = "must be from 0 to {most}"_phrase;

// {fault} is one of the faults of a name below.
inline constexpr auto kThisName = "this name {fault}"_phrase;
inline constexpr auto kThisTitle = "the title {fault}"_phrase;
inline constexpr auto kNameEmpty = "is empty: give it a name"_phrase;
inline constexpr auto kNameNotText = "is not UTF-8 text: type it anew"_phrase;
inline constexpr auto kNameTooLong = "is longer than {n} characters: shorten it"_phrase;
inline constexpr auto kNameBreaksLine =
    "has a line break or another control character in it: remove it"_phrase;
inline constexpr auto kNameHides =
    "has a character in it that can't be seen, {code}: type it anew"_phrase;
inline constexpr auto kNameBare =
    "has nothing in it that can be seen: give it a letter, a figure or a sign"_phrase;
inline constexpr auto kNameLooksSame =
    "\"{name}\" looks the same as \"{other}\", which is written in other characters: give each its own name"_phrase;
inline constexpr auto kNameTaken = "\"{name}\" already exists: give each its own name"_phrase;

inline constexpr auto kNoSuchJoint = "there is no such joint"_phrase;
inline constexpr auto kNoSuchSection = "no section \"{section}\": add it under \"sections\""_phrase;
inline constexpr auto kNoSuchMaterial =
    "no material \"{material}\": add it under \"materials\""_phrase;
inline constexpr auto kNoSuchShape = "no shape \"{shape}\": use one of {shapes}"_phrase;
inline constexpr auto kNoMemberJoins =
    "no member joins \"{a}\" and \"{b}\": name an existing one"_phrase;
inline constexpr auto kOneJointTwice =
    "begins and ends at joint \"{joint}\": join two different joints"_phrase;
inline constexpr auto kNoLength =
    "member {member} has no length: move one of its joints apart from the other"_phrase;
inline constexpr auto kMemberTwice =
    "member {member} already exists as {place}: remove one of the two"_phrase;
inline constexpr auto kBeyondEnd =
    "lies beyond the end of member {member}: it counts from joint \"{joint}\""_phrase;
inline constexpr auto kPathNeedsTwo = "needs at least two joints"_phrase;
inline constexpr auto kTwiceInPath =
    "joint \"{joint}\" appears twice in one path: name each joint once"_phrase;
inline constexpr auto kMovesNothing = "has no load: give it \"axles\" or \"uniform\""_phrase;
inline constexpr auto kAxlesMeet = "another axle is at the same place: combine the two"_phrase;

// Dimensions of a section.
inline constexpr auto kDimensionMissing = "a {shape} needs {dimensions}: add \"{key}\""_phrase;
inline constexpr auto kDimensionNotPositive = "its {key} must be greater than 0"_phrase;
inline constexpr auto kDimensionBeyondReach =
    "its {key} is too small or too large to compute with: keep it from 1e-30 to 1e30"_phrase;
inline constexpr auto kTooThick =
    "its thickness t is too large for its {key}: make t smaller"_phrase;
inline constexpr auto kWebTooThick =
    "the thickness s of its web is too large for its B: make s smaller"_phrase;
inline constexpr auto kTipOutOfReach =
    "its tip must be from a little less than t to t: a flange tapers by at most 20 %"_phrase;
inline constexpr auto kRadiusTooLarge =
    "its radius {key} has no room beside its other dimensions: make it smaller"_phrase;
inline constexpr auto kInnerRadiusAlone =
    "its inner radius Ri must not be more than an outer radius R, and leave room: change R or Ri"_phrase;
inline constexpr auto kShapeRound = "solid round bar"_phrase;
inline constexpr auto kShapeTube = "circular hollow section"_phrase;
inline constexpr auto kShapeSquare = "square hollow section"_phrase;
inline constexpr auto kShapeRectangular = "rectangular hollow section"_phrase;
inline constexpr auto kShapeAngle = "angle"_phrase;
inline constexpr auto kShapePair = "double angle"_phrase;
inline constexpr auto kShapeChannel = "channel"_phrase;
inline constexpr auto kShapeBeam = "I or H section"_phrase;
inline constexpr auto kShapeFlat = "flat bar"_phrase;
inline constexpr auto kShapeTimber = "timber rectangle"_phrase;
inline constexpr auto kInPlaneIsOne = "{key} must be \"{a}\" or \"{b}\""_phrase;
inline constexpr auto kLagBeyondOne = "the shear lag factor U must not be more than 1"_phrase;
inline constexpr auto kHolesNotWhole = "the number of holes must be whole, from 1 to {most}"_phrase;
inline constexpr auto kListedTwice = "joint {joint} is already in the list"_phrase;

// Numbers of the checks.
inline constexpr auto kCheckNumberRange = "{what} must be from {least} to {most}"_phrase;
inline constexpr auto kCheckNumberRangeOrNone =
    "{what} must be from {least} to {most}, or 0 for no limit"_phrase;
inline constexpr auto kFactorBucklingLength = "the factor of the buckling length"_phrase;
inline constexpr auto kFactorStrength = "the factor that strength is divided by"_phrase;
inline constexpr auto kFactorEuler = "the factor that Euler's critical force is divided by"_phrase;
inline constexpr auto kPartialFactorM0 = "the partial factor γM0"_phrase;
inline constexpr auto kPartialFactorM1 = "the partial factor γM1"_phrase;
inline constexpr auto kPartialFactorM2 = "the partial factor γM2"_phrase;
inline constexpr auto kFactorResistance = "the resistance factor φ"_phrase;
inline constexpr auto kFactorSafety = "the safety factor Ω"_phrase;
inline constexpr auto kLimitInTension = "the largest slenderness of members in tension"_phrase;
inline constexpr auto kLimitInCompression =
    "the largest slenderness of members in compression"_phrase;
inline constexpr auto kLimitOfMovement = "x of the limit L/x of movements"_phrase;
inline constexpr auto kFactorKMod = "the factor k_mod"_phrase;
inline constexpr auto kPartialFactorTimber = "the partial factor γM of timber"_phrase;
inline constexpr auto kFactorBetaC = "the factor β_c"_phrase;

} // namespace gusset::phrase
