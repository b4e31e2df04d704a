#pragma once
// What the tools share: a gesture in progress, and the loads that a pointer draws.

#include "canvas/hands/tool.hpp"
#include "core/outcome.hpp"

#include <optional>
#include <string>

namespace gusset {

// The load tool, and a load's arrow dragged by its far end with the selecting tool.
[[nodiscard]] Gesture beginNewLoad(const AppState&, JointId);
[[nodiscard]] Gesture beginLoadDrag(const AppState&, LoadId);
void dragLoad(const AppState&, const PointerEvent&, Gesture&, Actions&);
// A default load, or the existing one, with its value open for typing.
void tapLoad(const AppState&, const Hit&, Actions&);
void editLoadValue(const AppState&, LoadId, Actions&);
// A downward load at midspan of a member, with its value open for typing.
void addMemberLoad(const AppState&, MemberId, Actions&);
// The same load reversed; none if it is not a single arrow.
[[nodiscard]] std::optional<Load> turnedRound(const Load&);

// The member tool.
[[nodiscard]] Gesture beginMember(const AppState&, const PointerEvent&);
void dragMember(const AppState&, const PointerEvent&, Gesture&);
void endMember(const AppState&, const Gesture&, Actions&);
// The other end of the member as typed: a length along the direction drawn so far, `3 @ 30°`, `2,
// 1` from its start, or a position after an equals sign, `= 6, 4`. Fails with a sentence.
[[nodiscard]] Outcome<Vec2> typedEnd(const AppState&, Vec2 from, const std::string& text);
void drawTo(const AppState&, Vec2 to, Actions&); // from the end of the chain
[[nodiscard]] Chain chainFrom(const MemberEnd&); // a chain that begins there
// A mouse moved between two taps of a chain.
void hoverMember(const AppState&, const PointerEvent&, Actions&);

// In reading mode: a drag moves the picture or makes a cut, a tap picks what the working is about.
[[nodiscard]] Gesture beginReading(const AppState&);
void tapReading(const AppState&, const Hit&, Actions&);

// Taps with the support tools: place the support, turn a roller, remove the support.
void tapPin(const AppState&, const Hit&, Actions&);
void tapRoller(const AppState&, const Hit&, Actions&);

} // namespace gusset
