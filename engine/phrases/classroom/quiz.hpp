#pragma once
// An exercise as questions of a learning platform, with what it says to right and wrong answers.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kTitleOfVariant = "{title}, variant {number}"_phrase;
inline constexpr auto kThisVariant = "{title}, variant {number}."_phrase;
inline constexpr auto kLoadsOfQuiz = "Loads: {loads}."_phrase;
inline constexpr auto kRightWithin =
    "An answer is right if it is within {percent} % of the value."_phrase;
inline constexpr auto kRightToFigures =
    "An answer is right if its first {figures} figures are."_phrase;
inline constexpr auto kGiveItIn = "Give it in {unit}."_phrase;
inline constexpr auto kPictureOfTruss = "The truss with its supports, dimensions and loads"_phrase;

// Names in lists of questions.
inline constexpr auto kNameForce = "Force in {member}"_phrase;
inline constexpr auto kNameReaction = "Reaction {reaction}"_phrase;
inline constexpr auto kNameZero = "Does {member} carry a force?"_phrase;
inline constexpr auto kNameReactions = "Reactions"_phrase;
inline constexpr auto kNameForces = "Member forces"_phrase;
inline constexpr auto kNameZeroMembers = "Members without force"_phrase;
inline constexpr auto kNameDegree = "Degree of indeterminacy"_phrase;
inline constexpr auto kNameDisplacement = "Displacement of {joint}"_phrase;
inline constexpr auto kNameOrdinate = "Influence line of {member}"_phrase;

inline constexpr auto kFindForce =
    "Find the force in member {member}: tension is positive, compression negative."_phrase;
inline constexpr auto kFindReaction = "Find the reaction {reaction}: positive {direction}."_phrase;
inline constexpr auto kCarriesForce = "Does member {member} carry a force?"_phrase;

// Labels of fields, and their options.
inline constexpr auto kFieldSize = "Size of the force in {name}:"_phrase;
inline constexpr auto kFieldSense = "Tension, compression or zero in {member}:"_phrase;
inline constexpr auto kFieldReactionSize = "Size of {name}:"_phrase;
inline constexpr auto kFieldDirection = "Direction of {reaction}:"_phrase;
inline constexpr auto kFieldAnswer = "Answer:"_phrase;
inline constexpr auto kFieldMember = "Member {member}:"_phrase;
inline constexpr auto kOptionCarries = "it carries a force"_phrase;
inline constexpr auto kOptionZero = "it carries none"_phrase;

// Feedback.
inline constexpr auto kAnswerRight = "Right."_phrase;
inline constexpr auto kAnswerOtherSense =
    "The size is right, but it is tension where it should be compression, or the reverse."_phrase;
inline constexpr auto kAnswerOtherDirection =
    "The size is right, but it acts the other way."_phrase;
inline constexpr auto kAnswerOtherSign = "The size is right, but the sign is not."_phrase;
inline constexpr auto kAnswerWrongForce =
    "Not right. Cut {member}, draw one of the two parts with every force on it, and write its "
    "equations again."_phrase;
inline constexpr auto kAnswerWrongReaction =
    "Not right. Draw the whole truss with every load and reaction on it, and write its equations "
    "again."_phrase;
inline constexpr auto kAnswerWrongSense =
    "Not right. Tension pulls on the joints at both ends, compression pushes on them."_phrase;
inline constexpr auto kAnswerWrong = "Not right. Look at each step again."_phrase;

} // namespace gusset::phrase
