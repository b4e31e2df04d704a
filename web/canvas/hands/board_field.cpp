#include "canvas/hands/board_field.hpp"

#include "app/fields/typed_text.hpp"
#include "canvas/hands/strokes.hpp"
#include "canvas/scene/figures.hpp"
#include "canvas/scene/symbols.hpp"
#include "model/edit/rebuild.hpp"
#include "model/quantity/quantity_input.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace gusset {

namespace {

constexpr std::string_view kBoard = "board.";
constexpr std::string_view kLoad = "board.load.";
constexpr Vec2 kFieldSize{136, kTouchTarget};
constexpr double kFieldAway = 8; // px between an arrow's end and its field

// The index behind a key's beginning, if it is one of a list of so many.
std::optional<int> indexOf(const std::string& key, std::string_view beginning, std::size_t count) {
    if (key.compare(0, beginning.size(), beginning) != 0) {
        return std::nullopt;
    }
    int index = -1;
    const char* end = key.data() + key.size();
    const auto read = std::from_chars(key.data() + beginning.size(), end, index);
    const bool good = read.ec == std::errc{} && read.ptr == end && index >= 0 &&
                      static_cast<std::size_t>(index) < count;
    return good ? std::optional<int>(index) : std::nullopt;
}

Rect keptOnBoard(Rect rect, const Camera& camera) {
    const double right = camera.size.x - camera.coverRight - rect.size.x;
    const double bottom = camera.size.y - camera.coverBottom - rect.size.y;
    rect.at.x = std::max(std::min(rect.at.x, right), 0.0);
    rect.at.y = std::max(std::min(rect.at.y, bottom), camera.coverTop);
    return rect;
}

// A field beside `point`, on the side that `way` leads to.
Rect fieldBeside(Vec2 point, Vec2 way, const Camera& camera) {
    const Vec2 half = 0.5 * kFieldSize;
    const double reach = std::abs(way.x) * half.x + std::abs(way.y) * half.y + kFieldAway;
    return keptOnBoard({point + reach * way - half, kFieldSize}, camera);
}

std::optional<Rect> loadFieldRect(const AppState& state, int index) {
    const Camera& camera = state.view.camera;
    for (const LoadSymbol& symbol : layOutSymbols(state.truss, camera).loads) {
        if (symbol.load.index == index) {
            const Arrow& arrow = symbol.arrow;
            const Vec2 far = symbol.pushes ? arrow.tail : arrow.head;
            const Vec2 near = symbol.pushes ? arrow.head : arrow.tail;
            return fieldBeside(far, (1 / length(far - near)) * (far - near), camera);
        }
    }
    return std::nullopt;
}

// A bare number is a size: the arrow keeps its direction. A negative one turns it round.
Load withSize(const Load& load, double size) {
    Load typed = load;
    if (auto* angled = std::get_if<AngledForce>(&typed.what)) {
        angled->size = size;
    } else if (auto* force = std::get_if<JointForce>(&typed.what)) {
        const double before = std::sqrt(force->fx * force->fx + force->fy * force->fy);
        force->fx = before > 0 ? size * (force->fx / before) : 0;
        force->fy = before > 0 ? size * (force->fy / before) : -size;
    } else if (auto* onMember = std::get_if<MemberForce>(&typed.what)) {
        const Vec2 force{onMember->fx, onMember->fy};
        const double before = length(force);
        onMember->fx = before > 0 ? size * (force.x / before) : 0;
        onMember->fy = before > 0 ? size * (force.y / before) : -size;
    }
    return typed;
}

Outcome<Load> typedLoad(const Load& load, const std::string& text, ForceUnit unit) {
    if (const Outcome<double> size = readForce(text, unit)) {
        return withSize(load, size.value());
    }
    const Outcome<TypedVector> force = readForceVector(text, unit);
    if (!force) {
        return force.issues();
    }
    Load typed = load;
    const TypedVector& read = force.value();
    if (auto* onMember = std::get_if<MemberForce>(&typed.what)) {
        const Vec2 parts =
            read.angled ? read.first * directionOf(read.second) : Vec2{read.first, read.second};
        onMember->fx = parts.x;
        onMember->fy = parts.y;
    } else if (read.angled) {
        typed.what = AngledForce{jointOf(load), read.first, read.second};
    } else {
        typed.what = JointForce{jointOf(load), read.first, read.second};
    }
    return typed;
}

void refuse(const Issues& issues, Actions& actions) {
    actions.push_back(Say{MessageKind::Problem, issues.front().says});
}

void finishLoad(const AppState& state, int index, const std::string& text, Actions& actions) {
    const Load& load = state.committed.loads[static_cast<std::size_t>(index)];
    const Outcome<Load> typed = typedLoad(load, text, state.committed.units.force);
    if (typed) {
        actions.push_back(Commit{SetLoad{LoadId{index}, typed.value()}});
    } else {
        refuse(typed.issues(), actions);
    }
}

void finishDimension(const AppState& state, const std::string& text, Actions& actions) {
    const Outcome<double> value = readLength(text, state.committed.units.length);
    if (!value) {
        return refuse(value.issues(), actions);
    }
    const Outcome<Stretch> stretch =
        stretched({*state.book, state.committed}, state.field.measured, value.value());
    if (!stretch) {
        return refuse(stretch.issues(), actions);
    }
    actions.push_back(Say{MessageKind::Info, stretch.value().says});
    actions.push_back(Commit{stretch.value().edit}); // last: what it has to say comes over that
}

void finishMember(const AppState& state, const std::string& text, Actions& actions) {
    if (!state.chain.active || text.empty()) {
        return;
    }
    const Outcome<Vec2> to = typedEnd(state, state.chain.last, text);
    if (to) {
        drawTo(state, to.value(), actions);
    } else {
        refuse(to.issues(), actions);
    }
}

// The joint at the end of what was drawn last goes where the text says.
void finishDrawn(const AppState& state, const std::string& text, Actions& actions) {
    const Drawn& drawn = state.drawn;
    const JointId joint = jointAt(state.committed, drawn.to);
    if (!drawn.shown || !joint.valid() || text.empty()) {
        return;
    }
    const Outcome<Vec2> to = typedEnd(state, drawn.from, text);
    if (!to) {
        return refuse(to.issues(), actions);
    }
    actions.push_back(Commit{MoveJoint{joint, to.value()}});
    actions.push_back(SetDrawn{{true, drawn.from, to.value()}});
}

std::optional<Rect> rectOf(const AppState& state) {
    const std::string& key = state.field.key;
    const Camera& camera = state.view.camera;
    if (const auto load = indexOf(key, kLoad, state.truss.loads.size())) {
        return loadFieldRect(state, *load);
    }
    if (key == kMemberKey && state.chain.active) { // beside its beginning, which stays
        return fieldBeside(toPixel(camera, state.chain.last), {0, 1}, camera);
    }
    for (const Figure& figure : state.figures) {
        const bool same =
            figure.key == key && (key != kDimensionKey || figure.measured == state.field.measured);
        if (same) {
            return keptOnBoard({figure.at - 0.5 * kFieldSize, kFieldSize}, camera);
        }
    }
    return std::nullopt;
}

// Feet and inches need letters, and so do directions.
bool isNumeric(const AppState& state) {
    const LengthUnit unit = state.truss.units.length;
    const std::string& key = state.field.key;
    return key == kDimensionKey ? unit != LengthUnit::ft && unit != LengthUnit::in
                                : key != kMemberKey && key != kDrawnKey;
}

} // namespace

bool isBoardField(const std::string& key) { return key.compare(0, kBoard.size(), kBoard) == 0; }

std::optional<FieldPlace> boardFieldPlace(const AppState& state) {
    const std::optional<Rect> rect = rectOf(state);
    if (!rect) {
        return std::nullopt;
    }
    FieldPlace place;
    place.key = state.field.key;
    place.text = state.field.text;
    place.rect = *rect;
    place.numeric = isNumeric(state);
    place.goesOn = state.field.goesOn;
    return place;
}

void beginTyping(const AppState& state, const std::string& text, Actions& actions) {
    const Gesture& gesture = state.gesture;
    const bool drags = gesture.kind == GestureKind::DrawMember && gesture.moved;
    if (!state.field.key.empty() || (!drags && !state.chain.active)) {
        return;
    }
    if (drags) { // the pointer may let go: typing has the member now
        Chain chain = chainFrom(gesture.from);
        chain.to = gesture.to.at;
        chain.showsTo = true;
        actions.push_back(EndGesture{false});
        actions.push_back(SetChain{chain});
    }
    actions.push_back(BeginField{kMemberKey, text, {}, true});
}

void followTyping(const AppState& state, const FieldTyped& typed, Actions& actions) {
    if (typed.key != kMemberKey || !state.chain.active) {
        return;
    }
    if (const Outcome<Vec2> to =
            typedEnd(state, state.chain.last, withPoints(state.truss, typed.text))) {
        Chain chain = state.chain;
        chain.to = to.value();
        chain.snap = {};
        chain.showsTo = true;
        actions.push_back(SetChain{chain});
    }
}

void finishBoardField(const AppState& state, const FieldDone& done, Actions& actions) {
    actions.push_back(EndField{});
    const bool asItWas = done.text == state.field.text && !state.field.goesOn;
    if (done.how == FieldEnd::GivenUp || asItWas) {
        return;
    }
    const std::string text = withPoints(state.committed, done.text);
    if (const auto load = indexOf(done.key, kLoad, state.committed.loads.size())) {
        finishLoad(state, *load, text, actions);
    } else if (done.key == kDimensionKey) {
        finishDimension(state, text, actions);
    } else if (done.key == kMemberKey) {
        finishMember(state, text, actions);
    } else if (done.key == kDrawnKey) {
        finishDrawn(state, text, actions);
    }
}

} // namespace gusset
