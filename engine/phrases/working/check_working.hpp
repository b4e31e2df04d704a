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
