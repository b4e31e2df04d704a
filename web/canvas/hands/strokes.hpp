#pragma once
// What the tools share: a gesture going on, and the loads that a pointer draws.

#include "canvas/hands/tool.hpp"
#include "core/outcome.hpp"

#include <optional>
#include <string>

namespace gusset {

// The load tool, and a load's arrow taken by its far end with the selecting tool.
[[nodiscard]] Gesture beginNewLoad(const AppState&, JointId);
[[nodiscard]] Gesture beginLoadDrag(const AppState&, LoadId);
void dragLoad(const AppState&, const PointerEvent&, Gesture&, Actions&);
// A default load, or the one that is there, with its value open for typing.
void tapLoad(const AppState&, const Hit&, Actions&);
void editLoadValue(const AppState&, LoadId, Actions&);
// A load down in the middle of a member, with its value open for typing.
void addMemberLoad(const AppState&, MemberId, Actions&);
// The same load the other way; nothing for one that is no single arrow.
[[nodiscard]] std::optional<Load> turnedRound(const Load&);

// The member tool.
[[nodiscard]] Gesture beginMember(const AppState&, const PointerEvent&);
void dragMember(const AppState&, const PointerEvent&, Gesture&);
void endMember(const AppState&, const Gesture&, Actions&);
// Its other end as typed: a length along the way drawn so far, `3 @ 30°`, `2, 1` from its
// beginning, or a place after an equals sign, `= 6, 4`. Fails with a sentence.
[[nodiscard]] Outcome<Vec2> typedEnd(const AppState&, Vec2 from, const std::string& text);
void drawTo(const AppState&, Vec2 to, Actions&); // from the end of the chain
[[nodiscard]] Chain chainFrom(const MemberEnd&); // one that begins there
// A mouse between two taps of a chain.
void hoverMember(const AppState&, const PointerEvent&, Actions&);

// Taps of the support tools: put the support there, turn a roller, take the support away.
void tapPin(const AppState&, const Hit&, Actions&);
void tapRoller(const AppState&, const Hit&, Actions&);

} // namespace gusset
