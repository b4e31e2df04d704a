#include "canvas/board_field.hpp"

#include "canvas/symbols.hpp"
#include "model/quantity_input.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace gusset {

namespace {

constexpr std::string_view kBoard = "board.";
constexpr std::string_view kLoad = "board.load.";
constexpr Vec2 kFieldSize{136, kTouchTarget};
constexpr double kAway = 8; // px between an arrow's end and its field

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
    const double reach = std::abs(way.x) * half.x + std::abs(way.y) * half.y + kAway;
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
    }
    return typed;
}

Outcome<Load> typedLoad(const Load& load, const std::string& text, ForceUnit unit) {
    if (const Outcome<double> size = readForce(text, unit)) {
        return withSize(load, size.value());
    }
    const Outcome<TypedForce> force = readForceVector(text, unit);
    if (!force) {
        return force.issues();
    }
    Load typed = load;
    const TypedForce& read = force.value();
    if (read.angled) {
        typed.what = AngledForce{jointOf(load), read.first, read.second};
    } else {
        typed.what = JointForce{jointOf(load), read.first, read.second};
    }
    return typed;
}

} // namespace

bool isBoardField(const std::string& key) { return key.compare(0, kBoard.size(), kBoard) == 0; }

std::optional<FieldPlace> boardFieldPlace(const AppState& state) {
    const std::string& key = state.field.key;
    std::optional<Rect> rect;
    if (const auto load = indexOf(key, kLoad, state.truss.loads.size())) {
        rect = loadFieldRect(state, *load);
    }
    if (!rect) {
        return std::nullopt;
    }
    FieldPlace place;
    place.key = key;
    place.text = state.field.text;
    place.rect = *rect;
    return place;
}

void finishBoardField(const AppState& state, const FieldDone& done, Actions& actions) {
    actions.push_back(EndField{});
    const auto index = indexOf(done.key, kLoad, state.committed.loads.size());
    if (done.how == FieldEnd::GivenUp || !index || done.text == state.field.text) {
        return;
    }
    const Load& load = state.committed.loads[static_cast<std::size_t>(*index)];
    const Outcome<Load> typed = typedLoad(load, done.text, state.committed.units.force);
    if (typed) {
        actions.push_back(Commit{SetLoad{LoadId{*index}, typed.value()}});
    } else {
        actions.push_back(Say{MessageKind::Problem, typed.issues().front().says});
    }
}

} // namespace gusset
