#pragma once
// What the tools share: a gesture going on, and the loads that a pointer draws.

#include "canvas/tool.hpp"

namespace gusset {

// The load tool, and a load's arrow taken by its far end with the selecting tool.
[[nodiscard]] Gesture beginNewLoad(const AppState&, JointId);
[[nodiscard]] Gesture beginLoadDrag(const AppState&, LoadId);
void dragLoad(const AppState&, const PointerEvent&, Gesture&, Actions&);
// A default load, or the one that is there, with its value open for typing.
void tapLoad(const AppState&, const Hit&, Actions&);
void editLoadValue(const AppState&, LoadId, Actions&);

// The member tool.
[[nodiscard]] Gesture beginMember(const AppState&, const PointerEvent&);
void dragMember(const AppState&, const PointerEvent&, Gesture&);
void endMember(const AppState&, const Gesture&, Actions&);
// A mouse between two taps of a chain.
void hoverMember(const AppState&, const PointerEvent&, Actions&);

// Taps of the support tools: put the support there, turn a roller, take the support away.
void tapPin(const AppState&, const Hit&, Actions&);
void tapRoller(const AppState&, const Hit&, Actions&);

} // namespace gusset
