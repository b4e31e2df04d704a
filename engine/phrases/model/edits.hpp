#pragma once
// The names of edits, shown beside undo and redo.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kEditAddJoint = "Add joint"_phrase;
inline constexpr auto kEditMoveJoint = "Move joint {joint}"_phrase;
inline constexpr auto kEditMoveJoints = "Move {n} joints"_phrase;
inline constexpr auto kEditMergeJoint = "Merge joint {joint} into {other}"_phrase;
inline constexpr auto kEditRenameJoint = "Rename joint {joint}"_phrase;
inline constexpr auto kEditRemoveJoint = "Remove joint {joint}"_phrase;
inline constexpr auto kEditJointOnMember = "Joint on member {member}"_phrase;
inline constexpr auto kEditJointOnAMember = "Joint on member"_phrase;

inline constexpr auto kEditDrawMember = "Draw member {member}"_phrase;
inline constexpr auto kEditDrawAMember = "Draw member"_phrase;
inline constexpr auto kEditChangeMember = "Change member {member}"_phrase;
inline constexpr auto kEditChangeAMember = "Change member"_phrase;
inline constexpr auto kEditRemoveMember = "Remove member {member}"_phrase;
inline constexpr auto kEditWarmMember = "Change the temperature of member {member}"_phrase;
inline constexpr auto kEditWarmMembers = "Change the temperature of {n} members"_phrase;

inline constexpr auto kEditFactorMember = "Change K of member {member}"_phrase;
inline constexpr auto kEditFactorMembers = "Change K of {n} members"_phrase;

inline constexpr auto kEditPin = "Pin at {joint}"_phrase;
inline constexpr auto kEditRoller = "Roller at {joint}"_phrase;
inline constexpr auto kEditChangeSupport = "Change support at {joint}"_phrase;
inline constexpr auto kEditRemoveSupports = "Remove support at {joint}"_phrase;
inline constexpr auto kEditRemoveSupport = "Remove support"_phrase;

inline constexpr auto kEditAddLoadAt = "Add load at {joint}"_phrase;
inline constexpr auto kEditAddLoad = "Add load"_phrase;
inline constexpr auto kEditChangeLoadAt = "Change load at {joint}"_phrase;
inline constexpr auto kEditChangeLoad = "Change load"_phrase;
inline constexpr auto kEditRemoveLoad = "Remove load"_phrase;

inline constexpr auto kEditCopy = "Copy"_phrase;
inline constexpr auto kEditCopyTimes = "Copy {n} times"_phrase;
inline constexpr auto kEditRemoveThings = "Remove {n} things"_phrase;

inline constexpr auto kEditAddMaterial = "Add material {id}"_phrase;
inline constexpr auto kEditChangeMaterial = "Change material {id}"_phrase;
inline constexpr auto kEditRemoveMaterial = "Remove material"_phrase;
inline constexpr auto kEditAddSection = "Add section {id}"_phrase;
inline constexpr auto kEditChangeSection = "Change section {id}"_phrase;
inline constexpr auto kEditRemoveSection = "Remove section"_phrase;
inline constexpr auto kEditUseSection = "Use section {id}"_phrase;

inline constexpr auto kEditRenameCase = "Rename load case {id}"_phrase;
inline constexpr auto kEditCaseKind = "Change load case {id}"_phrase;
inline constexpr auto kEditCopyCase = "Copy load case {id}"_phrase;
inline constexpr auto kEditRemoveCase = "Remove load case {id}"_phrase;
inline constexpr auto kEditAddCombination = "Add combination {id}"_phrase;
inline constexpr auto kEditChangeCombination = "Change combination {id}"_phrase;
inline constexpr auto kEditRemoveCombination = "Remove combination {id}"_phrase;
inline constexpr auto kEditCombinations = "Change combination"_phrase;
inline constexpr auto kEditAddMovingLoad = "Add moving load {id}"_phrase;
inline constexpr auto kEditChangeMovingLoad = "Change moving load {id}"_phrase;
inline constexpr auto kEditRemoveMovingLoad = "Remove moving load {id}"_phrase;
inline constexpr auto kEditMovingLoads = "Change moving load"_phrase;

inline constexpr auto kEditTitle = "Change title"_phrase;
inline constexpr auto kEditUnits = "Change units"_phrase;
inline constexpr auto kEditClassSettings = "Change class settings"_phrase;
inline constexpr auto kEditChecks = "Change how members are checked"_phrase;

} // namespace gusset::phrase
