#pragma once
// The English of checks of members. english_phrases.cpp alone includes this.

#include "report/text/phrase_table.hpp"

namespace gusset {

inline constexpr Sentence kEnglishChecks[] = {
    {Phrase::CheckCaption, "Use of the members"},
    {Phrase::ColumnCheck, "check"},
    {Phrase::ColumnAllowed, "allowed"},
    {Phrase::ColumnUse, "use"},
    {Phrase::ColumnSlenderness, "slenderness"},
    {Phrase::ColumnRemark, "remark"},
    {Phrase::WordStrength, "strength"},
    {Phrase::WordBuckling, "buckling"},
    {Phrase::CheckUnderAll, "Under all loads together."},
    {Phrase::CheckUnder, "Under {loads}."},
    {Phrase::CheckOverChoices, "The worst of each member over {choices}, each by itself."},
    {Phrase::CheckByEuler,
     "Strength on the gross area divided by {strength}; of members in "
     "compression also Euler's critical force divided by {euler}, with K = {k}."},
    {Phrase::CheckByEn1993, "By EN 1993-1-1, 6.2.3, 6.2.4 and 6.3.1: curve {curve}, γ_M0 = {m0}, "
                            "γ_M1 = {m1}, K = {k}. The loads are to be design loads."},
    {Phrase::CheckByPhi, "By AISC 360-16, chapters D2(a) and E3: φ = {phi}, K = {k}. The loads are "
                         "to be those of LRFD."},
    {Phrase::CheckByOmega, "By AISC 360-16, chapters D2(a) and E3: Ω = {omega}, K = {k}. The loads "
                           "are to be those of ASD."},
    {Phrase::CheckNotSteel, "Not of steel, hence by strength divided by {strength} and Euler's "
                            "critical force divided by {euler}: {members}."},
    {Phrase::CheckWorst, "Most used: member {member}, {use} by {check}."},
    {Phrase::CheckOver, "Used more than allowed: {members}."},
    {Phrase::CheckSlender, "More slender than allowed: {members}."},
    {Phrase::CheckHolds, "No member is used more, or more slender, than allowed."},
    {Phrase::CheckLacks, "Not checked, as there is no {what}: {members}."},
    {Phrase::CheckBends,
     "Bent too by loads between their joints, which is left out here: {members}."},
    {Phrase::CheckNothing, "Members are checked once the truss is stable and solved."},
    {Phrase::CheckPickOne, "Pick a member to see its check worked out."},
    {Phrase::LackArea, "area"},
    {Phrase::LackStrength, "strength"},
    {Phrase::LackModulus, "modulus E"},
    {Phrase::LackRadius, "radius of gyration"},
    {Phrase::LackForce, "force that rounding leaves known"},
    {Phrase::RemarkOver, "more than allowed"},
    {Phrase::RemarkSlender, "λ over {limit}"},
    {Phrase::RemarkLacks, "no {what}"},
    {Phrase::RemarksBoth, "{a}; {b}"},
    {Phrase::CautionPreliminary,
     "Preliminary check only: each member alone, under the force along it."},
    {Phrase::CautionLeftOut,
     "Left out are connections, lateral restraint and sway of the top chord out of plane, bending, "
     "twisting and local buckling, fatigue, and whether the load combinations are the right ones."},
    {Phrase::CautionDecide, "Local codes and a licensed engineer decide."},
    {Phrase::BoardUseOver, "{use} > 1"},
    {Phrase::BoardUseSlender, "{use}, λ > {limit}"},
    {Phrase::BoardUnknown, "?"},

    {Phrase::CheckTitle, "Check of member {member}"},
    {Phrase::CheckPulled, "It is pulled by {force}."},
    {Phrase::CheckPressed, "It is pressed by {force}."},
    {Phrase::CheckIdle, "It carries no force: there is nothing to check but its slenderness."},
    {Phrase::CheckGiven, "Given:"},
    {Phrase::CheckStrengthLine, "Strength on the gross area:"},
    {Phrase::CheckSlendernessLine, "Slenderness, by the weak axis:"},
    {Phrase::CheckSlenderEnough, "That is not more than {limit}."},
    {Phrase::CheckTooSlender, "That is more than {limit}: too slender."},
    {Phrase::CheckNoLimit, "No limit is set for it."},
    {Phrase::CheckEulerLine, "Euler's critical stress and force:"},
    {Phrase::CheckElasticLine, "Elastic critical stress:"},
    {Phrase::CheckReductionLine,
     "Relative slenderness λ_r and reduction χ by curve {curve}, α = {alpha}:"},
    {Phrase::CheckPlateau, "Up to λ_r = 0.2 buckling need not be counted."},
    {Phrase::CheckInelastic, "F_y / F_e is not more than 2.25:"},
    {Phrase::CheckElastic, "F_y / F_e is more than 2.25:"},
    {Phrase::CheckBucklingLine, "Buckling allows:"},
    {Phrase::CheckGoverns, "The smaller of the two governs: {check}."},
    {Phrase::CheckUseHolds, "Not more than 1: it holds."},
    {Phrase::CheckUseOver, "More than 1: it does not hold."},
};

} // namespace gusset
