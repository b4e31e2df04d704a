#pragma once
// What the pointer does on the board: pure functions from an event and the state to actions. Each
// event must see the state after the actions of the previous one, so update between any two events,
// even within one frame.

#include "app/state/action.hpp"

namespace gusset {

enum class PointerKind { Mouse, Touch, Pen };
// LongPress also stands for the right button.
enum class PointerPhase { Down, Move, Up, Cancel, LongPress };
struct PointerEvent {
    PointerPhase phase = PointerPhase::Move;
    PointerKind kind = PointerKind::Mouse;
    Vec2 pixel;              // CSS px on the board
    bool shift = false;      // adds to the selection
    bool alt = false;        // no snapping
    bool endsTyping = false; // Down: it closed the board's field and does nothing else
};

// With the working of one force open, a line drawn across the truss makes a cut.
[[nodiscard]] bool cutsByDrag(const AppState&);
// One finger or the mouse. Cancel undoes the gesture; Up ends it.
void stepTool(const AppState&, const PointerEvent&, Actions&);
// A second finger came down: the first one's stroke is undone before the board moves.
void abandonGesture(const AppState&, Actions&);

enum class Key {
    Delete,
    Escape,
    Undo,
    Redo,
    SelectAll,
    Fit,
    Left,
    Right,
    Up,
    Down,
    NextStep,
    PreviousStep,
    Menu,
    Enter,
    NextJoint, // picks one thing of a kind after the other
    PreviousJoint,
    NextMember,
    PreviousMember,
    NextSupport,
    PreviousSupport,
    NextLoad,
    PreviousLoad,
    Save // a wish of the page (web/page_input)
};
void pressKey(const AppState&, Key, Actions&);

[[nodiscard]] double slackOf(PointerKind); // CSS px around a thing that still count as a hit

} // namespace gusset
