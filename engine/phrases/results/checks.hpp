#pragma once
// Checks of members: the sheet.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kCheckCaption = "Utilisation of the members"_phrase;
inline constexpr auto kColumnCheck = "check"_phrase;
inline constexpr auto kColumnAllowed = "allowed"_phrase;
inline constexpr auto kColumnUse = "utilisation"_phrase;
inline constexpr auto kColumnSlenderness = "slenderness"_phrase;
inline constexpr auto kColumnRemark = "remark"_phrase;
inline constexpr auto kWordStrength = "strength"_phrase;
inline constexpr auto kWordBuckling = "buckling"_phrase;
inline constexpr auto kCheckUnderAll = "Under all loads together."_phrase;
inline constexpr auto kCheckUnder = "Under {loads}."_phrase;
inline constexpr auto kCheckOverChoices =
    "The worst of each member over {choices}, each by itself."_phrase;
inline constexpr auto kCheckByEuler =
    "Strength on the gross area divided by {strength}; of members in "
    "compression also Euler's critical force divided by {euler}, with K = {k}."_phrase;
inline constexpr auto kCheckByEn1993 =
    "By EN 1993-1-1, 6.2.3, 6.2.4 and 6.3.1: curve {curve}, γ_M0 = {m0}, "
    "γ_M1 = {m1}, K = {k}. The loads are to be design loads."_phrase;
inline constexpr auto kCheckByPhi =
    "By AISC 360-16, chapters D2(a) and E3: φ = {phi}, K = {k}. The loads are "
    "to be those of LRFD."_phrase;
inline constexpr auto kCheckByOmega =
    "By AISC 360-16, chapters D2(a) and E3: Ω = {omega}, K = {k}. The loads "
    "are to be those of ASD."_phrase;
inline constexpr auto kCheckNotSteel =
    "Not of steel, hence by strength divided by {strength} and Euler's "
    "critical force divided by {euler}: {members}."_phrase;
inline constexpr auto kCheckWorst =
    "Highest utilisation: member {member}, {use} by {check}."_phrase;
inline constexpr auto kCheckOver = "Carry more than allowed: {members}."_phrase;
inline constexpr auto kCheckSlender = "More slender than allowed: {members}."_phrase;
inline constexpr auto kCheckHolds =
    "No member carries more, or is more slender, than allowed."_phrase;
inline constexpr auto kCheckLacks = "Not checked, as there is no {what}: {members}."_phrase;
inline constexpr auto kCheckBends =
    "Bent too by loads between their joints, which is left out here: {members}."_phrase;
inline constexpr auto kCheckNothing =
    "Members are checked once the truss is stable and solved."_phrase;
inline constexpr auto kCheckPickOne = "Pick a member to see its check worked out."_phrase;
inline constexpr auto kLackArea = "area"_phrase;
inline constexpr auto kLackModulus = "modulus E"_phrase;
inline constexpr auto kLackRadius = "radius of gyration"_phrase;
inline constexpr auto kLackForce = "force that rounding leaves known"_phrase;
inline constexpr auto kRemarkOver = "more than allowed"_phrase;
inline constexpr auto kRemarkSlender = "λ over {limit}"_phrase;
inline constexpr auto kRemarkLacks = "no {what}"_phrase;
inline constexpr auto kRemarksBoth = "{a}; {b}"_phrase;
inline constexpr auto kCautionPreliminary =
    "Preliminary check only: each member alone, under the force along it."_phrase;
inline constexpr auto kCautionLeftOut =
    "Left out are connections, lateral restraint and sway of the top chord out of plane, bending, "
    "twisting and local buckling, fatigue, and whether the load combinations are the right ones."_phrase;
inline constexpr auto kCautionDecide = "Local codes and a licensed engineer decide."_phrase;
// On the board, beside a member.
inline constexpr auto kBoardUseOver = "{use} > 1"_phrase;
inline constexpr auto kBoardUseSlender = "{use}, λ > {limit}"_phrase;
inline constexpr auto kBoardUnknown = "?"_phrase;

} // namespace gusset::phrase
