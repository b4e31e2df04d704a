#pragma once
// The English of what stands around the results: mechanisms and their cures, what results rest on,
// tables of the notebook, and the board for who can't see it. english_phrases.cpp alone includes
// this.

#include "report/text/phrase_table.hpp"

namespace gusset {

inline constexpr Sentence kEnglishResults[] = {
    {Phrase::MechanismAlone, "{what}."},
    {Phrase::MechanismMember, "{what}; a member between {a} and {b} would stop it."},
    {Phrase::MechanismSupport, "{what}; {support} would stop it."},
    {Phrase::MechanismEither, "{what}; a member between {a} and {b}, or {support}, would stop it."},
    {Phrase::WholeMoves, "The truss as a whole can {motion}"},
    {Phrase::UnsupportedMoves, "Nothing supports the truss: as a whole it can {motion}"},
    {Phrase::MotionSlide, "slide {way}"},
    {Phrase::MotionTurnJoint, "turn about joint {joint}"},
    {Phrase::MotionTurnLines, "turn about the point where the lines of its reactions meet"},
    {Phrase::MotionTurn, "turn"},
    {Phrase::WayHorizontal, "horizontally"},
    {Phrase::WayVertical, "vertically"},
    {Phrase::WaySloping, "along a slope"},
    {Phrase::LooseJointMoves, "Joint {joint} is joined to no member and can move {way}"},
    {Phrase::HangingJoint, "Joint {joint} hangs on a single member and can swing"},
    {Phrase::JointInLine, "All members at joint {joint} lie in one line, and nothing holds it "
                          "across that line"},
    {Phrase::PartTurns, "Joints {joints} can turn together about joint {joint}"},
    {Phrase::PartSlides, "Joints {joints} can slide together {way}"},
    {Phrase::PartMoves, "Joints {joints} can move without any member changing its length"},
    {Phrase::ListAndMore, "{list} and {n} more"},
    {Phrase::CurePin, "a pin in place of the roller at {joint}"},
    {Phrase::CureVertical, "a support at {joint} that holds it vertically"},
    {Phrase::CureHorizontal, "a support at {joint} that holds it horizontally"},

    {Phrase::AssumedEqual, "E·A is taken to be the same for all members, as the model gives none: "
                           "the forces are right only if that is so."},
    {Phrase::InexactCoordinates, "The coordinates of joint {joint} are no decimals of at most "
                                 "fifteen digits: exact answers need these."},
    {Phrase::InexactSlope, "The roller at {joint} has no slope of whole numbers: exact answers "
                           "need one, as 3 : 4."},
    {Phrase::InexactComponents, "Load {n} has components that are no decimals: exact answers need "
                                "decimals, or slopes as 3 : 4."},
    {Phrase::InexactTooLarge, "Exact answers are given up to {n} members: above, the answer is in "
                              "floating point."},
    {Phrase::InexactRedundant, "Exact forces are given where equilibrium alone settles them."},
    {Phrase::InexactMoves, "The truss is a mechanism that these loads set in motion."},

    {Phrase::LetterTension, "T"},
    {Phrase::LetterCompression, "C"},
    {Phrase::LetterZero, "0"},
    {Phrase::ForceWithLetter, "{value} {letter}"},
    {Phrase::InBrackets, "({word})"},
    {Phrase::ColumnWithUnit, "{name}, {unit}"},
    {Phrase::PointAndMore, "{a}, {b}"},

    {Phrase::LettersExplained, "T: tension, the member is pulled. C: compression, it is pushed."},
    {Phrase::AxleExplained, "2 on D →: axle 2 stands on joint D, the load facing right."},
    {Phrase::JobCounted, "{what}: {done} of {all}"},
    {Phrase::JobAtWork, "{what}…"},
    {Phrase::JobWaits, "This follows when the drag rests."},
    {Phrase::JobWorking, "Working out the forces"},
    {Phrase::JobShortest, "Looking for the shortest way"},
    {Phrase::JobSteps, "Writing the steps"},
    {Phrase::JobPolygon, "Drawing the force polygon"},
    {Phrase::JobReleases, "Trying what to release"},
    {Phrase::JobLoads, "Going through the loads"},
    {Phrase::JobMembers, "Going through the members"},
    {Phrase::JobPlaces, "Going through the places of the load"},
    {Phrase::JobTable, "Writing the table"},
    {Phrase::JobExact, "Working out the exact values"},
    {Phrase::LongFraction, "long fraction"},
    {Phrase::HeadReactions, "Reactions"},
    {Phrase::HeadForces, "Member forces"},
    {Phrase::HeadDisplacements, "Displacements"},
    {Phrase::HeadMembers, "Members"},
    {Phrase::HeadOrdinates, "Ordinates"},
    {Phrase::CellJoint, "joint"},
    {Phrase::CellMember, "member"},
    {Phrase::CellForce, "force"},
    {Phrase::CellLetter, "T or C"},
    {Phrase::CellExact, "exact"},
    {Phrase::CellTotal, "total"},
    {Phrase::CellStretch, "longer by"},
    {Phrase::CellStress, "stress"},
    {Phrase::CellTension, "T"},
    {Phrase::CellCompression, "C"},
    {Phrase::CellBy, "by"},
    {Phrase::FactTension, "{value} tension"},
    {Phrase::FactCompression, "{value} compression"},
    {Phrase::FactNoForce, "no force"},
    {Phrase::NoPath, "No chain of members leads across the truss: draw one, or pick the joints of "
                     "a path."},
    {Phrase::NoSupportForLine, "The truss has no support yet: put one where it rests."},

    {Phrase::EnvelopeHeading, "Envelope"},
    {Phrase::InfluenceHeading, "Influence line"},
    {Phrase::UntitledTruss, "Untitled truss"},
    {Phrase::BoardSummary, "The board: {joints}, {members}, {supports}, {loads}."},
    {Phrase::OneJoint, "1 joint"},
    {Phrase::ManyJoints, "{n} joints"},
    {Phrase::OneSupport, "1 support"},
    {Phrase::ManySupports, "{n} supports"},
    {Phrase::OneLoad, "1 load"},
    {Phrase::ManyLoads, "{n} loads"},
};

} // namespace gusset
