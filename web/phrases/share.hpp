#pragma once
// The page of the notebook for sharing and saving a truss.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kLinkCopied = "Link copied."_phrase;
inline constexpr auto kAsLink = "This truss as a link"_phrase;
inline constexpr auto kLinkFits =
    "The link is {n} characters long: it fits in any message. The whole truss is in it; nothing is "
    "kept on a server."_phrase;
inline constexpr auto kLinkLong =
    "The link is {n} characters long. Some messengers cut links as long as this: a file is "
    "safer."_phrase;
inline constexpr auto kLinkTooLong =
    "The link is {n} characters long, too long for most messengers: send a file."_phrase;
inline constexpr auto kShareBy = "Share by …"_phrase;
inline constexpr auto kNoCode =
    "Too long for a QR code that phones read: save the board as a file below."_phrase;
inline constexpr auto kSaveCode = "Save the QR code as SVG"_phrase;
inline constexpr auto kForHandout = "for a handout"_phrase;

inline constexpr auto kFilesAndPages = "Files and pages"_phrase;
inline constexpr auto kSaveFile = "Save as a file"_phrase;
inline constexpr auto kOnWhite = "Pictures on white paper"_phrase;
inline constexpr auto kSaveSvg = "Save the board as SVG"_phrase;
inline constexpr auto kADrawing = "a drawing"_phrase;
inline constexpr auto kSavePng = "Save the board as PNG"_phrase;
inline constexpr auto kAPicture = "a picture"_phrase;
inline constexpr auto kSaveCsv = "Save the results as CSV"_phrase;
inline constexpr auto kForSpreadsheet = "for a spreadsheet"_phrase;
inline constexpr auto kReadAsPage = "Tables and print"_phrase;
inline constexpr auto kTablesAndWorking = "tables and working"_phrase;
inline constexpr auto kShowLesson = "Show it as a lesson"_phrase;
inline constexpr auto kToARoom = "step by step"_phrase;
inline constexpr auto kSetExercise = "Set it as an exercise"_phrase;
inline constexpr auto kForStudents = "for students"_phrase;
inline constexpr auto kChooseProfiles = "Choose profiles"_phrase;
inline constexpr auto kUnderBoard = "under the board"_phrase;
inline constexpr auto kLightestThatPass = "the lightest that pass"_phrase;

} // namespace gusset::phrase
