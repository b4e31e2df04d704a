#pragma once
// The English sentences of the methods that go beyond one working: displacements, force polygon,
// influence lines, force method. The rest stands in english_phrases.cpp, which alone includes this.

#include "report/text/phrase_table.hpp"

namespace gusset {

inline constexpr Sentence kEnglishMethods[] = {
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
    {Phrase::EnvelopeOver,
     "Greatest tension and compression of each member under the cases {choices}, each alone."},
    {Phrase::EnvelopeOfCombinations,
     "Greatest tension and compression of each member under the combinations {choices}."},
    {Phrase::EnvelopeOfOneCombination,
     "Tension and compression of each member under {combination}, the only combination."},
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
    {Phrase::TitleInfluence, "Influence line of {effect}"},
    {Phrase::LoadMoves, "Let a load of 1, acting down, move along {joints}. What {effect} is when "
                        "the load stands at a joint is the ordinate there. Between two joints the "
                        "line is straight, for stringers hand the load on to both."},
    {Phrase::ReactionPositive, "Positive ordinates act {direction}."},
    {Phrase::JointForAll, "Wherever the load stands, joint {joint} has an equation in which "
                          "{effect} is the only unknown."},
    {Phrase::CutForAll, "Cut {members}, and leave the cut where it is. While the load stands on "
                        "one part, look at the other, which carries none."},
    {Phrase::TitleLoadAt, "Load at {joint}"},
    {Phrase::LookLeft, "Look at the part on the left: {joints}."},
    {Phrase::LookRight, "Look at the part on the right: {joints}."},
    {Phrase::LookUpper, "Look at the upper part: {joints}."},
    {Phrase::LookLower, "Look at the lower part: {joints}."},
    {Phrase::LookPart, "Look at the part with {joints}."},
    {Phrase::TitleOrdinates, "Ordinates"},
    {Phrase::OrdinatesCaption, "Ordinates of {effect}"},
    {Phrase::TitleShape, "Shape"},
    {Phrase::ShapeZero, "The line is zero all along: this load never reaches it."},
    {Phrase::ShapeStraight, "The line is straight from end to end."},
    {Phrase::ShapeCorners, "The line has corners at {joints} and is straight in between."},
    {Phrase::ReasonReaction, "Wherever the load stands, the same equation gives {effect}. Only the "
                             "lever arm of the load changes in it, and that grows evenly."},
    {Phrase::ReasonJoint, "Only what acts on {joint} enters its equation: the load when it stands "
                          "there or in a panel beside it, and the reaction, if there is one."},
    {Phrase::ReasonSection, "As long as the load stays on one part, the same equation holds, and "
                            "the reactions in it change evenly as the load moves. Across the cut "
                            "the stringers keep the line straight."},
    {Phrase::VirtualCut, "The shape comes without any numbers, too: cut {member} and let its ends "
                         "part by 1. How far each joint of the path then sinks is its ordinate, "
                         "for the load does as much work as the force."},
    {Phrase::VirtualSupport, "The shape comes without any numbers, too: move the support at "
                             "{joint} by 1 {direction}, against {effect}. How far each joint of "
                             "the path then sinks is its ordinate, for the load does as much work "
                             "as the reaction."},
    {Phrase::InfluenceNeedsEquilibrium, "Equilibrium alone does not give the forces of this truss, "
                                        "so no equation gives the ordinates by hand."},
    {Phrase::InfluenceOfDisplacement, "A displacement has no equation of equilibrium. Put a unit "
                                      "load at {joint} instead: the shape into which the path "
                                      "then bends is the influence line."},
    {Phrase::InfluenceNoSupport, "No support holds {joint} in this direction, so there is no "
                                 "reaction to draw a line of."},
    {Phrase::InfluenceManySupports, "{joint} is held in this direction by more than one support, "
                                    "or by one at an angle: no single equation gives the sum."},
    {Phrase::InfluenceNotFound, "No equation was found that gives the ordinates."},
};

} // namespace gusset
