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
inline constexpr auto kWordNet = "net section"_phrase;
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
inline constexpr auto kCheckByEn1995 =
    "Of timber, by EN 1995-1-1, 6.1.2, 6.1.4 and 6.3.2, with k_mod = {k}, γ_M = {gamma} and "
    "β_c = {beta}: {members}."_phrase;
inline constexpr auto kCheckNetEn1993 =
    "With holes, in tension also on the net area by EN 1993-1-1, 6.2.3, γ_M2 = {m2}: {members}."_phrase;
inline constexpr auto kCheckNetAisc =
    "With holes, in tension also on the net area by AISC 360-16, chapters D2(b) and D3: "
    "{members}."_phrase;
inline constexpr auto kCheckNetOther =
    "With holes, in tension also on the net area: {members}."_phrase;
inline constexpr auto kCheckHeld =
    "Out of the plane of the truss, members buckle between joints that are held there: {joints}."_phrase;
inline constexpr auto kCheckNoneHeld =
    "Out of the plane of the truss no joint is held: members buckle over their whole run."_phrase;
inline constexpr auto kCheckOwnFactors = "With factors K of their own: {members}."_phrase;
inline constexpr auto kCheckReverses =
    "Pulled under some of these loads and pressed under others: {members}."_phrase;
inline constexpr auto kCheckClass4 =
    "Of class 4 by EN 1993-1-1, table 5.2: their walls may buckle first, which is not covered, so "
    "that less than this is allowed: {members}."_phrase;
inline constexpr auto kCheckSlenderElements =
    "With slender elements by AISC 360-16, table B4.1a: their walls may buckle first (E7), which "
    "is not covered, so that less than this is allowed: {members}."_phrase;
inline constexpr auto kCheckPackingUnknown =
    "Counted as one piece, though no distance between their packings is stated: {members}."_phrase;
inline constexpr auto kCheckPackingFarEn =
    "Packed at more than 15 i_min, so that EN 1993-1-1, 6.4.4 does not count them as one piece, "
    "and less than this is allowed: {members}."_phrase;
inline constexpr auto kCheckPackingFarAisc =
    "Connected at distances beyond AISC 360-16, E6.2, so that less than this is allowed: "
    "{members}."_phrase;
inline constexpr auto kCheckMoves =
    "Joint {joint} moves farthest, by {moved}. That is not more than {allowed}, the span of {span} "
    "over {x}."_phrase;
inline constexpr auto kCheckMovesTooFar = "Joint {joint} moves farthest, by {moved}. That is more "
                                          "than {allowed}, the span of {span} over "
                                          "{x}."_phrase;
inline constexpr auto kCheckMovesNot = "No joint moves."_phrase;
inline constexpr auto kCheckMovesUnknown =
    "How far joints move is not checked: it takes E and area of every member, and two supports "
    "apart."_phrase;
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
inline constexpr auto kLackUltimate = "tensile strength f_u"_phrase;
inline constexpr auto kLackHoleDepth = "shape to tell the depth of its holes"_phrase;
inline constexpr auto kLackAlong = "strength along the grain"_phrase;
inline constexpr auto kLackModulus05 = "modulus E_0,05"_phrase;
inline constexpr auto kRemarkOver = "more than allowed"_phrase;
inline constexpr auto kRemarkSlender = "λ over {limit}"_phrase;
inline constexpr auto kRemarkLacks = "no {what}"_phrase;
inline constexpr auto kRemarkClass4 = "class 4"_phrase;
inline constexpr auto kRemarkSlenderElement = "slender element"_phrase;
inline constexpr auto kRemarkPackingUnknown = "packing not stated"_phrase;
inline constexpr auto kRemarkPackingFar = "packing too far apart"_phrase;
inline constexpr auto kRemarkReverses = "reverses"_phrase;
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
