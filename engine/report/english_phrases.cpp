// Every sentence in English. Another language is one more file like this one.

#include "report/phrases.hpp"

namespace gusset {
namespace {

struct Sentence {
    Phrase phrase;
    const char* text;
};

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
    {Phrase::UnstableAndRedundant,
     "In another place it has more than it needs: {redundants} too many there."},
    {Phrase::Indeterminate, "Statically indeterminate to degree {degree}: "
                            "{members} + {reactions} against 2 × {j} joints."},
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
    {Phrase::Determinate, "Statically determinate: {members} + {reactions} = 2 × {j} joints."},
    {Phrase::LargestTension, "Largest tension: {value} in {member}."},
    {Phrase::LargestCompression, "Largest compression: {value} in {member}."},
    {Phrase::AllForcesZero, "No member carries any force under these loads."},
    {Phrase::NotAccurate, "The truss is so close to being unstable that its forces can't be "
                          "computed to working accuracy."},

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

    {Phrase::CountThings, "{members}, {reactions}, {j} joints."},
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

    {Phrase::UnitLoadTitle, "Displacement of joint {joint} by a unit load"},
    {Phrase::UnitLoadOpening,
     "Put a unit load {direction} at {joint}, and nothing else: it gives the "
     "forces n. The given loads give the forces N."},
    {Phrase::UnitLoadTheorem, "The unit load does as much work on the displacement sought as the "
                              "forces n do on what each member grows, less what the reactions r "
                              "do on the settlements: 1\u00B7\u0394 = \u03A3 n\u00B7e "
                              "\u2212 \u03A3 r\u00B7\u03B4."},
    {Phrase::UnitLoadCaption, "What each member adds to the displacement"},
    {Phrase::SettlementCaption, "What the settlements add"},
    {Phrase::ColumnReaction, "Reaction"},
    {Phrase::Total, "Total"},
    {Phrase::MovesBy, "{joint} moves {size} {direction}."},
    {Phrase::DoesNotMove, "{joint} does not move in this direction."},
    {Phrase::UnitLoadNoWorking, "Equilibrium alone does not give the forces of this truss, "
                                "so the table can't be made."},
    {Phrase::UnitLoadNoStiffness,
     "E and A are needed of {members}: give each a section with an area "
     "and a material with E."},

    {Phrase::PolygonTitle, "Force polygon"},
    {Phrase::PolygonOpening,
     "Letters name the spaces around the truss, clockwise, and figures those "
     "between its members. Each space is a point of the polygon; the line "
     "between two points is the force that divides the two spaces."},
    {Phrase::PolygonCaption, "Lines of the force polygon, as they are drawn"},
    {Phrase::ColumnLine, "Line"},
    {Phrase::ColumnStandsFor, "Stands for"},
    {Phrase::LoadAt, "load at {joint}"},
    {Phrase::ReactionAt, "reaction at {joint}"},
    {Phrase::PolygonNoWorking, "Equilibrium alone does not give the forces of this truss, "
                               "so its polygon can't be drawn."},
    {Phrase::PolygonCrossing, "{a} and {b} cross without a joint, so they do not divide the plane "
                              "into spaces: this truss has no force polygon."},
    {Phrase::PolygonNotConnected, "No member ties {joint} to the rest of the truss, so the spaces "
                                  "around it can't be told apart."},
    {Phrase::PolygonForceInside,
     "At {joint} a force acts inside the truss, where it lies in no space "
     "of the outside: the polygon would not close around it."},

    {Phrase::EffectForce, "the force in {member}"},
    {Phrase::EffectMoveX, "the displacement of {joint} to the right"},
    {Phrase::EffectMoveY, "the displacement of {joint} upwards"},
    {Phrase::InfluenceBoth,
     "Influence line of {effect}, for a load of one that acts downwards: it reaches "
     "{high} at {highJoint} and {low} at {lowJoint}."},
    {Phrase::InfluenceOne, "Influence line of {effect}, for a load of one that acts downwards: "
                           "it reaches {value} at {joint}."},
    {Phrase::InfluenceNone, "Influence line of {effect}: it is zero wherever the load stands."},
    {Phrase::ColumnFromStart, "from the start"},
    {Phrase::ColumnOrdinate, "ordinate"},
    {Phrase::ColumnExactly, "exactly"},
    {Phrase::InfluenceAreas,
     "The area above the axis is {positive}, the area below it {negative}."},
    {Phrase::MovingHeading, "Loads that move along this path"},
    {Phrase::TrainAt, "{load}: {value}, with axle {axle} on {joint}, facing {way}"},
    {Phrase::UniformFromTo, "{load}, spread load: {value}, standing from {from} to {to}"},
    {Phrase::UniformWorst, "{load}, spread load: {value}, standing where it is worst"},
    {Phrase::NothingFrom, "{load}: nothing, wherever it stands"},
    {Phrase::FacingLeft, "left"},
    {Phrase::FacingRight, "right"},
    {Phrase::ReadOnJoint, "Load on {joint}, {distance} from {start}: {value}"},
    {Phrase::ReadBetween, "Load {distance} from {start}: {value}"},
    {Phrase::ReadAtStart, "Load on {start}: {value}"},
    {Phrase::EnvelopeCaption, "Greatest tension and compression of each member"},
    {Phrase::EnvelopeUnder, "Greatest tension and compression of each member under {load}"},
    {Phrase::EnvelopeOver, "Greatest tension and compression of each member under {choices}."},
    {Phrase::EnvelopeOfOne,
     "There is nothing to choose from: all loads act together. Under Model, give loads a case "
     "of their own each, as dead or wind, and add combinations of the cases; this page then shows "
     "which of them is worst for each member."},
    {Phrase::AxleOn, "{axle} on {joint} {way}"},
    {Phrase::PlacedFromTo, "{from} to {to}"},
    {Phrase::PlacedWorst, "worst place"},
    {Phrase::ColumnTension, "tension"},
    {Phrase::ColumnCompression, "compression"},
    {Phrase::ColumnGivenBy, "by"},

    {Phrase::PolygonScale, "1 cm = {force}"},
    {Phrase::PolygonSays, "Force polygon of {n} lines, drawn to the scale {scale}."},
    {Phrase::SpacesSays, "The truss with its forces, and its spaces lettered: {spaces}."},

    {Phrase::BodyWhole, "Free body of the whole truss: {forces}."},
    {Phrase::BodyOfJoint, "Free body of joint {joint}: {forces}."},
    {Phrase::BodyOfPart, "Free body of the part with {joints}: {forces}."},
    {Phrase::BodyForce, "{force}, drawn {direction}"},
    {Phrase::BodyLoad, "a load of {force} {direction}"},
    {Phrase::BodyNothing, "nothing acts on it"},

    {Phrase::TitleReleased, "The released truss"},
    {Phrase::TitleReleasedForces, "Forces of the released truss"},
    {Phrase::TitleDisplacements, "Displacements of the released truss"},
    {Phrase::TitleFits, "Fitting it together"},
    {Phrase::TitleSuperposition, "Superposition"},
    {Phrase::OneTooMany,
     "There is one more unknown than there are equations of equilibrium. One force must "
     "come from how the truss deforms: the redundant."},
    {Phrase::TwoTooMany,
     "There are two more unknowns than there are equations of equilibrium. Two forces "
     "must come from how the truss deforms: the redundants."},
    {Phrase::ReleaseRoller, "The truss would stand without the roller at {joint}. Take it away, "
                            "and put the redundant {x} = {reaction} in its place."},
    {Phrase::ReleasePin, "A roller would do in place of the pin at {joint}. Let it slide, and put "
                         "the redundant {x} = {reaction} there."},
    {Phrase::ReleaseCrossing, "{member} and {other} cross, and one of them would do. Cut "
                              "{member}, and call its force the redundant {x}."},
    {Phrase::ReleaseMember, "The truss would stand without {member}. Cut it, and call its force "
                            "the redundant {x}."},
    {Phrase::ReleasedByJoints, "What is left is statically determinate: one joint after the other "
                               "gives its forces."},
    {Phrase::ReleasedBySections, "What is left is statically determinate: joints and sections "
                                 "give its forces."},
    {Phrase::ReleasedTogether, "What is left is statically determinate, but some of its joints "
                               "have to be solved together."},
    {Phrase::GivenForces, "{n0} are the forces of the released truss under the given loads."},
    {Phrase::GivenNothing, "No load acts, so the forces {n0} of the released truss are zero."},
    {Phrase::UnitCut, "{n} are its forces when only {x} = 1 acts, pulling at both ends of the cut "
                      "in {member}."},
    {Phrase::UnitReaction, "{n} are its forces when only {x} = 1 acts, {direction} at {joint}."},
    {Phrase::FoundAsUsual, "They are found as in any statically determinate truss."},
    {Phrase::ReleasedForcesCaption, "Member forces of the released truss"},
    {Phrase::EqualStiffness, "EA is the same for all members and cancels in the end: the sums are "
                             "written EA times as large."},
    {Phrase::AssumedStiffness,
     "EA is not given. It is taken to be the same for all members; then it cancels in the end, "
     "and the sums are written EA times as large."},
    {Phrase::IndicesOne, "The first index of {d} says where it is measured, the second what causes "
                         "it: 0 what is given, 1 the redundant {x} = 1 alone."},
    {Phrase::IndicesTwo, "The first index of {d} says where it is measured, the second what causes "
                         "it: 0 what is given, 1 the redundant {x} = 1 alone, 2 the redundant "
                         "{y} = 1 alone."},
    {Phrase::PlaceCut, "At {i}: how far the ends at the cut in {member} overlap."},
    {Phrase::PlaceReaction, "At {i}: how far {joint} moves {direction}."},
    {Phrase::SumsCaption, "What each member adds to the displacements"},
    {Phrase::StrainsCaption, "What warming and misfit add"},
    {Phrase::EndsMeet, "In the whole truss {member} is not cut, and nothing overlaps there:"},
    {Phrase::HoldsStill, "In the whole truss the support holds {joint}, which does not move "
                         "{direction}:"},
    {Phrase::GivesWay, "In the whole truss {joint} moves with its support, {size} {direction}:"},
    {Phrase::SolveBoth, "Two equations for two redundants: solve them together."},
    {Phrase::EffectsAdd, "What is given and the redundants act together, so their forces "
                         "add up:"},
    {Phrase::SuperposedForces, "Member forces"},
    {Phrase::SuperposedReactions, "Reactions"},
    {Phrase::StiffnessAgrees, "Check: the same forces come out when the movements of all joints "
                              "are solved for instead."},
    {Phrase::StiffnessDiffers, "Check: solving for the movements of all joints instead gives "
                               "forces that differ by up to {number}."},
    {Phrase::NoRedundant, "The truss is statically determinate: there is no redundant, and "
                          "equilibrium alone gives its forces."},
    {Phrase::TooManyRedundants,
     "The truss has {degree} redundants. With more than two the equations are no longer written "
     "down by hand: let the table of results give the forces, or take something away first."},
    {Phrase::HeldTwice, "Supports hold {joint} twice in the same direction. How they share the "
                        "reaction does not depend on any member: take one of them away first."},
    {Phrase::NoRelease, "No member or reaction could be found whose release leaves a truss that "
                        "can be worked out by hand."},
};

constexpr bool complete() {
    std::size_t next = 0;
    for (const Sentence& sentence : kEnglish) {
        if (static_cast<std::size_t>(sentence.phrase) != next++) {
            return false;
        }
    }
    return next == static_cast<std::size_t>(Phrase::Count_);
}
static_assert(complete(), "a sentence for every phrase, in the order of the phrases");

constexpr PhraseBook makeEnglish() {
    PhraseBook book;
    for (const Sentence& sentence : kEnglish) {
        book.sentences[static_cast<std::size_t>(sentence.phrase)] = sentence.text;
    }
    return book;
}

} // namespace

const PhraseBook& englishPhrases() {
    static constexpr PhraseBook book = makeEnglish();
    return book;
}

} // namespace gusset
