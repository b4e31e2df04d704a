#pragma once
// A board under test: the state with events fed to it as the page feeds them, at places given in
// the plane of the truss.

#include "app/derived/derived.hpp"
#include "app/state/camera.hpp"
#include "app/state/layout.hpp"
#include "app/state/update.hpp"
#include "canvas/hands/tool.hpp"
#include "canvas/scene/scene.hpp"
#include "support/trusses/small_truss.hpp"

#include <chrono>
#include <memory>
#include <string>

namespace gusset::support {

// What the next undo and redo are called, in the language of the state.
[[nodiscard]] inline std::string undoText(const AppState& state) {
    return said(*state.book, state.history.undoName());
}
[[nodiscard]] inline std::string redoText(const AppState& state) {
    return said(*state.book, state.history.redoName());
}

struct Board {
    AppState state = startWith({});
    Derived derived;
    PointerKind kind = PointerKind::Mouse;
    bool alt = false;
    bool shift = false;

    void act(const Action& action) { update(state, {action}); }

    void feedPixel(PointerPhase phase, Vec2 pixel) {
        PointerEvent event;
        event.phase = phase;
        event.kind = kind;
        event.pixel = pixel;
        event.alt = alt;
        event.shift = shift;
        Actions actions;
        stepTool(state, event, actions);
        update(state, actions);
    }
    void feed(PointerPhase phase, Vec2 world) {
        feedPixel(phase, toPixel(state.view.camera, world));
    }
    void down(Vec2 world) { feed(PointerPhase::Down, world); }
    void move(Vec2 world) { feed(PointerPhase::Move, world); }
    void up(Vec2 world) { feed(PointerPhase::Up, world); }
    void tap(Vec2 world) {
        down(world);
        up(world);
    }
    void drag(Vec2 from, Vec2 to) {
        down(from);
        move(0.5 * (from + to));
        move(to);
        up(to);
    }
    // Pointer down and held still, until the page treats it as a long press.
    void hold(Vec2 world) {
        down(world);
        feed(PointerPhase::LongPress, world);
    }
    // As the page does after each frame: updates what can be tapped where it is drawn.
    void draw();
    void press(Key key) {
        Actions actions;
        pressKey(state, key, actions);
        update(state, actions);
    }
    void use(Tool tool) { act(SetTool{tool}); }
    // Derives what a page shows, completely.
    void finish(bool (*derivePage)(const AppState&, Derived&, Slice&)) {
        Slice all = wholeSlice();
        while (derivePage(state, derived, all)) {
        }
    }
    // The same for the page of influence lines, with a plot of this width in px.
    InfluenceShown& line(double width) {
        Slice all = wholeSlice();
        while (deriveInfluence(state, derived.influence, width, all)) {
        }
        return derived.influence;
    }
    const Solution& solution() {
        derive(state, derived);
        return derived.solution;
    }
};

// A slice that a single unit uses up, however short it is.
[[nodiscard]] inline Slice oneUnit() {
    const auto reads = std::make_shared<int>(0);
    return {.left = std::chrono::microseconds{1},
            .clock = [reads] { return std::chrono::microseconds{(*reads)++}; }};
}

// Label sizes of a common typeface: 7.8 px per character, 9.5 px for the bold names of joints.
[[nodiscard]] inline Vec2 measure(const std::string& text, LabelKind kind) {
    int characters = 0;
    for (const char c : text) {
        characters += (static_cast<unsigned char>(c) & 0xC0) != 0x80 ? 1 : 0;
    }
    return kind == LabelKind::Joint ? Vec2{9.5 * characters, 19} : Vec2{7.8 * characters, 17};
}

inline void Board::draw() {
    derive(state, derived);
    act(SetFigures{buildScene(state, derived, measure).figures});
}

} // namespace gusset::support
