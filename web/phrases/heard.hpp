#pragma once
// What a screen reader is told about the board and the notebook: what the keyboard's focus is on,
// and what has changed.

#include "core/phrase.hpp"

namespace gusset::phrase {

// Steps of the history; {step} is the name of an edit.
inline constexpr auto kHeardDone = "Done: {step}"_phrase;
inline constexpr auto kHeardUndone = "Undone: {step}"_phrase;
inline constexpr auto kHeardRedone = "Done again: {step}"_phrase;
inline constexpr auto kHeardMoved = "{joint} moved to {x}, {y}"_phrase;
// What the step changed: {news} is one of the lines below, or the verdict.
inline constexpr auto kHeardThen = "{what}. {news}"_phrase;
inline constexpr auto kHeardLargestTension = "Largest tension now {force} in {member}."_phrase;
inline constexpr auto kHeardLargestCompression =
    "Largest compression now {force} in {member}."_phrase;
inline constexpr auto kHeardLargestBoth =
    "Largest tension now {tension} in {pulled}, largest compression {compression} in {pushed}."_phrase;
inline constexpr auto kHeardNoForces = "No member has a force now."_phrase;

// A thing that is picked, with its values.
inline constexpr auto kHeardMore = "{what}, {more}"_phrase;
inline constexpr auto kHeardValue = "{name} {value}"_phrase;
inline constexpr auto kHeardPicked = "{what} picked"_phrase;
inline constexpr auto kHeardNonePicked = "Nothing is picked"_phrase;

// The menu of a place, and items of the panels.
inline constexpr auto kHeardMenu = "{title}, menu. {line}"_phrase;
inline constexpr auto kHeardLine = "{line}, {i} of {n}"_phrase;
inline constexpr auto kHeardMenuClosed = "Menu closed"_phrase;
inline constexpr auto kHeardInPanel = "{panel}: {item}"_phrase;
inline constexpr auto kHeardChosen = "{item}, chosen"_phrase;
inline constexpr auto kHeardOn = "{item}, on"_phrase;
inline constexpr auto kHeardOff = "{item}, off"_phrase;
inline constexpr auto kHeardBoard = "The board"_phrase;
inline constexpr auto kPanelHeader = "Header"_phrase;
inline constexpr auto kPanelBeginning = "Beginning"_phrase;
inline constexpr auto kPanelTools = "Tools"_phrase;
inline constexpr auto kPanelPicked = "What is picked"_phrase;
inline constexpr auto kPanelNotebook = "Notebook"_phrase;
inline constexpr auto kPanelMessage = "Message"_phrase;

inline constexpr auto kHeardStep = "Step {i} of {n}: {step}"_phrase;

inline constexpr auto kFileSaved = "Saved as {file}."_phrase;

} // namespace gusset::phrase
