#include "canvas/snap.hpp"
#include "canvas/strokes.hpp"
#include "model/rebuild.hpp"

namespace gusset {

namespace {

Snapped endAt(const AppState& state, const PointerEvent& event, std::optional<Vec2> from) {
    SnapRequest request;
    request.pixel = event.pixel;
    request.slack = slackOf(event.kind);
    request.from = from;
    request.freely = event.alt;
    return snapTo(state.truss, state.view, request);
}

std::optional<Vec2> chainEnd(const AppState& state) {
    return state.chain.active ? std::optional<Vec2>(state.chain.last) : std::nullopt;
}

// Draws unless there is nothing to draw: along a member that is there a chain just goes on.
void draw(const AppState& state, const MemberEnd& from, const MemberEnd& to, Actions& actions) {
    const bool joined = from.joint.valid() && to.joint.valid() &&
                        findMember(state.committed, from.joint, to.joint).valid();
    if (!joined) {
        actions.push_back(Commit{DrawMember{from, to}});
    }
}

// The beginning of a chain may be a place on a member that is still whole.
MemberEnd chainBeginning(const AppState& state) {
    const Chain& chain = state.chain;
    const JointId joint = jointAt(state.committed, chain.last);
    return {joint, chain.last, joint.valid() ? MemberId{} : chain.splits};
}

void tapMember(const AppState& state, const Gesture& gesture, Actions& actions) {
    const MemberEnd& to = gesture.from;
    Chain chain = state.chain;
    if (!chain.active) {
        chain = {};
        chain.active = true;
        chain.first = to.at;
        chain.last = to.at;
        chain.splits = to.splits;
    } else if (to.at == chain.last) {
        chain = {};
    } else {
        draw(state, chainBeginning(state), to, actions);
        chain.active = to.at != chain.first;
        chain.last = to.at;
        chain.splits = {};
    }
    chain.to = to.at;
    chain.showsTo = false;
    actions.push_back(SetChain{chain});
}

} // namespace

Gesture beginMember(const AppState& state, const PointerEvent& event) {
    const Snapped snapped = endAt(state, event, chainEnd(state));
    Gesture gesture;
    gesture.kind = GestureKind::DrawMember;
    gesture.from = snapped.end;
    gesture.to = snapped.end;
    gesture.snap = snapped.snap;
    return gesture;
}

void dragMember(const AppState& state, const PointerEvent& event, Gesture& gesture) {
    const Snapped snapped = endAt(state, event, gesture.from.at);
    gesture.to = snapped.end;
    gesture.snap = snapped.snap;
}

void endMember(const AppState& state, const Gesture& gesture, Actions& actions) {
    if (!gesture.moved) {
        tapMember(state, gesture, actions);
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
    const Snapped snapped = endAt(state, event, chainEnd(state));
    Chain chain = state.chain;
    chain.to = snapped.end.at;
    chain.snap = snapped.snap;
    chain.showsTo = true;
    if (chain.to != state.chain.to || !state.chain.showsTo) {
        actions.push_back(SetChain{chain});
    }
}

} // namespace gusset
