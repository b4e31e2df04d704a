// Every sentence in English. Another language is one more file like this one.

#include "report/text/english_checks.hpp"
#include "report/text/english_methods.hpp"
#include "report/text/english_results.hpp"

namespace gusset {
namespace {

constexpr Sentence kEnglish[] = {
    {Phrase::ListTwo, "{a} and {b}"},
    {Phrase::ListMore, "{a}, {b}"},
    {Phrase::OneMember, "1 member"},
    {Phrase::ManyMembers, "{n} members"},
    {Phrase::OneReaction, "1 reaction"},
    {Phrase::ManyReactions, "{n} reactions"},

    {Phrase::NothingDrawn, "Nothing is drawn yet. Draw a member: joints appear at its ends."},
    {Phrase::NoMember, "There is no member yet: join two joints."},
    {Phrase::NoSupport, "The truss has no support, so any load carries it off. "
                        "Give it a pin and a roller."},
    {Phrase::LooseJoint, "Joint {joint} has no member: join it to the truss or delete it."},
    {Phrase::LooseJoints, "Joints {joints} have no member: join them to the truss or delete them."},
    {Phrase::UnstableTooFew, "Unstable: members and reactions are {m} + {r} = {sum}, "
                             "and 2 × {j} joints need {need}: {missing} too few."},
    {Phrase::UnstableEnough, "Unstable: members and reactions are enough in number "
                             "(m + r = {m} + {r}, 2j = 2 × {j}), but not in the right places."},
    {Phrase::BalancedAnyway, "These loads happen to be in balance on it. The forces given hold for "
                             "exactly these loads; any other would set it moving."},
    {Phrase::AtRest, "The truss is a mechanism on which these loads happen to be in balance: the "
                     "forces hold for exactly these loads, and any other would set it moving."},
    {Phrase::UnstableAndRedundant,
     "In another place it has more than it needs: {redundants} too many there."},
    {Phrase::Indeterminate, "Statically indeterminate to degree {degree}: "
                            "{members} + {reactions} against 2 × {joints}."},
    {Phrase::IndeterminateExternal, "The supports hold {external} more than is needed."},
    {Phrase::IndeterminateInternal, "Inside, it has {internal} more than is needed."},
    {Phrase::IndeterminateBoth, "The supports hold {external}, and the members {internal}, "
                                "more than is needed."},
    {Phrase::NeedsStiffness, "Equilibrium alone leaves the forces open: "
                             "how stiff each member is decides them."},
    {Phrase::WithoutThese, "It would be determinate without {list}, for instance."},
    {Phrase::WithoutTheseAndMore,
     "It would be determinate without {list} and {n} more, for instance."},
    {Phrase::ReactionAlong, "the roller at {joint}"},
    {Phrase::ReactionX, "the horizontal reaction at {joint}"},
    {Phrase::ReactionY, "the vertical reaction at {joint}"},
    {Phrase::TheMember, "member {member}"},
    {Phrase::Determinate, "Statically determinate: {members} + {reactions} = 2 × {joints}."},
    {Phrase::LargestTension, "Largest tension: {value} in {member}."},
    {Phrase::LargestCompression, "Largest compression: {value} in {member}."},
    {Phrase::AllForcesZero, "No member carries any force under these loads."},
    {Phrase::NotAccurate, "The truss is so close to being unstable that its forces can't be "
                          "computed to working accuracy."},
    {Phrase::StiffnessesDiffer,
     "The forces depend on the stiffness of every member, and these differ too much to compute "
     "them: E·A of member {member} is {times} times the median of all members. Are its E and A in "
     "the right units?"},
    {Phrase::StandsOut,
     "E·A of member {member} is {times} times the median of all members: are its "
     "E and A in the right units?"},
    {Phrase::CloseToMechanism,
     "Close to a mechanism at joint {joint}: a load of 1 there can cause a force of {times} in "
     "member {member}. A small change of shape changes the forces greatly."},
    {Phrase::CloseToMechanismReaction,
     "Close to a mechanism at joint {joint}: a load of 1 there can cause a reaction of {times}. "
     "A small change of shape changes the forces greatly."},
    {Phrase::BarelyHeld,
     "The coordinates do hold joint {joint}, but so weakly that a load of 1 would "
     "cause forces of about {times}: it counts as free to move."},
    {Phrase::FiguresLeft,
     "Rounding leaves {n} figures of the largest force; what stands behind the "
     "last of them is not shown in any force."},
    {Phrase::OrdinateFiguresLeft,
     "Rounding leaves {n} figures of the largest ordinate; what stands behind the last of them is "
     "not shown in any ordinate."},
    {Phrase::NoOrdinateFigures, "Rounding may put the ordinates off by more than their own size: "
                                "what is shown says nothing of this line."},
    {Phrase::MovementFiguresLeft,
     "Rounding leaves {n} figures of the largest displacement and fewer of small ones; what stands "
     "behind the last of them is not shown in any displacement."},
    {Phrase::ForceBelowBound,
     "The force in member {member} is smaller than rounding may put it off by, {bound}: it is "
     "written 0, and whether it is tension or compression is open."},
    {Phrase::ForcesBelowBound,
     "The forces in {n} members, {member} among them, are smaller than rounding may put them off "
     "by, {bound}: they are written 0, and whether they are tension or compression is open."},
    {Phrase::ReactionBelowBound,
     "Part of the reaction at {joint} is smaller than rounding may put it off by, {bound}: it is "
     "written 0."},
    {Phrase::ReactionsBelowBound,
     "Parts of {n} reactions, that at {joint} among them, are smaller than rounding may put them "
     "off by, {bound}: they are written 0."},
    {Phrase::OneNegligible, "One force or reaction is smaller than a billionth of the largest "
                            "load, reaction or force: it is written 0."},
    {Phrase::SomeNegligible, "{n} forces or reactions are smaller than a billionth of the largest "
                             "load, reaction or force: they are written 0."},
    {Phrase::FiguresInWorking,
     "Rounding may put any force by {bound} off: figures of this working that are smaller than "
     "that say nothing."},
    {Phrase::Residual, "Equilibrium at every joint is met to {residual} of the largest force; "
                       "rounding puts no force off by more than about {error} of it."},
    {Phrase::ResidualNone, "Equilibrium at every joint is met in every figure computed; "
                           "rounding puts no force off by more than about {error} of the largest."},
    {Phrase::ResidualOfNothing, "No force acts at any joint: there is nothing to balance."},

    {Phrase::MemberForcesCaption, "Member forces in {unit}"},
    {Phrase::MemberForcesCaptionPlain, "Member forces"},
    {Phrase::ReactionsCaption, "Reactions on the truss in {unit}, positive to the right and up"},
    {Phrase::ReactionsCaptionPlain, "Reactions on the truss, positive to the right and up"},
    {Phrase::ColumnMember, "Member"},
    {Phrase::ColumnForce, "Force"},
    {Phrase::ColumnSense, "Sense"},
    {Phrase::ColumnJoint, "Joint"},
    {Phrase::WordTension, "tension"},
    {Phrase::WordCompression, "compression"},
    {Phrase::WordZero, "zero"},
    {Phrase::NotesHeading, "Notes"},
    {Phrase::MovementCaption,
     "Displacements of the joints in {unit}, positive to the right and up"},
    {Phrase::MovementCaptionPlain, "Displacements of the joints, positive to the right and up"},
    {Phrase::StretchCaption, "Members: change of length, positive longer, and stress"},
    {Phrase::ColumnTotal, "Total"},
    {Phrase::ColumnStretch, "Change of length"},
    {Phrase::ColumnStress, "Stress"},
    {Phrase::LargestDisplacement, "Largest displacement: {value} at joint {joint}."},
    {Phrase::StrainEnergy, "Strain energy: {value}."},
    {Phrase::NoDisplacements, "For displacements every member needs a section with its area and "
                              "a material with its E."},
    {Phrase::DisplacementsLost,
     "Rounding leaves fewer than three figures of the displacements, so none are given: the truss "
     "is too close to being unstable, or its stiffnesses differ too much."},
    {Phrase::DrawnEnlarged, "Displacements drawn {times}"},
    {Phrase::PickForce,
     "Touch a member or a support on the board: the shortest way to its force is shown here. "
     "With two or more members picked, a section is taken through them."},
    {Phrase::PickJoint, "Touch a joint on the board: its displacement is worked out here."},
    {Phrase::NothingMoves, "No joint moves under these loads."},

    {Phrase::Up, "up"},
    {Phrase::Down, "down"},
    {Phrase::Left, "to the left"},
    {Phrase::Right, "to the right"},
    {Phrase::UpLeft, "up to the left"},
    {Phrase::UpRight, "up to the right"},
    {Phrase::DownLeft, "down to the left"},
    {Phrase::DownRight, "down to the right"},

    {Phrase::TitleCounting, "Count"},
    {Phrase::TitleWholeBody, "The whole truss"},
    {Phrase::TitleMoments, "Moments about {joint}"},
    {Phrase::TitleSum, "{sum} of the whole truss"},
    {Phrase::TitleReactionsTogether, "Reactions together"},
    {Phrase::TitleSlopes, "Slopes"},
    {Phrase::TitleIdle, "Zero force at {joint}"},
    {Phrase::TitleIdleNone, "Zero-force members"},
    {Phrase::TitleSymmetry, "Symmetry"},
    {Phrase::TitleJoint, "Joint {joint}"},
    {Phrase::TitleJointSum, "Joint {joint}, {sum}"},
    {Phrase::TitleJointTogether, "Joint {joint}, both sums"},
    {Phrase::TitleApart, "Apart at {joint}"},
    {Phrase::TitleSection, "Section"},
    {Phrase::TitleCut, "Section through {members}"},
    {Phrase::TitleCutSum, "Section, {sum}"},
    {Phrase::TitleCutMoments, "Section, moments about {joint}"},
    {Phrase::TitleJointsTogether, "Joints {joints} together"},
    {Phrase::TitleCheck, "Check"},
    {Phrase::TitleSummary, "All forces"},

    {Phrase::CountThings, "{members}, {reactions}, {joints}."},
    {Phrase::CountDeterminate, "Each joint gives two equations: as many as there are unknowns. "
                               "The truss is statically determinate."},
    {Phrase::CountIndeterminate, "More unknowns than equations of equilibrium, by {degree}: "
                                 "the truss is statically indeterminate. The working by "
                                 "equilibrium alone ends here."},
    {Phrase::CountMechanism, "The truss can move without any member changing its length. "
                             "It has to be made stable before its forces can be found."},
    {Phrase::CountBalanced, "The truss can move, but these loads happen to be in balance on it: "
                            "the working holds for exactly these loads."},

    {Phrase::TakeOffSupports, "Take the whole truss off its supports and put their forces there "
                              "instead."},
    {Phrase::PinGives, "The pin at {joint} gives {x} and {y}."},
    {Phrase::RollerGives, "The roller at {joint} gives {r}, drawn {direction}."},
    {Phrase::LoadOneWay, "Load at {joint}: {size} {direction}."},
    {Phrase::LoadTwoWays, "Load at {joint}: {size} {direction} and {size2} {direction2}."},
    {Phrase::AngleToHorizontal, "{r} is inclined to the horizontal at"},
    {Phrase::MomentsClockwise, "Moments count positive clockwise."},
    {Phrase::MomentsAnticlockwise, "Moments count positive anticlockwise."},
    {Phrase::MoreThanThree, "{reactions} are more than the three equations of the whole truss can "
                            "give: parts of it must be looked at."},
    {Phrase::NothingActs, "No load acts, so every reaction and every member force is zero."},

    {Phrase::MomentCentre, "{through} pass through {joint} and drop out, which leaves {left}."},
    {Phrase::MomentCentreThroughOne, "{through} passes through {joint} and drops out, "
                                     "which leaves {left}."},
    {Phrase::MomentCentreOne, "Only {left} turns about {joint} without being known."},
    {Phrase::CentreOffTruss, "The lines of {through} meet at {centre}, {place}. "
                             "Moments about {centre} leave {left}."},
    {Phrase::PlaceOfCentre, "{dx} {right} and {dy} {up} of {joint}"},
    {Phrase::SumLeavesOne, "This sum holds only {left}."},
    {Phrase::SumAcrossOne, "Across {others}, in the direction n, only {left} is left."},
    {Phrase::SumAcrossSeveral, "{others} are parallel. Across them, in the direction n, "
                               "only {left} is left."},
    {Phrase::ReactionsTogether, "No equation of the whole truss holds only one of {reactions}: "
                                "solve them together."},
    {Phrase::TakenApart, "Joint {joint} holds the parts together like a hinge: no moment passes "
                         "through it. Take the truss apart there and look at {joints}."},
    {Phrase::PartAndWhole, "Moments of this part about the hinge, and of the whole truss about "
                           "the far support, hold the same two unknowns, {unknowns}: "
                           "solve them together."},
    {Phrase::WholeMoments, "The whole truss about {joint}:"},
    {Phrase::PartMoments, "The part {joints} about {joint}:"},
    {Phrase::ActsOtherWay, "{symbol} is negative: it acts the other way, {direction}."},

    {Phrase::AngleIsOf, "{angle} is the slope of {members}."},
    {Phrase::SlopeIsOf, "The slope of {members}:"},
    {Phrase::NoInclined, "Every member is horizontal or vertical: no angles are needed."},
    {Phrase::RiseOverLength, "rise over length"},
    {Phrase::RunOverLength, "run over length"},

    {Phrase::IdleTwo, "At {joint} only {a} and {b} meet, not in line, and nothing else acts: "
                      "both are zero."},
    {Phrase::IdleThird, "At {joint} nothing else acts, and {a} and {b} are in line: "
                        "nothing can balance {idle} across them, so it is zero."},
    {Phrase::IdleBesideLoad, "At {joint} all that acts from outside is in line with {a}: "
                             "nothing can balance {idle} across it, so it is zero."},
    {Phrase::IdleLone, "At {joint} only {idle} is left, and nothing else acts: it is zero."},
    {Phrase::IdleNone, "No member can be seen to be zero before calculating."},

    {Phrase::Symmetric, "The truss, its loads and its reactions are the same on both sides of the "
                        "middle. Members that mirror each other carry the same force, so one "
                        "half is enough."},
    {Phrase::BySymmetry, "The other side mirrors {symbols}."},

    {Phrase::JointOneUnknown, "One unknown: {unknown}."},
    {Phrase::JointTwoUnknowns, "Two unknowns: {unknowns}."},
    {Phrase::AssumedAway, "Draw unknown member forces pulling. A positive answer is then tension, "
                          "a negative one compression."},
    {Phrase::AssumedGuessed, "Draw each unknown force in the sense that you expect. "
                             "A negative answer says that it acts the other way."},
    {Phrase::NegativeForce, "{symbol} is negative: drawn pulling, it pushes. "
                            "{member} is in compression."},
    {Phrase::BothInclined, "Both sums hold {unknowns}: solve the two together."},
    {Phrase::NoEasyJoint, "Every joint that is left has more than two unknowns: "
                          "one joint at a time goes no further."},
    {Phrase::NoEasySection, "Nor has any section an equation with only one unknown."},
    {Phrase::CutLeft, "Cut {members} and look at the part on the left: {joints}."},
    {Phrase::CutRight, "Cut {members} and look at the part on the right: {joints}."},
    {Phrase::CutUpper, "Cut {members} and look at the upper part: {joints}."},
    {Phrase::CutLower, "Cut {members} and look at the lower part: {joints}."},
    {Phrase::CutPart, "Cut {members} and look at the part with {joints}."},
    {Phrase::NoWorking, "Equilibrium alone does not give the forces of this truss, "
                        "so no section can."},
    {Phrase::NoSectionFor, "No section has an equation that holds {member} alone: "
                           "find it by joints."},
    {Phrase::NotTwoParts, "Taking out {members} does not leave the truss in two parts."},
    {Phrase::TooManyCut, "The cut through {members} leaves {n} unknowns, and no equation of either "
                         "part holds one of them alone."},
    {Phrase::TryCut, "A cut through {members} would give {symbol}."},
    {Phrase::SimultaneousOne, "Joint {joint} gives {n} equations for {unknowns}: "
                              "solve them together."},
    {Phrase::Simultaneous, "Joints {joints} together give {n} equations for {unknowns}: "
                           "solve them together."},
    {Phrase::AtJoint, "At {joint}"},

    {Phrase::CheckLeftOver, "Equations that were not needed must balance by themselves."},
    {Phrase::CheckCloses, "They do: the working closes."},
    {Phrase::CheckDoesNot, "They miss by {number} at most: that is the rounding carried along."},
    {Phrase::SummaryReactions, "Reactions"},
    {Phrase::SummaryForces, "Member forces"},
    {Phrase::NotComplete, "The working could not be brought to an end: what is not listed was "
                          "not found."},
};

static_assert(isComplete(kEnglish, kEnglishMethods, kEnglishResults, kEnglishChecks),
              "a sentence for every phrase, in the order of the phrases");

} // namespace

const PhraseBook& englishPhrases() {
    static constexpr PhraseBook book =
        bookOf(kEnglish, kEnglishMethods, kEnglishResults, kEnglishChecks);
    return book;
}

} // namespace gusset
