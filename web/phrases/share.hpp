#pragma once
// The page of the notebook for sharing, saving and starting a truss.

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
inline constexpr auto kPasteLink = "Paste a link here to open it"_phrase;
inline constexpr auto kNoCode =
    "Too long for a QR code that phones read: save the board as a file below."_phrase;
inline constexpr auto kSaveCode = "Save the QR code as SVG"_phrase;
inline constexpr auto kCodeOfTruss = "The truss as a QR code"_phrase;
inline constexpr auto kForHandout = "for a handout"_phrase;

inline constexpr auto kFilesAndPages = "Files and pages"_phrase;
inline constexpr auto kSaveFile = "Save as a file"_phrase;
inline constexpr auto kOpenFile = "Open a file"_phrase;
inline constexpr auto kRecentBoards = "Recent boards"_phrase;
inline constexpr auto kKeptInBrowser = "kept in this browser"_phrase;
inline constexpr auto kSaveSvg = "Save the board as SVG"_phrase;
inline constexpr auto kADrawing = "a drawing"_phrase;
inline constexpr auto kSavePng = "Save the board as PNG"_phrase;
inline constexpr auto kAPicture = "a picture"_phrase;
inline constexpr auto kSaveCsv = "Save the results as CSV"_phrase;
inline constexpr auto kForSpreadsheet = "for a spreadsheet"_phrase;
inline constexpr auto kReadAsPage = "Tables and print"_phrase;
inline constexpr auto kTablesAndWorking = "tables and working"_phrase;
inline constexpr auto kHelp = "Help"_phrase;
inline constexpr auto kHowToUse = "how to use Gusset"_phrase;
inline constexpr auto kNewBoard = "New empty board"_phrase;
inline constexpr auto kUndoBringsBack = "undo brings this one back"_phrase;
inline constexpr auto kExamples = "Examples"_phrase;

} // namespace gusset::phrase
