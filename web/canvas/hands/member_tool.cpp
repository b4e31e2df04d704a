#include "canvas/hands/strokes.hpp"
#include "canvas/scene/pick.hpp"
#include "canvas/scene/snap.hpp"
#include "core/tolerance.hpp"
#include "model/edit/rebuild.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/tools.hpp"

#include <cmath>

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

// Draws a member unless there is one already: along an existing member a chain just continues.
void draw(const AppState& state, const MemberEnd& from, const MemberEnd& to, Actions& actions) {
    const bool joined = from.joint.valid() && to.joint.valid() &&
                        findMember(state.committed, from.joint, to.joint).valid();
    if (!joined) {
        actions.push_back(Commit{DrawMember{from, to}});
    }
}

// A chain may start at a point on a member that is not split yet.
MemberEnd chainBeginning(const AppState& state) {
    const Chain& chain = state.chain;
    const JointId joint = jointAt(state.committed, chain.last);
    return {joint, chain.last, joint.valid() ? MemberId{} : chain.splits};
}

// The member that a typed position lies on, which a joint there splits.
MemberId memberThrough(const Truss& truss, Vec2 at) {
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const Vec2 a = truss.joints[truss.members[i].a.at()].at;
        const Vec2 b = truss.joints[truss.members[i].b.at()].at;
        if (distanceToSegment(at, a, b) <= kSameSpot * length(b - a)) {
            return MemberId{static_cast<int>(i)};
        }
    }
    return {};
}

// The direction of a length typed alone: as drawn on the board, or horizontal.
Vec2 wayDrawn(const AppState& state, Vec2 from) {
    const Vec2 to = state.drawn.shown ? state.drawn.to : state.chain.to;
    const double size = length(to - from);
    return size > 0 ? (1 / size) * (to - from) : Vec2{1, 0};
}

Outcome<Vec2> typedWay(const AppState& state, Vec2 from, const std::string& text) {
    const LengthUnit unit = state.truss.units.length;
    if (!isVector(text)) {
        const Outcome<double> size = readLength(text, unit);
        return size ? Outcome<Vec2>(size.value() * wayDrawn(state, from))
                    : Outcome<Vec2>(size.issues());
    }
    const Outcome<TypedVector> read = readLengthVector(text, unit);
    if (!read) {
        return read.issues();
    }
    const TypedVector& way = read.value();
    return way.angled ? way.first * directionOf(way.second) : Vec2{way.first, way.second};
}

// Draws one more member from the end of the chain.
void goOn(const AppState& state, const MemberEnd& to, bool byFinger, Actions& actions) {
    draw(state, chainBeginning(state), to, actions);
    Chain chain = state.chain;
    chain.active = to.at != chain.first;
    chain.last = to.at;
    chain.to = to.at;
    chain.splits = {};
    chain.showsTo = false;
    chain.byFinger = byFinger;
    actions.push_back(SetChain{chain});
}

void tapMember(const AppState& state, const Gesture& gesture, Actions& actions) {
    const MemberEnd& to = gesture.from;
    if (!state.chain.active) {
        Chain chain = chainFrom(to);
        chain.byFinger = gesture.byFinger;
        actions.push_back(SetChain{chain});
    } else if (to.at == state.chain.last) {
        actions.push_back(SetChain{});
    } else {
        goOn(state, to, gesture.byFinger, actions);
    }
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
        actions.push_back(SetDrawn{{gesture.byFinger, gesture.from.at, gesture.to.at}});
    }
}

Outcome<Vec2> typedEnd(const AppState& state, Vec2 from, const std::string& text) {
    const std::size_t first = text.find_first_not_of(' ');
    const bool isPlace = first != std::string::npos && text[first] == '=';
    Outcome<Vec2> way = typedWay(state, from, isPlace ? text.substr(first + 1) : text);
    if (!way) {
        return way;
    }
    if (isPlace && !isVector(text)) {
        return Issue{IssueCode::Syntax, "input", phrase::kPlaceHasTwo};
    }
    const Vec2 to = isPlace ? way.value() : from + way.value();
    if (length(to - from) == 0) {
        return Issue{IssueCode::ZeroLength, "input", phrase::kMemberHasLength};
    }
    return roundToStep(to, kHair * state.view.gridStep);
}

void drawTo(const AppState& state, Vec2 to, Actions& actions) {
    const JointId joint = jointAt(state.committed, to);
    goOn(state, {joint, to, joint.valid() ? MemberId{} : memberThrough(state.committed, to)},
         state.chain.byFinger, actions);
}

Chain chainFrom(const MemberEnd& end) {
    Chain chain;
    chain.active = true;
    chain.first = end.at;
    chain.last = end.at;
    chain.to = end.at;
    chain.splits = end.splits;
    return chain;
}

void hoverMember(const AppState& state, const PointerEvent& event, Actions& actions) {
    if (!state.chain.active || state.field.id) { // the end is being typed, not pointed at
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
