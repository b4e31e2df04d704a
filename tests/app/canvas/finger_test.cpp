#include "app/roof_board.hpp"
#include "app/state/session.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;
using support::Board;
using support::roofBoard;

namespace {

Loupe loupeOf(Board& board) {
    derive(board.state, board.derived);
    return buildScene(board.state, board.derived, support::measure).loupe;
}

} // namespace

TEST_CASE("once a pen was seen a finger pans and changes nothing, until it is allowed to draw") {
    Board board = roofBoard(PointerKind::Pen);
    board.tap({3, 1.6});
    CHECK(board.state.penSeen);
    CHECK_FALSE(board.state.view.fingerDraws);
    CHECK_FALSE(board.state.message.text.empty()); // says so
    board.kind = PointerKind::Touch;
    const Camera before = board.state.view.camera;
    board.drag({3, 4}, {3, 2});
    CHECK(board.state.truss == support::roof());
    CHECK(board.state.view.camera != before);
    board.use(Tool::Pin);
    board.tap({3, 4});
    board.hold({3, 4});
    CHECK_FALSE(board.state.menu.open);
    board.up({3, 4});
    CHECK(board.state.truss == support::roof());
    board.act(Set{&View::fingerDraws, true});
    board.tap({3, 4});
    CHECK(board.state.truss.supports.size() == 3);
    board.kind = PointerKind::Pen;
    board.tap({3, 4}); // the choice stays
    CHECK(board.state.view.fingerDraws);
}

TEST_CASE("in reading mode a finger edits nothing, and picks only what the working is about") {
    Board board = roofBoard(PointerKind::Touch);
    board.act(Set{&NotebookState::tab, NotebookTab::Working});
    board.act(Read{true});
    for (const Tool tool : {Tool::Select, Tool::Erase, Tool::Member}) {
        board.use(tool);
        board.tap({3, 4});
        board.drag({3, 4}, {3, 2});
        board.hold({3, 4});
        board.up({3, 4});
        CHECK_FALSE(board.state.menu.open);
        CHECK(board.state.selection.empty());
        CHECK(board.state.truss == support::roof());
    }
    board.act(Set{&NotebookState::working, WorkingPage::OneForce});
    board.tap({3, 0}); // the tie
    CHECK(board.state.selection.members.size() == 1);
    board.tap({1, 3.6}); // beside the truss
    CHECK(board.state.selection.members.size() == 1);
    board.act(Set{&NotebookState::working, WorkingPage::Displacement});
    board.tap({3, 4});
    CHECK(board.state.selection.joints.size() == 1);
}

TEST_CASE("a pen draws as a mouse does") {
    Board board = roofBoard(PointerKind::Pen);
    board.drag({3, 4}, {3, 2});
    CHECK(board.state.truss.joints[2].at == Vec2{3, 2});
}

TEST_CASE("whether fingers draw is kept with the board") {
    Board board = roofBoard(PointerKind::Pen);
    board.tap({3, 1.6});
    const std::optional<AppState> read = readSession(writeSession(board.state));
    REQUIRE(read);
    CHECK(read.value().penSeen);
    CHECK_FALSE(read.value().view.fingerDraws);
}

TEST_CASE("a loupe stands above a finger that drags a joint, and for no other pointer") {
    for (const PointerKind kind : {PointerKind::Mouse, PointerKind::Pen, PointerKind::Touch}) {
        Board board = roofBoard(kind);
        board.down({3, 4});
        CHECK_FALSE(loupeOf(board).shown); // nothing is dragged yet
        board.move({3, 2});
        const Loupe loupe = loupeOf(board);
        CHECK(loupe.shown == (kind == PointerKind::Touch));
        if (loupe.shown) {
            CHECK(loupe.of == board.state.gesture.lastPixel);
            CHECK(loupe.at.x == loupe.of.x);
            CHECK(loupe.at.y + kLoupeRadius < loupe.of.y);
        }
        board.up({3, 2});
        CHECK_FALSE(loupeOf(board).shown);
    }
}

TEST_CASE("near the edges the loupe stays on the board and off the finger") {
    Board board = roofBoard(PointerKind::Touch);
    board.use(Tool::Member);
    const Camera& camera = board.state.view.camera;
    const Vec2 low{0, camera.coverTop};
    const Vec2 high{camera.size.x - camera.coverRight, camera.size.y - camera.coverBottom};
    for (const Vec2 place : {low + Vec2{3, 3}, Vec2{high.x - 3, low.y + 3}, high - Vec2{3, 3},
                             Vec2{0.5 * (low.x + high.x), low.y + 20}}) {
        board.down({3, 4});
        board.feedPixel(PointerPhase::Move, place);
        const Loupe loupe = loupeOf(board);
        REQUIRE(loupe.shown);
        CHECK(length(loupe.at - loupe.of) > kLoupeRadius + 20);
        CHECK(loupe.at.x - kLoupeRadius >= low.x);
        CHECK(loupe.at.x + kLoupeRadius <= high.x);
        CHECK(loupe.at.y - kLoupeRadius >= low.y);
        board.feedPixel(PointerPhase::Cancel, place);
    }
}
