#pragma once
// What kind of truss it is, why it has no forces, and how to cure it.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kNoMember = "There is no member yet: join two joints."_phrase;
inline constexpr auto kNoSupport = "The truss has no support, so any load carries it off. "
                                   "Give it a pin and a roller."_phrase;
inline constexpr auto kLooseJoint =
    "Joint {joint} has no member: join it to the truss or delete it."_phrase;
inline constexpr auto kLooseJoints =
    "Joints {joints} have no member: join them to the truss or delete them."_phrase;
inline constexpr auto kUnstableTooFew = "Unstable: members and reactions are {m} + {r} = {sum}, "
                                        "and 2 × {j} joints need {need}: {missing} too few."_phrase;
inline constexpr auto kUnstableEnough =
    "Unstable: members and reactions are enough in number "
    "(m + r = {m} + {r}, 2j = 2 × {j}), but not in the right places."_phrase;
inline constexpr auto kBalancedAnyway =
    "These loads happen to be in balance on it. The forces given hold for "
    "exactly these loads; any other would set it moving."_phrase;
inline constexpr auto kAtRest =
    "The truss is a mechanism on which these loads happen to be in balance: the "
    "forces hold for exactly these loads, and any other would set it moving."_phrase;
inline constexpr auto kUnstableAndRedundant =
    "Elsewhere it has {redundants} more than it needs."_phrase;
inline constexpr auto kIndeterminate = "Statically indeterminate to degree {degree}: "
                                       "{members} + {reactions} against 2 × {joints}."_phrase;
inline constexpr auto kIndeterminateExternal =
    "The supports hold {external} more than is needed."_phrase;
inline constexpr auto kIndeterminateInternal =
    "Inside, it has {internal} more than is needed."_phrase;
inline constexpr auto kIndeterminateBoth =
    "The supports hold {external}, and the members {internal}, "
    "more than is needed."_phrase;
inline constexpr auto kNeedsStiffness =
    "Equilibrium alone does not determine the forces: they depend on the stiffness of each member."_phrase;
inline constexpr auto kWithoutThese =
    "It would be determinate without {list}, for instance."_phrase;
inline constexpr auto kWithoutTheseAndMore =
    "It would be determinate without {list} and {n} more, for instance."_phrase;
inline constexpr auto kReactionAlong = "the roller at {joint}"_phrase;
inline constexpr auto kReactionX = "the horizontal reaction at {joint}"_phrase;
inline constexpr auto kReactionY = "the vertical reaction at {joint}"_phrase;
inline constexpr auto kTheMember = "member {member}"_phrase;
inline constexpr auto kDeterminate =
    "Statically determinate: {members} + {reactions} = 2 × {joints}."_phrase;
inline constexpr auto kLargestTension = "Largest tension: {value} in {members}."_phrase;
inline constexpr auto kLargestCompression = "Largest compression: {value} in {members}."_phrase;
inline constexpr auto kAllForcesZero = "No member carries any force under these loads."_phrase;

} // namespace gusset::phrase
