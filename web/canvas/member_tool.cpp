#include "canvas/pick.hpp"
#include "canvas/strokes.hpp"
#include "model/rebuild.hpp"

namespace gusset {

namespace {

MemberEnd endAt(const AppState& state, const PointerEvent& event) {
    if (!event.alt) {
        return snap(state, event.pixel, slackOf(event.kind));
    }
    View view = state.view;
    view.snapToGrid = false;
    const Vec2 at = snapToGrid(view, toWorld(view.camera, event.pixel));
    return {jointAt(state.truss, at), at};
}

// Draws unless there is nothing to draw: along a member that is there a chain just goes on.
void draw(const AppState& state, const MemberEnd& from, const MemberEnd& to, Actions& actions) {
    const bool joined = from.joint.valid() && to.joint.valid() &&
                        findMember(state.committed, from.joint, to.joint).valid();
    if (!joined) {
        actions.push_back(Commit{DrawMember{from, to}});
    }
}

void tapMember(const AppState& state, const MemberEnd& to, Actions& actions) {
    Chain chain = state.chain;
    if (!chain.active) {
        chain = {.active = true, .first = to.at, .last = to.at, .to = to.at};
    } else if (to.at == chain.last) {
        chain = {};
    } else {
        draw(state, {jointAt(state.committed, chain.last), chain.last}, to, actions);
        const bool closed = to.at == chain.first;
        chain.last = to.at;
        chain.to = to.at;
        chain.active = !closed;
    }
    actions.push_back(SetChain{chain});
}

} // namespace

Gesture beginMember(const AppState& state, const PointerEvent& event) {
    Gesture gesture;
    gesture.kind = GestureKind::DrawMember;
    gesture.from = endAt(state, event);
    gesture.to = gesture.from;
    return gesture;
}

void dragMember(const AppState& state, const PointerEvent& event, Gesture& gesture) {
    gesture.to = endAt(state, event);
}

void endMember(const AppState& state, const Gesture& gesture, Actions& actions) {
    if (!gesture.moved) {
        tapMember(state, gesture.from, actions);
        return;
    }
    actions.push_back(SetChain{});
    if (gesture.from.at != gesture.to.at) {
        draw(state, gesture.from, gesture.to, actions);
    }
}

void hoverMember(const AppState& state, const PointerEvent& event, Actions& actions) {
    if (!state.chain.active) {
        return;
    }
    Chain chain = state.chain;
    chain.to = endAt(state, event).at;
    chain.showsTo = true;
    if (chain.to != state.chain.to || !state.chain.showsTo) {
        actions.push_back(SetChain{chain});
    }
}

} // namespace gusset
