#pragma once
// The tools of the board and their messages: how each is used, and what a tap missed.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kToolSelect = "Select"_phrase;
inline constexpr auto kToolMember = "Member"_phrase;
inline constexpr auto kToolPin = "Pin"_phrase;
inline constexpr auto kToolRoller = "Roller"_phrase;
inline constexpr auto kToolLoad = "Load"_phrase;
inline constexpr auto kToolErase = "Erase"_phrase;
inline constexpr auto kUseSelect = "Drag joints, tap to pick, press long for more."_phrase;
inline constexpr auto kUseMember =
    "Drag from joint to joint, or tap one after the other; a joint appears where you let go."_phrase;
inline constexpr auto kUsePin =
    "Tap a joint to put a pin there: it holds in both directions."_phrase;
inline constexpr auto kUseRoller =
    "Tap a joint to put a roller there. Tap again to turn it."_phrase;
inline constexpr auto kUseLoad =
    "Drag from a joint to pull on it. Tap a load to type its size."_phrase;
inline constexpr auto kUseErase = "Tap or stroke over what should go."_phrase;
inline constexpr auto kNextPlaceByFinger =
    "Tap the next place, or the last one again to end."_phrase;
// The keyboard is mentioned only if there is one.
inline constexpr auto kNextPlace =
    "Click the next place, or type: 3, 3 @ 30°, or 2, 1. Escape ends."_phrase;
inline constexpr auto kCutByDrag =
    "Tap a member or a support, or draw a line across the truss to cut it."_phrase;

inline constexpr auto kTapForPin = "Tap a joint to put a pin there."_phrase;
inline constexpr auto kTapForRoller = "Tap a joint to put a roller there."_phrase;
inline constexpr auto kDragForLoad = "Drag from a joint to draw a load, or tap one."_phrase;
inline constexpr auto kTypeLength = "Type the length"_phrase;
inline constexpr auto kPlaceHasTwo = "A place needs both its figures, as = 6, 4."_phrase;
inline constexpr auto kMemberHasLength =
    "A member needs a length: type one that is not zero, as 3 @ 30°."_phrase;

// What a screen reader says of a field on the board.
inline constexpr auto kForceOf = "force of {load}"_phrase;
inline constexpr auto kHeightBetween = "height between two levels"_phrase;
inline constexpr auto kDistanceAlong = "distance along x"_phrase;
inline constexpr auto kEndBeingDrawn = "length or end of the member being drawn"_phrase;
inline constexpr auto kEndDrawnLast = "length or end of the member drawn last"_phrase;

} // namespace gusset::phrase
