#pragma once
// What surrounds the board: the header, the view menu, the legend, messages, the notebook's tabs.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kStartPage = "Start page"_phrase;
inline constexpr auto kTitle = "title"_phrase; // the name of its field
inline constexpr auto kUndo = "Undo"_phrase;
inline constexpr auto kUndoStep = "Undo: {step}"_phrase;
inline constexpr auto kRedo = "Redo"_phrase;
inline constexpr auto kRedoStep = "Redo: {step}"_phrase;
inline constexpr auto kFitDrawing = "Fit the drawing"_phrase;
inline constexpr auto kCopyLink = "Copy link"_phrase;
inline constexpr auto kNotebookWidth = "width of the notebook"_phrase;
inline constexpr auto kOpenNotebook = "Open the notebook"_phrase;
inline constexpr auto kCloseNotebook = "Close the notebook"_phrase;
inline constexpr auto kNoLanguage =
    "The page's language could not be read, so it is in English. {place}: {fault}."_phrase;
inline constexpr auto kCloseMessage = "Close the message"_phrase;

inline constexpr auto kNothingKept =
    "This browser keeps nothing for this page (its storage is full or switched off). Save the "
    "board as a file to keep it."_phrase;

inline constexpr auto kNotebookHeight = "Height of the notebook"_phrase;
inline constexpr auto kTabModel = "Model"_phrase;
inline constexpr auto kTabResults = "Results"_phrase;
inline constexpr auto kTabWorking = "Working"_phrase;
inline constexpr auto kTabShare = "Share"_phrase;

inline constexpr auto kView = "View"_phrase;
inline constexpr auto kOnTheBoard = "On the board"_phrase;
inline constexpr auto kDeflectedShape = "Deflected shape"_phrase;
inline constexpr auto kDimensions = "Dimensions"_phrase;
inline constexpr auto kWidthByForce = "Line width by force"_phrase;
inline constexpr auto kLargestForces = "Largest forces"_phrase;
inline constexpr auto kSnapToGrid = "Snap to the grid"_phrase;
inline constexpr auto kLabelledBy = "Members are labelled by their"_phrase;
inline constexpr auto kFingerDraws = "Finger draws"_phrase;
inline constexpr auto kPresent = "Present as a lesson"_phrase;
inline constexpr auto kPhotograph = "Trace a photograph …"_phrase;
inline constexpr auto kTheme = "Theme"_phrase;
inline constexpr auto kThemeSystem = "System"_phrase;
inline constexpr auto kThemePaper = "Paper"_phrase;
inline constexpr auto kThemeDark = "Dark"_phrase;
inline constexpr auto kThemeBright = "Bright"_phrase;

inline constexpr auto kFiguresStress = "figures: stress"_phrase;
inline constexpr auto kFiguresUse = "figures: utilisation, force / allowed"_phrase;

inline constexpr auto kDrawFirst = "Drag across the paper to draw the first member."_phrase;
inline constexpr auto kEmptyBoard =
    "An empty board. Draw a truss, or take a form or an example from the start page."_phrase;
inline constexpr auto kDrawMembers = "Draw members"_phrase;

} // namespace gusset::phrase
