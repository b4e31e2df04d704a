#include "canvas/hands/tool.hpp"

#include "canvas/hands/strokes.hpp"
#include "canvas/scene/enclosing.hpp"
#include "canvas/scene/figures.hpp"
#include "canvas/scene/pick.hpp"
#include "canvas/scene/snap.hpp"

#include <algorithm>

namespace gusset {

namespace {

// CSS px that a pointer may move and still count as a tap.
double tapSlack(PointerKind kind) {
    switch (kind) {
    case PointerKind::Mouse:
        return 3;
    case PointerKind::Pen:
        return 6;
    case PointerKind::Touch:
        break;
    }
    return 10;
}

// Passing over a thing again does not bring it back.
void eraseUnder(const AppState& state, const PointerEvent& event, Gesture& gesture,
                Actions& actions) {
    const Hit hit =
        pickIn(state.committed, state.view.camera, event.pixel, slackOf(event.kind) / 2);
    const Things now = thingsOf(hit);
    const Things both = toggled(gesture.things, now);
    const bool isNew = countOf(both) > countOf(gesture.things);
    if (!now.empty() && isNew) {
        gesture.things = both;
        actions.push_back(ShowEdit{Remove{both}});
    }
}

Gesture gestureOf(GestureKind kind) {
    Gesture gesture;
    gesture.kind = kind;
    return gesture;
}

// Dragging one of several selected joints moves them all.
Gesture beginMove(const AppState& state, const PointerEvent& event, JointId joint) {
    Gesture gesture = gestureOf(GestureKind::MoveJoint);
    gesture.joint = joint;
    gesture.grab =
        toWorld(state.view.camera, event.pixel) - state.truss.joints[gesture.joint.at()].at;
    gesture.things.joints =
        holds(state.selection, joint) ? state.selection.joints : std::vector<JointId>{joint};
    return gesture;
}

// Joint loads are drawn by hand; chord loads are typed.
LoadId jointLoad(const AppState& state, const Hit& under) {
    const LoadId load = hitOf<LoadId>(under);
    return load.valid() && jointOf(state.truss.loads[load.at()]).valid() ? load : LoadId{};
}

Gesture beginSelect(const AppState& state, const PointerEvent& event, const Hit& under) {
    if (const JointId joint = hitOf<JointId>(under); joint.valid()) {
        return beginMove(state, event, joint);
    }
    if (const LoadId load = jointLoad(state, under); load.valid()) {
        return beginLoadDrag(state, load);
    }
    if (cutsByDrag(state)) {
        return gestureOf(GestureKind::Cut);
    }
    const bool encloses = event.shift || state.picksSeveral;
    return gestureOf(encloses ? GestureKind::Enclose : GestureKind::Tap);
}

Gesture beginLoad(const AppState& state, const Hit& under) {
    if (const JointId joint = hitOf<JointId>(under); joint.valid()) {
        return beginNewLoad(state, joint);
    }
    if (const LoadId load = jointLoad(state, under); load.valid()) {
        return beginLoadDrag(state, load);
    }
    return gestureOf(GestureKind::Tap);
}

// If only a pen draws, fingers move the paper.
bool onlyMovesBoard(const AppState& state, PointerKind kind) {
    return kind == PointerKind::Touch && !state.view.fingerDraws;
}

Gesture begin(const AppState& state, const PointerEvent& event, const Hit& under) {
    if (state.notebook.reading) {
        return beginReading(state);
    }
    if (onlyMovesBoard(state, event.kind)) {
        return gestureOf(GestureKind::Pan);
    }
    if (figureAt(state, event.pixel) != nullptr) {
        return gestureOf(GestureKind::Tap);
    }
    switch (state.tool) {
    case Tool::Select:
        return beginSelect(state, event, under);
    case Tool::Member:
        return beginMember(state, event);
    case Tool::Load:
        return beginLoad(state, under);
    case Tool::Erase:
        return gestureOf(GestureKind::Erase);
    case Tool::Pin:
    case Tool::Roller:
        break;
    }
    return gestureOf(GestureKind::Tap);
}

void pointerDown(const AppState& state, const PointerEvent& event, Actions& actions) {
    if (state.gesture.kind != GestureKind::None || event.endsTyping) {
        return;
    }
    if (state.menu.open) { // a press outside it
        actions.push_back(SetMenu{});
        return;
    }
    if (event.kind == PointerKind::Pen && !state.penSeen) {
        actions.push_back(SeePen{});
    }
    const Hit under = pick(state, event.pixel, slackOf(event.kind));
    Gesture gesture = begin(state, event, under);
    gesture.byFinger = event.kind == PointerKind::Touch;
    if (gesture.kind == GestureKind::Enclose) {
        gesture.line = {event.pixel};
    }
    gesture.under = under;
    gesture.startPixel = event.pixel;
    gesture.lastPixel = event.pixel;
    if (gesture.kind == GestureKind::Erase) {
        actions.push_back(SetSelection{}); // its ids are not of the model now shown
        eraseUnder(state, event, gesture, actions);
    }
    actions.push_back(SetGesture{gesture});
}

// A joint dropped on one that it has no member to is merged with it.
void dragJoint(const AppState& state, const PointerEvent& event, Gesture& gesture,
               Actions& actions) {
    const Truss& truss = state.committed; // it can land on the model without the gesture
    SnapRequest request;
    request.pixel =
        toPixel(state.view.camera, toWorld(state.view.camera, event.pixel) - gesture.grab);
    request.slack = slackOf(event.kind) / 2;
    request.moving = gesture.joint;
    request.freely = event.alt;
    const Snapped snapped = snapTo(truss, state.view, request);
    gesture.snap = snapped.snap;
    gesture.to = snapped.end;
    const JointId other = snapped.end.joint;
    const bool alone = gesture.things.joints.size() == 1;
    if (alone && other.valid() && other != gesture.joint &&
        !findMember(truss, gesture.joint, other).valid()) {
        actions.push_back(ShowEdit{MergeJoints{gesture.joint, other}});
        return;
    }
    if (alone) {
        actions.push_back(ShowEdit{MoveJoint{gesture.joint, snapped.end.at, snapped.end.splits}});
        return;
    }
    const Vec2 by = snapped.end.at - truss.joints[gesture.joint.at()].at;
    actions.push_back(ShowEdit{shifted(truss, state.view, gesture.things.joints, by)});
}

// Shows what the gesture does at the pointer.
void drag(const AppState& state, const PointerEvent& event, Gesture& gesture, Actions& actions) {
    gesture.moved =
        gesture.moved || length(event.pixel - gesture.startPixel) > tapSlack(event.kind);
    if (!gesture.moved) {
        return;
    }
    if (gesture.kind == GestureKind::Tap) { // nothing here can be dragged, so the board is
        gesture.kind = GestureKind::Pan;
    } else if (gesture.kind == GestureKind::Held) {
        gesture.kind = GestureKind::Enclose;
        gesture.line = {gesture.startPixel};
        actions.push_back(SetMenu{});
    }
    switch (gesture.kind) {
    case GestureKind::Pan:
        actions.push_back(SetCamera{panBy(state.view.camera, event.pixel - gesture.lastPixel)});
        break;
    case GestureKind::MoveJoint:
        dragJoint(state, event, gesture, actions);
        break;
    case GestureKind::DrawMember:
        dragMember(state, event, gesture);
        break;
    case GestureKind::DragLoad:
        dragLoad(state, event, gesture, actions);
        break;
    case GestureKind::Erase:
        eraseUnder(state, event, gesture, actions);
        break;
    case GestureKind::Enclose:
        goOnAround(gesture.line, event.pixel);
        break;
    case GestureKind::None:
    case GestureKind::Tap:
    case GestureKind::Held:
    case GestureKind::Cut:
        break;
    }
    gesture.lastPixel = event.pixel;
}

void hover(const AppState& state, const PointerEvent& event, Actions& actions) {
    if (event.kind == PointerKind::Touch || state.menu.open) {
        return;
    }
    const Hit hit = pick(state, event.pixel, slackOf(event.kind));
    if (hit != state.hover) {
        actions.push_back(SetHover{hit});
    }
    if (state.tool == Tool::Member) {
        hoverMember(state, event, actions);
    }
}

void pointerMove(const AppState& state, const PointerEvent& event, Actions& actions) {
    if (state.gesture.kind == GestureKind::None) {
        hover(state, event, actions);
        return;
    }
    Gesture gesture = state.gesture;
    drag(state, event, gesture, actions);
    actions.push_back(SetGesture{gesture});
}

void tapSelect(const AppState& state, const PointerEvent& event, const Hit& under,
               Actions& actions) {
    const Things things = thingsOf(under);
    if (const LoadId load = hitOf<LoadId>(under); load.valid() && state.selection == things) {
        editLoadValue(state, load, actions);
        return;
    }
    if (state.picksSeveral && things.empty()) { // a miss keeps the selection
        return;
    }
    const bool adds = event.shift || state.picksSeveral;
    actions.push_back(SetSelection{adds ? toggled(state.selection, things) : things});
}

void tap(const AppState& state, const PointerEvent& event, const Gesture& gesture,
         Actions& actions) {
    if (state.notebook.reading) {
        tapReading(state, gesture.under, actions);
        return;
    }
    if (const Figure* figure = figureAt(state, gesture.startPixel)) {
        actions.push_back(BeginField{figure->opens, figure->text});
        return;
    }
    switch (state.tool) {
    case Tool::Select:
        tapSelect(state, event, gesture.under, actions);
        break;
    case Tool::Pin:
        tapPin(state, gesture.under, actions);
        break;
    case Tool::Roller:
        tapRoller(state, gesture.under, actions);
        break;
    case Tool::Load:
        tapLoad(state, gesture.under, actions);
        break;
    case Tool::Member:
    case Tool::Erase:
        break;
    }
}

// A merge changes the ids.
void keepMovedSelected(const Gesture& gesture, Actions& actions) {
    const bool merged = gesture.snap.kind == SnapKind::Joint && gesture.things.joints.size() == 1;
    actions.push_back(SetSelection{merged ? Things{} : gesture.things});
}

// Selects what was enclosed; adds it to the selection if taps do so too.
void endAround(const AppState& state, const PointerEvent& event, const Gesture& gesture,
               Actions& actions) {
    const Things things = thingsEnclosed(state, gesture.line);
    const bool adds = event.shift || state.picksSeveral;
    actions.push_back(SetSelection{adds ? united(state.selection, things) : things});
}

void pointerUp(const AppState& state, const PointerEvent& event, Actions& actions) {
    if (state.gesture.kind == GestureKind::None) {
        return;
    }
    Gesture gesture = state.gesture;
    drag(state, event, gesture, actions);
    actions.push_back(EndGesture{true});
    if (gesture.kind == GestureKind::Held || (gesture.kind == GestureKind::Pan && !gesture.moved)) {
        return;
    }
    if (gesture.kind == GestureKind::DrawMember) {
        endMember(state, gesture, actions);
    } else if (!gesture.moved) {
        tap(state, event, gesture, actions);
    } else if (gesture.kind == GestureKind::Enclose) {
        endAround(state, event, gesture, actions);
    } else if (gesture.kind == GestureKind::Cut) {
        actions.push_back(SetSelection{membersAcross(state, gesture.startPixel, event.pixel)});
    } else if (gesture.kind == GestureKind::MoveJoint) {
        keepMovedSelected(gesture, actions);
    }
}

// A tap that it interrupts does nothing; a stroke in progress continues.
void hold(const AppState& state, const PointerEvent& event, Actions& actions) {
    const Gesture& gesture = state.gesture;
    if (gesture.moved || state.notebook.reading || onlyMovesBoard(state, event.kind)) {
        return;
    }
    BoardMenu menu;
    menu.open = true;
    menu.under = gesture.kind != GestureKind::None // the gesture's edit may have removed it
                     ? gesture.under
                     : pick(state, event.pixel, slackOf(event.kind));
    menu.pixel = event.pixel;
    actions.push_back(EndGesture{false});
    actions.push_back(SetHover{});
    actions.push_back(SetMenu{menu});
    if (gesture.kind != GestureKind::None && !menu.under) {
        Gesture held = gestureOf(GestureKind::Held);
        held.startPixel = gesture.startPixel;
        held.lastPixel = gesture.startPixel;
        held.byFinger = gesture.byFinger;
        actions.push_back(SetGesture{held});
    }
}

} // namespace

double slackOf(PointerKind kind) {
    switch (kind) {
    case PointerKind::Mouse:
        return 8;
    case PointerKind::Pen:
        return 12;
    case PointerKind::Touch:
        break;
    }
    return 22; // half a touch target
}

void stepTool(const AppState& state, const PointerEvent& event, Actions& actions) {
    switch (event.phase) {
    case PointerPhase::Down:
        pointerDown(state, event, actions);
        break;
    case PointerPhase::Move:
        pointerMove(state, event, actions);
        break;
    case PointerPhase::Up:
        pointerUp(state, event, actions);
        break;
    case PointerPhase::Cancel:
        abandonGesture(state, actions);
        break;
    case PointerPhase::LongPress:
        hold(state, event, actions);
        break;
    }
}

void abandonGesture(const AppState& state, Actions& actions) {
    if (state.gesture.kind != GestureKind::None || state.pending) {
        actions.push_back(EndGesture{false});
    }
}

} // namespace gusset
