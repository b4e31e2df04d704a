#pragma once
// What is wrong with a link, or why there is none. Follows "the link" or "The link".

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kPlaceLink = "the link"_phrase;

inline constexpr auto kNoModelInLink =
    "holds no model: a link of Gusset has #m= or #j= in it"_phrase;
inline constexpr auto kNeitherLinkNorModel =
    "is neither a link of a truss nor a model: a link has #m= or #j= in it, a model begins with {brace}"_phrase;
inline constexpr auto kLinkExceeds =
    "has {n} characters, and links have at most {most}: ask for the model as a file"_phrase;
inline constexpr auto kLinkWithoutEnd =
    "is incomplete: no {brace} ends its model: copy the whole link again"_phrase;
inline constexpr auto kLinkEndsAfter =
    "is incomplete: it ends after {n} characters: copy the whole link again"_phrase;
inline constexpr auto kLinkIncomplete =
    "is incomplete: {n} of {all} characters arrived: copy the whole link again"_phrase;
inline constexpr auto kLinkForeignSign =
    "was altered: it has a character that no link has after {n} of its own: copy the whole link "
    "again"_phrase;
inline constexpr auto kLinkForeignStart =
    "was altered: it begins with m={start} and not m=1: copy the whole link again"_phrase;
inline constexpr auto kLinkMiddleIncomplete =
    "was altered on its way: {n} of {all} characters arrived in its middle part: copy the whole "
    "link again"_phrase;
inline constexpr auto kLinkChecksum =
    "was altered on its way: its checksum does not fit: copy the whole link again"_phrase;
inline constexpr auto kLinkCutInByte =
    "was altered on its way: it is cut within a byte: copy the whole link again"_phrase;
inline constexpr auto kLinkSize =
    "was altered on its way: its size does not fit: copy the whole link again"_phrase;
inline constexpr auto kLinkLater =
    "was written by a later version of Gusset (form {form}, and this one reads form 1): open it "
    "with that version"_phrase;
inline constexpr auto kLinkUnpacksTooLarge =
    "unpacks to more than {size} MB, more than is read from a link: ask for the model as a "
    "file"_phrase;
inline constexpr auto kLinkDoesNotUnpack = "does not unpack: copy the whole link again"_phrase;
inline constexpr auto kLinkNotJson = "opens, but was not written by Gusset: {place} {fault}"_phrase;
inline constexpr auto kLinkNestedTooDeep =
    "is nested deeper than any model is: it was not written by Gusset"_phrase;
// {part} is a key or one of those below.
inline constexpr auto kLinkMakesNoSense =
    "opens but makes no sense ({part}): it was not written by Gusset, or by a later version"_phrase;
inline constexpr auto kPartWhole = "the whole"_phrase;
inline constexpr auto kPartRest = "the rest"_phrase;
inline constexpr auto kPartExtras = "the extras"_phrase;
inline constexpr auto kLinkJoints =
    "holds {n} joints, and a link may hold {most}: ask for the model as a file"_phrase;
inline constexpr auto kLinkMembers =
    "holds {n} members, and a link may hold {most}: ask for the model as a file"_phrase;
inline constexpr auto kLinkSupports =
    "holds {n} supports, and a link may hold {most}: ask for the model as a file"_phrase;
inline constexpr auto kLinkLoads =
    "holds {n} loads, and a link may hold {most}: ask for the model as a file"_phrase;

inline constexpr auto kLinkTrussTooLarge =
    "can't be made: the truss is larger than what links hold. Save the truss as a file and send "
    "that"_phrase;
inline constexpr auto kLinkWouldBeTooLong =
    "can't be made: it would have {n} characters, and links have at most {most}. Save the truss as "
    "a file and send that"_phrase;
inline constexpr auto kLinkWouldNotOpen =
    "can't be made: it would not open ({place}: {fault}). Save the truss as a file and send "
    "that"_phrase;
inline constexpr auto kLinkWouldLose =
    "can't be made: it would not hold the whole truss. Save the truss as a file and send "
    "that"_phrase;

inline constexpr auto kLinkAsksCase =
    "asks for a load case that its truss does not have: all loads are shown"_phrase;
inline constexpr auto kLinkAsksCombination =
    "asks for a combination that its truss does not have: all loads are shown"_phrase;

} // namespace gusset::phrase
