#include "canvas/hands/board_field.hpp"

#include "app/fields/cells.hpp"
#include "app/fields/load_text.hpp"
#include "app/fields/typed_text.hpp"
#include "canvas/hands/strokes.hpp"
#include "canvas/scene/figures.hpp"
#include "canvas/scene/symbols.hpp"
#include "model/edit/rebuild.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/tools.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr Vec2 kFieldSize{136, kTouchTarget};
constexpr double kFieldAway = 8; // px between an arrow's end and its field

Rect keptOnBoard(Rect rect, const Camera& camera) {
    const double right = camera.size.x - camera.coverRight - rect.size.x;
    const double bottom = camera.size.y - camera.coverBottom - rect.size.y;
    rect.at.x = std::max(std::min(rect.at.x, right), 0.0);
    rect.at.y = std::max(std::min(rect.at.y, bottom), camera.coverTop);
    return rect;
}

// A field beside `point`, in the direction `way`.
Rect fieldBeside(Vec2 point, Vec2 way, const Camera& camera) {
    const Vec2 half = 0.5 * kFieldSize;
    const double reach = std::abs(way.x) * half.x + std::abs(way.y) * half.y + kFieldAway;
    return keptOnBoard({point + reach * way - half, kFieldSize}, camera);
}

std::optional<Rect> loadFieldRect(const AppState& state, LoadId load) {
    const Camera& camera = state.view.camera;
    for (const LoadSymbol& symbol : layOutSymbols(state.truss, camera).loads) {
        if (symbol.load == load) {
            const Arrow& arrow = symbol.arrow;
            const Vec2 far = symbol.pushes ? arrow.tail : arrow.head;
            const Vec2 near = symbol.pushes ? arrow.head : arrow.tail;
            return fieldBeside(far, (1 / length(far - near)) * (far - near), camera);
        }
    }
    return std::nullopt;
}

void refuse(const Issues& issues, Actions& actions) {
    actions.push_back(Say{MessageKind::Problem, issues.front().says});
}

bool isThere(const Truss& truss, LoadId load) {
    return load.valid() && load.at() < truss.loads.size();
}

void finishLoad(const AppState& state, LoadId id, const std::string& text, Actions& actions) {
    if (!isThere(state.committed, id)) {
        return;
    }
    const Load& load = state.committed.loads[id.at()];
    const Outcome<Load> typed = withTypedForce(state.committed, load, text);
    if (typed) {
        actions.push_back(Commit{SetLoad{id, typed.value()}});
    } else {
        refuse(typed.issues(), actions);
    }
}

void finishDimension(const AppState& state, const Measured& measured, const std::string& text,
                     Actions& actions) {
    const Outcome<double> value = readLength(text, state.committed.units.length);
    if (!value) {
        return refuse(value.issues(), actions);
    }
    const Outcome<Stretch> stretch =
        stretched({*state.book, state.committed}, measured, value.value());
    if (!stretch) {
        return refuse(stretch.issues(), actions);
    }
    actions.push_back(Say{MessageKind::Info, stretch.value().says});
    actions.push_back(Commit{stretch.value().edit}); // last, so that its message replaces that one
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

// Moves the joint at the end of the member drawn last to where the text says.
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

std::optional<Rect> rectOf(const AppState& state, const FieldId& field) {
    const Camera& camera = state.view.camera;
    const auto* load = std::get_if<LoadField>(&field);
    if (load && isThere(state.truss, load->load)) {
        if (const std::optional<Rect> beside = loadFieldRect(state, load->load)) {
            return beside;
        }
    }
    if (field == FieldId(MemberEndField::Drawing) && state.chain.active) {
        // Beside its start, which doesn't move.
        return fieldBeside(toPixel(camera, state.chain.last), {0, 1}, camera);
    }
    for (const Figure& figure : state.figures) {
        if (figure.opens == field) {
            return keptOnBoard({figure.at - 0.5 * kFieldSize, kFieldSize}, camera);
        }
    }
    return std::nullopt;
}

// Feet and inches need letters, and so do directions.
bool isNumeric(const Truss& truss, const FieldId& field) {
    const LengthUnit unit = truss.units.length;
    return std::holds_alternative<Measured>(field)
               ? unit != LengthUnit::ft && unit != LengthUnit::in
               : !std::holds_alternative<MemberEndField>(field);
}

std::string nameOf(const AppState& state, const FieldId& field) {
    const PhraseBook& book = *state.book;
    if (const auto* load = std::get_if<LoadField>(&field)) {
        return sayPlain(
            book, phrase::kForceOf,
            {{"load", rowName({book, state.truss}, CellTable::Loads, load->load.index)}});
    }
    if (const auto* measured = std::get_if<Measured>(&field)) {
        return sayPlain(book, measured->upright ? phrase::kHeightBetween : phrase::kDistanceAlong);
    }
    return sayPlain(book, field == FieldId(MemberEndField::Drawing) ? phrase::kEndBeingDrawn
                                                                    : phrase::kEndDrawnLast);
}

} // namespace

bool isBoardField(const FieldId& field) {
    return std::holds_alternative<LoadField>(field) || std::holds_alternative<Measured>(field) ||
           std::holds_alternative<MemberEndField>(field);
}

std::optional<FieldPlace> boardFieldPlace(const AppState& state) {
    const std::optional<FieldId>& field = state.field.id;
    const std::optional<Rect> rect = field ? rectOf(state, *field) : std::nullopt;
    if (!rect) {
        return std::nullopt;
    }
    return FieldPlace{.field = *field,
                      .name = nameOf(state, *field),
                      .text = state.field.text,
                      .rect = *rect,
                      .numeric = isNumeric(state.truss, *field),
                      .keys = extraKeys(*field),
                      .goesOn = state.field.goesOn,
                      .ofMember = std::holds_alternative<MemberEndField>(*field)};
}

void beginTyping(const AppState& state, const std::string& text, Actions& actions) {
    const Gesture& gesture = state.gesture;
    const bool drags = gesture.kind == GestureKind::DrawMember && gesture.moved;
    if (state.field.id || (!drags && !state.chain.active)) {
        return;
    }
    if (drags) { // the pointer may be released: the member is now typed
        Chain chain = chainFrom(gesture.from);
        chain.to = gesture.to.at;
        chain.showsTo = true;
        actions.push_back(EndGesture{false});
        actions.push_back(SetChain{chain});
    }
    actions.push_back(BeginField{MemberEndField::Drawing, text, true});
}

void followTyping(const AppState& state, const FieldTyped& typed, Actions& actions) {
    if (typed.field != FieldId(MemberEndField::Drawing) || !state.chain.active) {
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
    if (const auto* load = std::get_if<LoadField>(&done.field)) {
        finishLoad(state, load->load, text, actions);
    } else if (const auto* measured = std::get_if<Measured>(&done.field)) {
        finishDimension(state, *measured, text, actions);
    } else if (done.field == FieldId(MemberEndField::Drawing)) {
        finishMember(state, text, actions);
    } else if (done.field == FieldId(MemberEndField::Drawn)) {
        finishDrawn(state, text, actions);
    }
}

} // namespace gusset
