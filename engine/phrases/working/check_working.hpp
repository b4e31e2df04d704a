#pragma once
// Checks of members: one check worked as on paper.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kCheckTitle = "Check of member {member}"_phrase;
inline constexpr auto kCheckPulled = "It is pulled by {force}."_phrase;
inline constexpr auto kCheckPressed = "It is pressed by {force}."_phrase;
inline constexpr auto kCheckIdle =
    "It carries no force: there is nothing to check but its slenderness."_phrase;
inline constexpr auto kCheckGiven = "Given:"_phrase;
inline constexpr auto kCheckStrengthLine = "Strength on the gross area:"_phrase;
inline constexpr auto kCheckSlendernessLine = "Slenderness, by the weak axis:"_phrase;
inline constexpr auto kCheckNetLine = "Strength on the net area, less the holes:"_phrase;
inline constexpr auto kCheckNetLineEn =
    "Net area, less the holes, and what it carries by EN 1993-1-1, 6.2.3 (6.7):"_phrase;
inline constexpr auto kCheckNetLineAisc =
    "Net area, less the holes, and what it carries by AISC 360-16, (D2-2) and (D3-1):"_phrase;
inline constexpr auto kCheckNetLineTimber =
    "Net area, less the holes, and what it carries by EN 1995-1-1, 5.2 and 6.1.2:"_phrase;
inline constexpr auto kCheckInPlaneLine = "Slenderness in the plane of the truss:"_phrase;
inline constexpr auto kCheckOutOfPlaneLine =
    "Slenderness out of that plane, between joints that are held:"_phrase;
inline constexpr auto kCheckTiedLine =
    "The latter as two angles that are connected now and then, AISC 360-16, (E6-2):"_phrase;
inline constexpr auto kCheckInGoverns = "The slenderness in the plane governs."_phrase;
inline constexpr auto kCheckOutGoverns = "The slenderness out of the plane governs."_phrase;
inline constexpr auto kCheckNoPacking =
    "No distance between packings is stated; the two angles are counted as one piece."_phrase;
inline constexpr auto kCheckCloseEn =
    "Its packings are not more than 15 i_min apart: by EN 1993-1-1, 6.4.4 it is one piece."_phrase;
inline constexpr auto kCheckFarEn =
    "Its packings are more than 15 i_min apart: by EN 1993-1-1, 6.4.4 it is not one piece, which "
    "is not covered."_phrase;
inline constexpr auto kCheckCloseAisc =
    "Its connectors are as close as AISC 360-16, E6.2 asks: a / r_i is not more than 3/4 of the "
    "slenderness."_phrase;
inline constexpr auto kCheckFarAisc =
    "Its connectors are farther apart than AISC 360-16, E6.2 allows, which is not covered."_phrase;
inline constexpr auto kCheckIsClass =
    "In compression it is of class {class} by EN 1993-1-1, table 5.2."_phrase;
inline constexpr auto kCheckIsClass4 =
    "In compression it is of class 4 by EN 1993-1-1, table 5.2: the width of a part, or its "
    "diameter, is {ratio} times its thickness, more than {limit}. Its walls may buckle first, "
    "which "
    "is not covered: less is allowed than this."_phrase;
inline constexpr auto kCheckNoSlenderElement =
    "No element is slender by AISC 360-16, table B4.1a."_phrase;
inline constexpr auto kCheckIsSlenderElement =
    "It has a slender element by AISC 360-16, table B4.1a: its width or diameter is {ratio} times "
    "its thickness, more than {limit}. E7 is not covered: less is allowed than this."_phrase;
inline constexpr auto kCheckTimberLine =
    "Relative slenderness and reduction k_c by EN 1995-1-1, 6.3.2, β_c = {beta}:"_phrase;
inline constexpr auto kCheckTimberShort = "Up to λ_rel = 0.3 buckling need not be counted."_phrase;
inline constexpr auto kCheckReversed =
    "Under other of these loads its force is of the other sense."_phrase;
inline constexpr auto kCheckSlenderEnough = "That is not more than {limit}."_phrase;
inline constexpr auto kCheckTooSlender = "That is more than {limit}: too slender."_phrase;
inline constexpr auto kCheckNoLimit = "No limit is set for it."_phrase;
inline constexpr auto kCheckEulerLine = "Euler's critical stress and force:"_phrase;
inline constexpr auto kCheckElasticLine = "Elastic critical stress:"_phrase;
inline constexpr auto kCheckReductionLine =
    "Relative slenderness λ_r and reduction χ by curve {curve}, α = {alpha}:"_phrase;
inline constexpr auto kCheckPlateau = "Up to λ_r = 0.2 buckling need not be counted."_phrase;
inline constexpr auto kCheckInelastic = "F_y / F_e is not more than 2.25:"_phrase;
inline constexpr auto kCheckElastic = "F_y / F_e is more than 2.25:"_phrase;
inline constexpr auto kCheckBucklingLine = "Buckling allows:"_phrase;
inline constexpr auto kCheckGoverns = "The smaller of the two governs: {check}."_phrase;
inline constexpr auto kCheckUseHolds = "Not more than 1: it holds."_phrase;
inline constexpr auto kCheckUseOver = "More than 1: it does not hold."_phrase;

} // namespace gusset::phrase
