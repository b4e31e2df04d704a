#include "app/page/ground.hpp"

#include "app/fields/typed_text.hpp"
#include "app/state/update.hpp"
#include "exchange/json/json_text.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/messages.hpp"

namespace gusset {
namespace {

// Outside of these a camera can't show what is traced (app/state/camera).
constexpr double kShortest = 1e-3; // m
constexpr double kLongest = 1e4;   // m

void putLength(JsonText& json, const AppState& state, std::string_view typed) {
    const LengthUnit unit = state.truss.units.length;
    const Outcome<double> read = readLength(withPoints(state.truss, std::string(typed)), unit);
    const double metres = read ? read.value() * toMetre(unit) : 0;
    if (!read) {
        json.text("fault", said(*state.book, read.issues().front().says));
    } else if (metres < kShortest || metres > kLongest) {
        json.text("fault", sayPlain(*state.book, phrase::kNoGroundLength));
    } else {
        json.number("metres", metres);
    }
}

} // namespace

std::string groundPlace(const AppState& state, std::string_view typed) {
    JsonText json(Layout::Compact);
    json.beginObject();
    json.text("unit", symbolOf(state.truss.units.length));
    if (!typed.empty()) {
        putLength(json, state, typed);
    }
    if (state.selection.joints.size() == 1) {
        const Joint& joint = state.truss.joints[state.selection.joints.front().at()];
        const double metre = toMetre(state.truss.units.length);
        json.text("joint", joint.label);
        json.number("x", joint.at.x * metre);
        json.number("y", joint.at.y * metre);
    }
    json.endObject();
    return json.take();
}

void showGround(AppState& state, int ground, Extent box) {
    update(state, {Set{&View::ground, ground}});
    if (box.low != box.high) {
        const double unit = 1 / toMetre(state.truss.units.length);
        update(state, {SetCamera{fitTo(state.view.camera, {unit * box.low, unit * box.high})}});
    }
}

} // namespace gusset
