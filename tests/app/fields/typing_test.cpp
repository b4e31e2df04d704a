#include "app/roof_board.hpp"
#include "canvas/hands/board_field.hpp"
#include "canvas/scene/figures.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

using namespace gusset;
using Catch::Matchers::WithinAbs;
using support::Board;
using support::undoText;

namespace {

Board drawnRoof() {
    Board board = support::roofBoard();
    board.draw();
    return board;
}

void begin(Board& board, const char* text) {
    Actions actions;
    beginTyping(board.state, text, actions);
    update(board.state, actions);
}

void follow(Board& board, const char* text) {
    Actions actions;
    followTyping(board.state, {board.state.field.id.value(), text}, actions);
    update(board.state, actions);
}

void finish(Board& board, const char* text, FieldEnd how = FieldEnd::Below) {
    Actions actions;
    finishBoardField(board.state, {board.state.field.id.value(), text, how}, actions);
    update(board.state, actions);
}

// A chain started at the origin, with the mouse to the right of it.
Board drawingBoard() {
    Board board;
    board.use(Tool::Member);
    board.tap({0, 0});
    board.move({2, 0});
    return board;
}

const Figure* figureOf(const Board& board, bool upright, double from, double to) {
    for (const Figure& figure : board.state.figures) {
        if (figure.opens == FieldId(Measured{upright, from, to})) {
            return &figure;
        }
    }
    return nullptr;
}

void tapFigure(Board& board, const Figure& figure) {
    const Vec2 at = figure.at;
    board.feedPixel(PointerPhase::Down, at);
    board.feedPixel(PointerPhase::Up, at);
}

} // namespace

TEST_CASE("a member's end is typed while it is drawn, in each of the ways") {
    struct Case {
        const char* text;
        Vec2 end;
    };
    // At 30°: cos = √3/2, sin = 1/2.
    for (const Case& typed :
         {Case{"3", {3, 0}}, Case{"4 @ 90", {0, 4}}, Case{"2; 1.5", {2, 1.5}},
          Case{"= 5; 2", {5, 2}}, Case{"250 cm", {2.5, 0}}, Case{"2 @ 30°", {1.7320508, 1}}}) {
        INFO(typed.text);
        Board board = drawingBoard();
        begin(board, "3");
        REQUIRE(board.state.field.id == FieldId(MemberEndField::Drawing));
        CHECK(boardFieldPlace(board.state)->goesOn);
        follow(board, typed.text);
        CHECK_THAT(length(board.state.chain.to - typed.end), WithinAbs(0, 1e-6)); // preview
        finish(board, typed.text);
        REQUIRE(board.state.truss.joints.size() == 2);
        CHECK_THAT(length(board.state.truss.joints[1].at - typed.end), WithinAbs(0, 1e-6));
        CHECK(board.state.chain.active); // and continues from there
        CHECK(board.state.chain.last == board.state.truss.joints[1].at);
        CHECK(board.state.history.past().size() == 1);
    }
}

TEST_CASE("a bare length goes the way the mouse points, also in mid-drag") {
    Board board;
    board.use(Tool::Member);
    board.down({0, 0});
    board.move({1, 1});
    board.move({2, 2});
    begin(board, "5");
    board.up({2, 2}); // releasing the button while the field is open does nothing
    CHECK(board.state.truss.joints.empty());
    finish(board, "5");
    REQUIRE(board.state.truss.joints.size() == 2);
    const Vec2 end = board.state.truss.joints[1].at;
    CHECK_THAT(length(end), WithinAbs(5, 1e-8));
    CHECK_THAT(end.x - end.y, WithinAbs(0, 1e-8));
}

TEST_CASE("a typed end on a joint or a member joins it") {
    Board board = drawnRoof();
    board.use(Tool::Member);
    board.tap({3, 4});
    begin(board, "0");
    finish(board, "0; -4"); // onto the middle of AB
    CHECK(board.state.truss.members.size() == 4 + 1);
    board.tap({0, 0});
    board.press(Key::Escape);
    board.tap({0, 0});
    begin(board, "=");
    finish(board, "= 3; 4"); // along CA, an existing member
    CHECK(board.state.truss.members.size() == 5);
}

TEST_CASE("a member without length and what can't be read are refused, and the chain stays") {
    for (const char* text : {"0", "0; 0", "far", "= 3"}) {
        INFO(text);
        Board board = drawingBoard();
        begin(board, "0");
        finish(board, text);
        CHECK(board.state.truss.joints.empty());
        CHECK(board.state.message.kind == MessageKind::Problem);
        CHECK(board.state.chain.active);
    }
}

TEST_CASE("digits typed while nothing is drawn open nothing") {
    Board board = drawnRoof();
    begin(board, "3");
    CHECK_FALSE(board.state.field.id);
}

TEST_CASE("while an end is typed the mouse no longer draws it, and Escape in the field goes on") {
    Board board = drawingBoard();
    begin(board, "3");
    follow(board, "3 @ 90");
    board.move({5, 5});
    CHECK_THAT(board.state.chain.to.y, WithinAbs(3, 1e-9));
    finish(board, "3 @ 90", FieldEnd::GivenUp);
    CHECK(board.state.truss.joints.empty());
    board.move({4, 0});
    CHECK(board.state.chain.to == Vec2{4, 0});
}

TEST_CASE("after a finger's stroke its figure stays to be tapped and typed") {
    Board board;
    board.kind = PointerKind::Touch;
    board.use(Tool::Member);
    board.drag({0, 0}, {4, 0});
    board.draw();
    REQUIRE(board.state.figures.size() >= 1);
    const Figure* figure = nullptr;
    for (const Figure& one : board.state.figures) {
        figure = one.opens == FieldId(MemberEndField::Drawn) ? &one : figure;
    }
    REQUIRE(figure != nullptr);
    CHECK(figure->text == "4");
    tapFigure(board, *figure);
    REQUIRE(board.state.field.id == FieldId(MemberEndField::Drawn));
    CHECK(board.state.truss.joints.size() == 2); // the tap drew nothing
    REQUIRE(boardFieldPlace(board.state));
    finish(board, "3.75");
    CHECK(board.state.truss.joints[1].at == Vec2{3.75, 0});
    board.drag({3.75, 0}, {2, 3});
    board.press(Key::Undo);
    board.draw();
    for (const Figure& one : board.state.figures) {
        CHECK(one.opens != FieldId(MemberEndField::Drawn)); // it is gone, and so is its label
    }
}

TEST_CASE("a finger's chain offers its next length to be typed") {
    Board board;
    board.kind = PointerKind::Touch;
    board.use(Tool::Member);
    board.tap({0, 0});
    board.draw();
    REQUIRE(board.state.figures.size() == 1);
    tapFigure(board, board.state.figures.front());
    REQUIRE(board.state.field.id == FieldId(MemberEndField::Drawing));
    finish(board, "4 @ 90");
    REQUIRE(board.state.truss.joints.size() == 2);
    CHECK_THAT(board.state.truss.joints[1].at.y, WithinAbs(4, 1e-9));
}

TEST_CASE("a press that only ends typing draws nothing") {
    Board board = drawingBoard();
    PointerEvent event;
    event.phase = PointerPhase::Down;
    event.pixel = toPixel(board.state.view.camera, {4, 0});
    event.endsTyping = true;
    Actions actions;
    stepTool(board.state, event, actions);
    update(board.state, actions);
    board.up({4, 0});
    CHECK(board.state.truss.joints.empty());
}

TEST_CASE("a tapped dimension opens its value, and a new one moves what lies beyond it") {
    Board board = drawnRoof();
    const Figure* whole = figureOf(board, false, 0, 6);
    const Figure* panel = figureOf(board, false, 0, 3);
    const Figure* height = figureOf(board, true, 0, 4);
    REQUIRE(whole != nullptr);
    REQUIRE(height != nullptr);
    tapFigure(board, *height);
    REQUIRE(openField<Measured>(board.state));
    CHECK(board.state.field.text == "4");
    CHECK(boardFieldPlace(board.state)->rect.size.y >= kTouchTarget);
    finish(board, "4.5");
    CHECK(board.state.truss.joints[2].at == Vec2{3, 4.5});
    CHECK(board.state.truss.joints[0].at == Vec2{0, 0});
    CHECK(board.state.history.past().size() == 1);
    CHECK(board.state.message.text.find("upwards") != std::string::npos);
    CHECK(panel != nullptr);
}

TEST_CASE("a dimension of a panel moves the joints to its right by as much") {
    Board board = drawnRoof();
    const Outcome<Stretch> stretch =
        stretched({*board.state.book, board.state.truss}, {false, 0, 3}, 3.5);
    REQUIRE(stretch);
    board.act(Commit{stretch.value().edit});
    CHECK(board.state.truss.joints[0].at == Vec2{0, 0});
    CHECK(board.state.truss.joints[1].at == Vec2{6.5, 0});
    CHECK(board.state.truss.joints[2].at == Vec2{3.5, 4});
    CHECK(stretch.value().says.find("2 joints from there to the right moved by 0.5") == 0);
    CHECK(undoText(board.state).find("Dimension of 3.5") == 0);
}

TEST_CASE("a dimension that is nothing or can't be read is refused in words") {
    for (const char* text : {"0", "-2", "wide", ""}) {
        INFO(text);
        Board board = drawnRoof();
        tapFigure(board, *figureOf(board, false, 0, 6));
        finish(board, text);
        CHECK(board.state.truss == support::roof());
        CHECK(board.state.message.kind == MessageKind::Problem);
    }
}

TEST_CASE("a joint beside a dimension is taken before it, and other tools leave it alone") {
    Board board = drawnRoof();
    Figure covering = *figureOf(board, false, 0, 6);
    covering.at = toPixel(board.state.view.camera, {3, 4}) + Vec2{0, 30};
    board.act(SetFigures{{covering}});
    CHECK(figureAt(board.state, toPixel(board.state.view.camera, {3, 4}) + Vec2{0, 10}) == nullptr);
    CHECK(figureAt(board.state, covering.at) != nullptr);
    board.use(Tool::Load);
    CHECK(figureAt(board.state, covering.at) == nullptr);
}
