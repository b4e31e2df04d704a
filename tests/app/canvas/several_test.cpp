#include "canvas/hands/several_field.hpp"

#include "app/roof_board.hpp"
#include "canvas/hands/arrange.hpp"
#include "canvas/scene/enclosing.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

using namespace gusset;
using Catch::Matchers::WithinAbs;
using support::Board;
using support::roofBoard;
using support::undoText;

namespace {

// A freehand line through these places of the plane, with the pointer lifted at the last.
void drawAround(Board& board, const std::vector<Vec2>& places) {
    board.down(places.front());
    for (std::size_t i = 1; i < places.size(); ++i) {
        for (int part = 1; part <= 4; ++part) {
            board.move(places[i - 1] + 0.25 * part * (places[i] - places[i - 1]));
        }
    }
    board.up(places.back());
}

void type(Board& board, SeveralKind kind, const char* text) {
    board.act(BeginField{kind, severalText(board.state, kind)});
    Actions actions;
    REQUIRE(finishSeveral(board.state, {kind, text, FieldEnd::Below}, actions));
    update(board.state, actions);
}

Board wholeRoof() {
    Board board = roofBoard();
    board.press(Key::SelectAll);
    return board;
}

} // namespace

TEST_CASE("with the modifier a stroke across is the diagonal of a box") {
    Board board = roofBoard();
    board.shift = true;
    board.drag({-1, 2}, {7, -2});
    CHECK(board.state.selection.joints == std::vector{JointId{0}, JointId{1}});
    CHECK(board.state.selection.members == std::vector{MemberId{0}});
    CHECK(selectionText(board.state) == "2 joints, 1 member");
}

TEST_CASE("with the modifier a line drawn around things selects what lies inside it") {
    Board board = roofBoard();
    board.shift = true;
    // Around B and C, passing A, which the bounding box of this line would contain: it passes to
    // the right of (0, 0), along the line from (0.5, −1) to (2, 5).
    drawAround(board, {{0.5, -1}, {7, -1}, {7, 1}, {4, 5}, {2, 5}});
    CHECK(board.state.selection.joints == std::vector{JointId{1}, JointId{2}});
    CHECK(board.state.selection.members == std::vector{MemberId{1}}); // BC
    CHECK(board.state.truss == support::roof());
}

TEST_CASE("what is drawn around comes to what is selected already") {
    Board board = roofBoard();
    board.shift = true;
    board.drag({-1, 1}, {1, -1});
    board.drag({5, 1}, {7, -1});
    CHECK(board.state.selection.joints == std::vector{JointId{0}, JointId{1}});
}

TEST_CASE("while several are picked taps add and take back, and a miss loses nothing") {
    Board board = roofBoard();
    board.kind = PointerKind::Touch;
    board.act(PickSeveral{true});
    board.tap({0, 0});
    board.tap({6, 0});
    board.tap({3, 1.6});
    CHECK(board.state.selection.joints == std::vector{JointId{0}, JointId{1}});
    board.tap({0, 0});
    CHECK(board.state.selection.joints == std::vector{JointId{1}});
    const Camera before = board.state.view.camera;
    board.drag({2, 5}, {4, 3});
    CHECK(board.state.view.camera == before); // it encloses and does not pan
    CHECK(board.state.selection.joints == std::vector{JointId{1}, JointId{2}});
    board.press(Key::Escape);
    CHECK_FALSE(board.state.picksSeveral);
}

TEST_CASE("a finger that rests on the paper and then draws selects what it draws around") {
    Board board = roofBoard();
    board.kind = PointerKind::Touch;
    board.hold({-1.5, 2});
    REQUIRE(board.state.menu.open);
    board.move({2, 0});
    CHECK_FALSE(board.state.menu.open); // drawing on from the long press closes it
    board.move({7.5, -2});
    board.up({7.5, -2});
    CHECK(board.state.selection.joints == std::vector{JointId{0}, JointId{1}});
    CHECK(board.state.history.past().empty());
}

TEST_CASE("what is selected moves by typed figures, as one step") {
    Board board = wholeRoof();
    type(board, SeveralKind::Move, "2; -0.5");
    CHECK(board.state.truss.joints[2].at == Vec2{5, 3.5});
    type(board, SeveralKind::Move, "5 @ 90°");
    CHECK_THAT(board.state.truss.joints[0].at.y, WithinAbs(4.5, 1e-9));
    CHECK(board.state.history.past().size() == 2);
    CHECK(undoText(board.state) == "Move 3 joints");
}

TEST_CASE("what is selected is copied, turned and repeated by typed figures") {
    Board board = wholeRoof();
    type(board, SeveralKind::Copy, "0, 10");
    CHECK(board.state.truss.joints.size() == 6);
    CHECK(undoText(board.state) == "Copy 3 joints");
    board.press(Key::Undo);
    board.press(Key::SelectAll);
    type(board, SeveralKind::Turn, "180");
    CHECK(undoText(board.state) == "Turn 3 joints");
    CHECK_THAT(board.state.truss.joints[2].at.y, WithinAbs(0, 1e-12)); // from 4, about y = 2
    board.press(Key::Undo);
    board.press(Key::SelectAll);
    type(board, SeveralKind::Repeat, "3 × 6 m");
    CHECK(board.state.truss.joints.size() == 9); // the feet are shared
    CHECK(undoText(board.state) == "Repeat 3 joints");
}

TEST_CASE("a repetition goes by the selection's own width when none is typed, or up a slope") {
    Board board = wholeRoof();
    CHECK(severalText(board.state, SeveralKind::Repeat) == "1 × 6");
    type(board, SeveralKind::Repeat, "2");
    CHECK(board.state.truss.joints.size() == 7);
    board.press(Key::Undo);
    board.press(Key::SelectAll);
    type(board, SeveralKind::Repeat, "1 x 8, 2");
    CHECK(board.state.truss.joints[3].at == Vec2{8, 2});
}

TEST_CASE("Enter takes the repetition that is offered, and leaving the field does not") {
    Board board = wholeRoof();
    const std::string offered = severalText(board.state, SeveralKind::Repeat);
    board.act(BeginField{SeveralKind::Repeat, offered});
    Actions left;
    CHECK(finishSeveral(board.state, {SeveralKind::Repeat, offered, FieldEnd::Kept}, left));
    AppState other = board.state;
    update(other, left);
    CHECK(other.truss == support::roof());
    Actions entered;
    CHECK(finishSeveral(board.state, {SeveralKind::Repeat, offered, FieldEnd::Below}, entered));
    update(board.state, entered);
    CHECK(board.state.truss.joints.size() == 5);
}

TEST_CASE("the selected members warm alike") {
    Board board = wholeRoof();
    type(board, SeveralKind::Warm, "30");
    for (const Member& member : board.state.truss.members) {
        CHECK(member.warming == 30);
    }
    CHECK(undoText(board.state) == "Change the temperature of 3 members");
    board.press(Key::Undo);
    CHECK(board.state.truss == support::roof());
}

TEST_CASE("what can't be read of several is refused in words and changes nothing") {
    for (const auto& [kind, text] :
         {std::pair{SeveralKind::Move, "2"}, std::pair{SeveralKind::Copy, "0, 0"},
          std::pair{SeveralKind::Turn, "a bit"}, std::pair{SeveralKind::Repeat, "0 × 3"},
          std::pair{SeveralKind::Repeat, "2.5 × 3"}, std::pair{SeveralKind::Repeat, "2 × 0"},
          std::pair{SeveralKind::Repeat, "1000"}, std::pair{SeveralKind::Warm, "hot"}}) {
        INFO(text);
        Board board = wholeRoof();
        type(board, kind, text);
        CHECK(board.state.truss == support::roof());
        CHECK(board.state.message.kind == MessageKind::Problem);
        CHECK_FALSE(board.state.message.text.empty());
    }
}
