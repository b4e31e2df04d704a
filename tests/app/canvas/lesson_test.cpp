#include "app/board.hpp"
#include "canvas/scene/lesson.hpp"

#include "exchange/files/model_file.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;
using support::Board;

namespace {

Board firstBoard() {
    Board board;
    board.act(OpenText{writeModel(Truss{}), OpenedFrom::FirstNew});
    return board;
}

Lesson lessonOn(Board& board) {
    derive(board.state, board.derived);
    return lessonOf(board.state, board.derived);
}

// Dashed lines and rings in the accent colour; without a pointer on the board nothing else is.
bool hasGhost(Board& board) {
    derive(board.state, board.derived);
    const Scene scene = buildScene(board.state, board.derived, support::measure);
    return std::any_of(scene.lines.begin(), scene.lines.end(),
                       [](const LineMark& line) { return line.ink == Ink::Accent; });
}

} // namespace

TEST_CASE("each of the first steps is offered until it is taken, whatever it is taken with") {
    Board board = firstBoard();
    REQUIRE(board.state.view.teaches);
    CHECK(board.state.tool == Tool::Member);
    CHECK(lessonOn(board) == Lesson::FirstMember);
    CHECK(hasGhost(board));
    board.drag({0, 0}, {6, 0});
    CHECK(lessonOn(board) == Lesson::Triangle);
    CHECK(hasGhost(board));
    board.drag({6, 0}, {3, 4});
    CHECK(lessonOn(board) == Lesson::Triangle);
    board.drag({3, 4}, {0, 0});
    CHECK(lessonOn(board) == Lesson::Pin);
    board.use(Tool::Roller); // the roller first: the pin is still missing
    board.tap({6, 0});
    CHECK(lessonOn(board) == Lesson::Pin);
    board.use(Tool::Pin);
    board.tap({0, 0});
    CHECK(lessonOn(board) == Lesson::Load);
    CHECK(hasGhost(board));
    board.use(Tool::Load);
    board.tap({3, 4});
    CHECK(lessonOn(board) == Lesson::Forces);
    board.act(Undo{});
    CHECK(lessonOn(board) == Lesson::Load);
    board.act(Redo{});
    board.use(Tool::Select);
    board.tap({3, 0}); // the tie, in its middle
    CHECK(lessonOn(board) == Lesson::Done);
}

TEST_CASE("a truss that can't be solved waits, and says why elsewhere") {
    Board board = firstBoard();
    board.drag({0, 0}, {6, 0});
    board.drag({6, 0}, {3, 4});
    board.drag({3, 4}, {0, 0});
    board.drag({3, 4}, {9, 4}); // hangs by one member
    board.use(Tool::Pin);
    board.tap({0, 0});
    board.use(Tool::Roller);
    board.tap({6, 0});
    board.use(Tool::Load);
    board.tap({9, 4});
    CHECK(lessonOn(board) == Lesson::Waits);
    CHECK(toolFor(Lesson::Waits) == Tool::Select);
}

TEST_CASE("nobody who opens something is taught") {
    for (const OpenedFrom from : {OpenedFrom::File, OpenedFrom::Link, OpenedFrom::Example,
                                  OpenedFrom::Before, OpenedFrom::New, OpenedFrom::Form}) {
        Board board = firstBoard();
        board.act(OpenText{writeModel(support::roof()), from});
        CHECK_FALSE(board.state.view.teaches);
        CHECK_FALSE(hasGhost(board));
    }
}
