#include "app/roof_board.hpp"
#include "canvas/hands/board_field.hpp"
#include "canvas/scene/symbols.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;
using support::Board;
using support::roofBoard;

namespace {

Vec2 loadForce(const Board& board) {
    return forceOf(board.state.truss.loads.back()).value_or(Vec2{});
}

} // namespace

TEST_CASE("a load is drawn from a joint in the direction of the drag, in round figures") {
    Board board = roofBoard();
    board.act(Commit{Remove{{{}, {}, {}, {LoadId{0}}}}});
    board.use(Tool::Load);
    const Vec2 joint = toPixel(board.state.view.camera, {0, 0});
    board.feedPixel(PointerPhase::Down, joint);
    board.feedPixel(PointerPhase::Move, joint + Vec2{0, 40});
    board.feedPixel(PointerPhase::Move, joint + Vec2{2, 73}); // 1.6° off the vertical
    CHECK(loadForce(board) == Vec2{0, -12});                  // 10 units for 60 px
    board.feedPixel(PointerPhase::Up, joint + Vec2{2, 73});
    CHECK(std::get<JointForce>(board.state.truss.loads.back().what).joint == JointId{0});
    CHECK(board.state.history.past().size() == 2);
}

TEST_CASE("an inclined load keeps the size and the angle that were drawn") {
    Board board;
    board.use(Tool::Member);
    board.drag({0, 0}, {4, 0});
    board.use(Tool::Load);
    const Vec2 joint = toPixel(board.state.view.camera, {4, 0});
    board.feedPixel(PointerPhase::Down, joint);
    board.feedPixel(PointerPhase::Move, joint + Vec2{52, -30}); // 30° up, 60 px
    board.feedPixel(PointerPhase::Up, joint + Vec2{52, -30});
    const auto& force = std::get<AngledForce>(board.state.truss.loads.back().what);
    CHECK(force.size == 10);
    CHECK(force.angle == 30);
}

TEST_CASE("a load is changed by dragging the far end of its arrow, which stays under the pointer") {
    Board board = roofBoard();
    const Arrow arrow = layOutSymbols(board.state.truss, board.state.view.camera).loads[0].arrow;
    REQUIRE(arrow.tail.y < arrow.head.y); // it comes from above, its tail is the far end
    board.feedPixel(PointerPhase::Down, arrow.tail);
    board.feedPixel(PointerPhase::Move, arrow.tail - Vec2{0, 40});
    board.feedPixel(PointerPhase::Up, arrow.tail - Vec2{0, 40});
    const Vec2 force = loadForce(board);
    CHECK(force.x == 0);
    // 80 px are 10 kN, so 120 px are 15.
    CHECK(force.y == -15);
    CHECK(board.state.truss.loads.size() == 1);
    CHECK(board.state.history.past().size() == 1);
}

TEST_CASE("a tap on a loaded joint opens its value, which is typed in place") {
    Board board = roofBoard();
    board.use(Tool::Load);
    board.tap({3, 4});
    CHECK(board.state.truss.loads.size() == 1);
    REQUIRE(board.state.field.id == FieldId(LoadField{LoadId{0}}));
    CHECK(board.state.field.text == "10");
    const std::optional<FieldPlace> place = boardFieldPlace(board.state);
    REQUIRE(place);
    CHECK(place->rect.size.y >= kTouchTarget);

    Actions actions;
    finishBoardField(board.state, {LoadField{LoadId{0}}, "12.5", FieldEnd::Kept}, actions);
    update(board.state, actions);
    CHECK(loadForce(board) == Vec2{0, -12.5}); // a bare magnitude keeps the direction
    CHECK_FALSE(board.state.field.id);
}

TEST_CASE("typed loads are read by components, by size and angle, and refused in words") {
    const auto typed = [](const char* text) {
        Board board = roofBoard();
        board.act(BeginField{LoadField{LoadId{0}}, "10"});
        Actions actions;
        finishBoardField(board.state, {LoadField{LoadId{0}}, text, FieldEnd::Kept}, actions);
        update(board.state, actions);
        return board;
    };
    CHECK(loadForce(typed("3, -4")) == Vec2{3, -4});
    CHECK(loadForce(typed("5 @ 90")) == Vec2{0, 5});
    CHECK(loadForce(typed("-10")) == Vec2{0, 10}); // reversed
    const Board refused = typed("a lot");
    CHECK(refused.state.truss == support::roof());
    CHECK(refused.state.message.kind == MessageKind::Problem);
    CHECK(typed("10").state.history.past().empty()); // unchanged: nothing to undo
}
