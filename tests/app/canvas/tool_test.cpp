#include "app/roof_board.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

using namespace gusset;
using Catch::Matchers::WithinAbs;
using support::Board;
using support::roofBoard;
using support::undoText;

namespace {

Board emptyBoard(PointerKind kind = PointerKind::Mouse) {
    Board board;
    board.kind = kind;
    return board;
}

} // namespace

TEST_CASE("a truss of three joints is drawn by the pointer from an empty board, and solved") {
    for (const PointerKind kind : {PointerKind::Mouse, PointerKind::Touch, PointerKind::Pen}) {
        Board board = emptyBoard(kind);
        board.use(Tool::Member);
        board.drag({0, 0}, {6, 0});
        board.drag({6, 0}, {3, 4});
        board.drag({3, 4}, {0, 0});
        board.use(Tool::Pin);
        board.tap({0, 0});
        board.use(Tool::Roller);
        board.tap({6, 0});
        board.use(Tool::Load);
        board.tap({3, 4});
        REQUIRE(board.state.truss.joints.size() == 3);
        REQUIRE(board.state.truss.members.size() == 3);
        const Solution& solution = board.solution();
        REQUIRE(solution.status == Status::Determinate);
        // The first load is 10 kN down. Half of it at each support; the rafter at A has a rise of 4
        // in 5: F_AC = −5·5/4 = −6.25 kN, and the tie balances its run of 3 in 5: F_AB = 6.25·3/5 =
        // 3.75 kN.
        CHECK_THAT(solution.forces[0], WithinAbs(3750, 1e-6));
        CHECK_THAT(solution.forces[1], WithinAbs(-6250, 1e-6));
        CHECK_THAT(solution.forces[2], WithinAbs(-6250, 1e-6));
    }
}

TEST_CASE("taps draw a chain of members that ends where it began") {
    Board board = emptyBoard(PointerKind::Touch);
    board.use(Tool::Member);
    board.tap({0, 0});
    CHECK(board.state.truss.joints.empty()); // the first tap only sets the start
    board.tap({4, 0});
    board.tap({4, 3});
    CHECK(board.state.chain.active);
    board.tap({0, 0});
    CHECK_FALSE(board.state.chain.active);
    CHECK(board.state.truss.joints.size() == 3);
    CHECK(board.state.truss.members.size() == 3);
}

TEST_CASE("a chain ends by Escape and by a second tap on its last joint") {
    Board board = emptyBoard();
    board.use(Tool::Member);
    board.tap({0, 0});
    board.tap({4, 0});
    board.press(Key::Escape);
    CHECK_FALSE(board.state.chain.active);
    board.tap({0, 0});
    board.tap({0, 3});
    board.tap({0, 3});
    CHECK_FALSE(board.state.chain.active);
    CHECK(board.state.truss.members.size() == 2);
}

TEST_CASE("a chain goes along a member that is there and does not draw it twice") {
    Board board = emptyBoard();
    board.use(Tool::Member);
    board.drag({0, 0}, {4, 0});
    board.tap({0, 0});
    board.tap({4, 0});
    board.tap({4, 3});
    CHECK(board.state.truss.members.size() == 2);
    CHECK(board.state.message.text.empty());
}

TEST_CASE("a member that ends where it begins is not drawn") {
    Board board = emptyBoard();
    board.use(Tool::Member);
    board.down({0, 0});
    board.move({3, 1});
    board.up({0, 0});
    CHECK(board.state.truss.joints.empty());
    CHECK(board.state.history.undoName().empty());
}

TEST_CASE(
    "members end on joints near by and else on the grid, in figures as a person writes them") {
    Board board = emptyBoard();
    REQUIRE(board.state.view.gridStep == 0.5);
    board.use(Tool::Member);
    board.drag({0.04, -0.03}, {4.04, 0.03});
    board.drag({3.97, 0.05}, {4.26, 3.22});
    REQUIRE(board.state.truss.joints.size() == 3);
    CHECK(board.state.truss.joints[0].at == Vec2{0, 0});
    CHECK(board.state.truss.joints[1].at == Vec2{4, 0});
    CHECK(board.state.truss.joints[2].at == Vec2{4.5, 3});
}

TEST_CASE("with the modifier held nothing snaps, and figures stay short") {
    Board board = emptyBoard();
    board.alt = true;
    board.use(Tool::Member);
    board.drag({0.313, 0}, {2.777, 1.131});
    REQUIRE(board.state.truss.joints.size() == 2);
    CHECK(board.state.truss.joints[0].at == Vec2{0.315, 0});
    CHECK(board.state.truss.joints[1].at == Vec2{2.775, 1.13});
}

TEST_CASE("dragging a joint re-solves as it goes and is one step to undo") {
    Board board = roofBoard();
    board.down({3, 4});
    board.move({3, 4.5});
    board.move({3, 3});
    // F_AB = 5·3/3 = 5 kN with C at 3 over a half span of 3.
    CHECK_THAT(board.solution().forces[0], WithinAbs(5000, 1e-6));
    board.move({3, 2});
    CHECK_THAT(board.solution().forces[0], WithinAbs(7500, 1e-6)); // 5·3/2
    board.up({3, 2});
    CHECK(board.state.committed == board.state.truss);
    CHECK(board.state.history.past().size() == 1);
    CHECK(undoText(board.state) == "Move joint C");
    board.press(Key::Undo);
    CHECK(board.state.truss == support::roof());
    CHECK_THAT(board.solution().forces[0], WithinAbs(3750, 1e-6));
}

TEST_CASE("a lost pointer, a second finger and Escape take the stroke back") {
    for (const int how : {0, 1, 2}) {
        Board board = roofBoard();
        board.down({3, 4});
        board.move({3, 2});
        REQUIRE(board.state.truss != support::roof());
        if (how == 0) {
            board.feed(PointerPhase::Cancel, {3, 2});
        } else if (how == 1) {
            Actions actions;
            abandonGesture(board.state, actions);
            update(board.state, actions);
        } else {
            board.press(Key::Escape);
        }
        CHECK(board.state.truss == support::roof());
        CHECK(board.state.history.past().empty());
        board.up({3, 1}); // what follows is not a stroke
        CHECK(board.state.truss == support::roof());
    }
}

TEST_CASE(
    "a joint can't be dropped on another that it is joined to: it stays where it last could be") {
    Board board = roofBoard();
    board.down({3, 4});
    board.move({5, 1});
    board.move({6, 0});
    CHECK_FALSE(board.state.pendingFault.empty());
    board.up({6, 0});
    CHECK(board.state.truss.joints[2].at == Vec2{5, 1});
    CHECK(board.state.message.kind == MessageKind::Problem);
    CHECK_FALSE(board.state.message.text.empty());
}

TEST_CASE("taps select, and one on the empty board selects nothing") {
    Board board = roofBoard();
    board.tap({3, 4});
    CHECK(board.state.selection.joints == std::vector{JointId{2}});
    board.tap({3, 0});
    CHECK(board.state.selection.members == std::vector{MemberId{0}});
    CHECK(board.state.selection.joints.empty());
    board.shift = true;
    board.tap({3, 4});
    CHECK(board.state.selection.joints.size() + board.state.selection.members.size() == 2);
    board.shift = false;
    board.tap({3, 1.5});
    CHECK(board.state.selection.empty());
}

TEST_CASE("dragging the empty board moves it and changes nothing of the truss") {
    Board board = roofBoard();
    const Vec2 before = toPixel(board.state.view.camera, {0, 0});
    board.feedPixel(PointerPhase::Down, {200, 150});
    board.feedPixel(PointerPhase::Move, {240, 130});
    board.feedPixel(PointerPhase::Move, {260, 170});
    board.feedPixel(PointerPhase::Up, {260, 170});
    const Vec2 after = toPixel(board.state.view.camera, {0, 0});
    CHECK_THAT(after.x - before.x, WithinAbs(60, 1e-9));
    CHECK_THAT(after.y - before.y, WithinAbs(20, 1e-9));
    CHECK(board.state.truss == support::roof());
    CHECK(board.state.history.past().empty());
}

TEST_CASE("a tap with the pin tool puts a pin and takes it away") {
    Board board = roofBoard();
    board.use(Tool::Pin);
    board.tap({3, 4});
    REQUIRE(board.state.truss.supports.size() == 3);
    CHECK(board.state.truss.supports[2].joint == JointId{2});
    board.tap({3, 4});
    CHECK(board.state.truss == support::roof());
    board.tap({3, 1.5});
    CHECK(board.state.truss == support::roof());
    CHECK_FALSE(board.state.message.text.empty()); // says what to tap
}

TEST_CASE("taps with the roller tool roll on a floor, on a wall, and away") {
    Board board = roofBoard();
    board.use(Tool::Roller);
    board.tap({3, 4});
    CHECK(board.state.truss.supports.back().reaction == 90);
    board.tap({3, 4});
    CHECK(board.state.truss.supports.back().reaction == 0);
    board.tap({3, 4});
    CHECK(board.state.truss.supports.size() == 2);
}

TEST_CASE("the eraser takes a tapped thing, or all that it goes over, as one step") {
    Board board = roofBoard();
    board.use(Tool::Erase);
    board.tap({3, 0});
    CHECK(board.state.truss.members.size() == 2);
    board.press(Key::Undo);
    board.down({1.5, 2.6}); // beside rafter CA
    board.move({1.5, 2});
    board.move({4.5, 2}); // over to rafter BC
    board.up({4.5, 2});
    CHECK(board.state.truss.members.size() == 1);
    CHECK(board.state.truss.members[0].b == JointId{1}); // the tie remains
    board.press(Key::Undo);
    CHECK(board.state.truss == support::roof());
}

TEST_CASE("the eraser on a joint takes what hangs on it, and Escape gives it back") {
    Board board = roofBoard();
    board.use(Tool::Erase);
    board.down({3, 4});
    CHECK(board.state.truss.members.size() == 1);
    CHECK(board.state.truss.loads.empty());
    board.press(Key::Escape);
    CHECK(board.state.truss == support::roof());
}

TEST_CASE("arrow keys move the selected joint by a step of the grid") {
    Board board = roofBoard();
    board.tap({3, 4});
    const double step = board.state.view.gridStep;
    board.press(Key::Up);
    board.press(Key::Right);
    CHECK(board.state.truss.joints[2].at == Vec2{3 + step, 4 + step});
    board.press(Key::Delete);
    CHECK(board.state.truss.joints.size() == 2);
    CHECK(board.state.selection.empty());
}

TEST_CASE("next and previous leaf through the working, which the first press opens") {
    Board board = roofBoard();
    board.press(Key::NextStep);
    CHECK(board.state.notebook.tab == NotebookTab::Working);
    CHECK(board.state.notebook.step == 0);
    board.press(Key::NextStep);
    board.press(Key::NextStep);
    CHECK(board.state.notebook.step == 2);
    for (int i = 0; i < 5; ++i) {
        board.press(Key::PreviousStep);
    }
    CHECK(board.state.notebook.step == 0);
}

TEST_CASE("with nothing selected, left and right leaf through the working that is looked at") {
    Board board = roofBoard();
    const Truss before = board.state.truss;
    board.press(Key::Right);
    CHECK(board.state.notebook.step == 0);
    board.press(Key::NextStep); // opens it
    board.press(Key::Right);
    board.press(Key::Right);
    board.press(Key::Left);
    CHECK(board.state.notebook.step == 1);
    board.press(Key::Up);
    CHECK(board.state.notebook.step == 1);
    CHECK(board.state.truss == before);
    board.tap({3, 4}); // a joint: now the arrow keys move it
    board.press(Key::Right);
    CHECK(board.state.notebook.step == 1);
    CHECK(board.state.truss.joints[2].at.x > before.joints[2].at.x);
}

TEST_CASE("joints come before loads and supports, these before members") {
    Board board = roofBoard();
    const Camera& camera = board.state.view.camera;
    const auto hitAt = [&](Vec2 pixel) {
        board.feedPixel(PointerPhase::Move, pixel);
        return board.state.hover;
    };
    const Vec2 pin = toPixel(camera, {0, 0});
    CHECK(hitOf<JointId>(hitAt(pin + Vec2{3, 3})).valid());
    CHECK(hitOf<SupportId>(hitAt(pin + Vec2{0, 18})).valid());
    CHECK(hitOf<LoadId>(hitAt(toPixel(camera, {3, 4}) - Vec2{0, 40})).valid());
    CHECK(hitOf<MemberId>(hitAt(toPixel(camera, {3, 0}) + Vec2{0, 5})).valid());
    CHECK_FALSE(hitAt(toPixel(camera, {3, 1.5})));
}

TEST_CASE("with the working of one force open, a line drawn across the truss picks what it cuts") {
    Board board;
    board.state = startWith(support::roof());
    board.use(Tool::Select);
    board.act(Set{&NotebookState::tab, NotebookTab::Working});
    board.act(Set{&NotebookState::working, WorkingPage::OneForce});
    const Camera before = board.state.view.camera;
    board.drag({4.5, 4}, {4.5, -1}); // across BC and AB
    CHECK(board.state.selection.members == std::vector{MemberId{0}, MemberId{1}});
    CHECK(board.state.view.camera == before);
    board.act(Set{&NotebookState::tab, NotebookTab::Model});
    board.drag({4.5, 4}, {4.5, -1}); // now it pans
    CHECK(board.state.view.camera != before);
}

TEST_CASE("where members are a few pixels long, a finger still reaches their middles") {
    Board board = roofBoard();
    board.act(SetCamera{zoomAbout(board.state.view.camera, {683, 384}, 0.1)});
    board.kind = PointerKind::Touch;
    const Vec2 middle = toPixel(board.state.view.camera, {3, 0});
    board.feedPixel(PointerPhase::Down, middle);
    board.feedPixel(PointerPhase::Up, middle);
    CHECK(board.state.selection.members == std::vector{MemberId{0}});
}
