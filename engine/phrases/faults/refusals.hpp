#pragma once
// Why an edit can't be made, or a usual form not drawn.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kJointGone = "that joint is no longer there"_phrase;
inline constexpr auto kMemberGone = "that member is no longer there"_phrase;
inline constexpr auto kSupportGone = "that support is no longer there"_phrase;
inline constexpr auto kLoadGone = "that load is no longer there"_phrase;
inline constexpr auto kMaterialGone = "that material is no longer there"_phrase;
inline constexpr auto kSectionGone = "that section is no longer there"_phrase;
inline constexpr auto kCopiedGone = "that thing to copy is no longer there"_phrase;
inline constexpr auto kLabelTaken = "there is a joint {label} already: choose another label"_phrase;
inline constexpr auto kCaseTaken = "there is a load case {id} already: choose another name"_phrase;
inline constexpr auto kCaseNeedsName = "a load case needs a name"_phrase;
inline constexpr auto kLiesAlong =
    "a member can't lie along member {member}: end it somewhere else"_phrase;
inline constexpr auto kNeedsTwoJoints =
    "a member needs two different joints: end it somewhere else"_phrase;
inline constexpr auto kMemberThere = "member {member} already exists"_phrase;
inline constexpr auto kChordLoadTurned =
    "a load along a chord acts straight up or down, so a copy can't be turned: leave the load out, "
    "or copy it upright"_phrase;
inline constexpr auto kFormNeedsSizes = "span and rise must be greater than zero"_phrase;
inline constexpr auto kFormSizeNegative = "sizes of a form must not be negative"_phrase;
inline constexpr auto kFormSizeZero =
    "the depth of a gantry’s girder and the width of a tower’s top must be greater than zero"_phrase;
inline constexpr auto kFormPanels =
    "this form has {fewest} to {most} panels, and {panels} are asked for"_phrase;
inline constexpr auto kFormPanelsEven =
    "this form has an even number of panels, {fewest} to {most}, and {panels} are asked for"_phrase;
inline constexpr auto kFormHeelTooHigh =
    "the height over the supports must be less than the rise"_phrase;
inline constexpr auto kFormTieTooHigh = "the tie is raised to the ridge: raise it less"_phrase;
inline constexpr auto kFormOverhangNeedsHeel =
    "an overhang needs some height over the supports, so that it can be braced: give one, or leave the overhang out"_phrase;
inline constexpr auto kFormTooSteep =
    "a compound Fink truss needs a pitch below 45°: take a smaller rise or another form"_phrase;
inline constexpr auto kFormLoadTooLarge = "the load must be a number of reasonable size"_phrase;

} // namespace gusset::phrase
