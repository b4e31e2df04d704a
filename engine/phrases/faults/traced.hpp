#pragma once
// How a drawing was taken for a truss, and what is doubtful about it.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kAtPoint = "({x}, {y})"_phrase;

// Scale.
inline constexpr auto kUnitStated = "the file says that it is in {unit}"_phrase;
inline constexpr auto kUnitNotStated =
    "the file does not say its unit: {unit} is taken; type the unit if it is another"_phrase;
inline constexpr auto kUnitOverruled =
    "the file says that it is in {stated}: the typed unit {unit} is taken instead"_phrase;
inline constexpr auto kTrussHuge =
    "the truss would be {size} {unit} across: type the unit in which it was drawn, mm perhaps, or "
    "its width"_phrase;
inline constexpr auto kTrussTiny =
    "the truss would be only {size} {unit} across: type the unit in which it was drawn, m perhaps, "
    "or its width"_phrase;
inline constexpr auto kScaledToWidth =
    "{width} {unit} wide as typed: one unit of the drawing is {one} {unit}"_phrase;
inline constexpr auto kNoWidth =
    "has no width that could be scaled: all its lines stand upright above each other"_phrase;

// Joints.
inline constexpr auto kToleranceChosen = "ends within {tolerance} of each other in the drawing's "
                                         "unit make one joint, as was chosen from "
                                         "the size of the drawing and of its lines"_phrase;
inline constexpr auto kToleranceTyped =
    "ends within {tolerance} of each other in the drawing's unit make one joint, as typed"_phrase;
inline constexpr auto kToleranceTooLarge =
    "no line is longer than the tolerance of {tolerance} in the drawing's unit: type a smaller "
    "one"_phrase;
inline constexpr auto kEndsMoved =
    "ends moved to meet others in one joint: {n}, the farthest by {most} {unit}"_phrase;
inline constexpr auto kEndsInARow =
    "the ends that make joint {joint} at {place} lie up to {most} {unit} apart, each within the "
    "tolerance of the next: look whether they are one joint"_phrase;
inline constexpr auto kLineTooShort =
    "the line at {place} is no longer than the tolerance: it is left out"_phrase;
inline constexpr auto kLineDivided =
    "the line from joint {a} to joint {b} passes joint {joints} and is divided there"_phrase;
inline constexpr auto kMarksAlone =
    "marks left out, as they lie on no line: {n}, the first at {place}"_phrase;
inline constexpr auto kLettered =
    "the joints are lettered from left to right, and upwards where one stands above another"_phrase;
inline constexpr auto kNoSupportsYet =
    "the file says nothing of supports: put them on, then the loads"_phrase;

// Doubts.
inline constexpr auto kDrawnTwice = "member {member} is drawn {n} times: it counts once"_phrase;
inline constexpr auto kCrossWithoutJoint =
    "members {a} and {b} cross at {place} without a joint: they pass there; end lines at the "
    "crossing if they meet in it"_phrase;
inline constexpr auto kGapBetweenJoints =
    "joints {a} at {place} and {b} are only {gap} {unit} apart and not joined: a larger tolerance "
    "makes them one, if they are"_phrase;
inline constexpr auto kGapToMember = "joint {joint} at {place} stops {gap} {unit} short of member "
                                     "{member}: a larger tolerance joins "
                                     "them, if they meet"_phrase;
inline constexpr auto kLooseEnd =
    "member {member} ends alone in joint {joint} at {place}: unless a support will hold it there, "
    "draw it on to what it meets"_phrase;
inline constexpr auto kMemberShort =
    "member {member} at {place} is only {size} {unit} long, and half of the members are longer "
    "than "
    "{usual} {unit}: if a line was drawn past its end, a larger tolerance takes it away"_phrase;
inline constexpr auto kSideBySide =
    "members {a} and {b} run side by side, {gap} {unit} apart at {place}: if they are two edges of "
    "one member, draw its centre line alone"_phrase;
inline constexpr auto kLoneLine =
    "member {member} at {place} touches no other: remove it if it is no member"_phrase;
inline constexpr auto kSeveralParts =
    "the lines fall into {n} parts that touch nowhere; members of the largest: {most} of {all}"_phrase;
inline constexpr auto kPartApart = "what hangs together around joint {joint} at {place}, members: "
                                   "{n}, touches nothing of the largest "
                                   "part"_phrase;

} // namespace gusset::phrase
