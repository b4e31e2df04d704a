// Everything that a hand can do in the wrong order: interrupted strokes, keys and tools in
// mid-stroke, undo while a joint is dragged, fields of things that are gone. Whatever happens, the
// board stays consistent.

#include "app/board.hpp"
#include "app/state/session.hpp"
#include "canvas/hands/board_field.hpp"
#include "model/validate/validate.hpp"
#include "support/random.hpp"
#include "support/trusses/random_truss.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;
using support::Board;
using support::Random;

namespace {

// Usually near joints, where most things happen.
Vec2 somePixel(Random& random, const Board& board) {
    if (!board.state.truss.joints.empty() && !random.oneIn(3)) {
        const Vec2 joint = random.pick(board.state.truss.joints).at;
        return toPixel(board.state.view.camera, joint) +
               Vec2{random.decimal(-30, 30, 1), random.decimal(-30, 30, 1)};
    }
    return {random.decimal(-20, 1400, 1), random.decimal(-20, 800, 1)};
}

void somePointer(Random& random, Board& board) {
    board.kind = random.pick(std::vector{PointerKind::Mouse, PointerKind::Touch, PointerKind::Pen});
    board.alt = random.oneIn(6);
    board.shift = random.oneIn(6);
    const std::vector<PointerPhase> phases{
        PointerPhase::Down, PointerPhase::Down, PointerPhase::Move, PointerPhase::Move,
        PointerPhase::Move, PointerPhase::Up,   PointerPhase::Up,   PointerPhase::Cancel};
    board.feedPixel(random.pick(phases), somePixel(random, board));
}

void someKey(Random& random, Board& board) {
    board.press(random.pick(std::vector{Key::Delete, Key::Escape, Key::Undo, Key::Undo, Key::Redo,
                                        Key::SelectAll, Key::Fit, Key::Left, Key::Up, Key::NextStep,
                                        Key::PreviousStep}));
}

void someField(Random& random, Board& board) {
    const LoadField load{LoadId{random.integer(0, 3)}};
    board.act(BeginField{load, "10"});
    CHECK(isBoardField(board.state.field.id.value()));
    if (const auto place = boardFieldPlace(board.state)) {
        CHECK(isFinite(place->rect.at));
    }
    const std::string text =
        random.pick(std::vector<std::string>{"7", "-3", "1 @ 30", "2, 2", "", "0", "nonsense"});
    Actions actions;
    finishBoardField(board.state, {load, text, FieldEnd::Kept}, actions);
    update(board.state, actions);
}

void someView(Random& random, Board& board) {
    board.act(Set{&View::snapToGrid, !random.oneIn(3)});
    board.act(Set{&View::widthByForce, random.oneIn(2)});
    board.act(SetCamera{zoomAbout(board.state.view.camera, somePixel(random, board),
                                  random.oneIn(2) ? 1.3 : 0.77)});
}

void somethingUnruly(Random& random, Board& board) {
    const std::vector<Tool> tools{Tool::Select, Tool::Member, Tool::Pin,
                                  Tool::Roller, Tool::Load,   Tool::Erase};
    const int what = random.integer(0, 19);
    if (what < 14) {
        somePointer(random, board);
    } else if (what < 16) {
        board.use(random.pick(tools));
    } else if (what < 18) {
        someKey(random, board);
    } else if (what < 19) {
        someField(random, board);
    } else {
        someView(random, board);
    }
}

void checkSound(Board& board) {
    const AppState& state = board.state;
    REQUIRE(validate(state.committed).errors.empty());
    if (state.gesture.kind == GestureKind::None) {
        REQUIRE(state.truss == state.committed);
        REQUIRE_FALSE(state.pending);
    }
    derive(board.state, board.derived);
    REQUIRE(board.derived.revision == state.revision);
    const Scene scene = buildScene(state, board.derived, support::measure);
    for (const LineMark& line : scene.lines) {
        REQUIRE(isFinite(line.a));
        REQUIRE(isFinite(line.b));
    }
}

} // namespace

TEST_CASE("whatever a hand does in whatever order, the board stays sound and undo goes all the way "
          "back") {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        Random random(seed);
        Board board;
        const Truss first = seed % 4 == 0 ? Truss{} : support::randomDeterminateTruss(seed);
        board.state = startWith(first);
        for (int i = 0; i < 150; ++i) {
            CAPTURE(seed, i);
            somethingUnruly(random, board);
            checkSound(board);
        }
        const std::optional<AppState> saved = readSession(writeSession(board.state));
        REQUIRE(saved);
        CHECK(saved.value().truss == board.state.committed);
        board.act(EndGesture{false}); // the last stroke may still be in progress
        while (!board.state.history.past().empty()) {
            CHECK_FALSE(board.state.history.undoName().empty());
            board.act(Undo{});
        }
        CHECK(board.state.truss == first);
    }
}
