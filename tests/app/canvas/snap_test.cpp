#include "app/roof_board.hpp"
#include "canvas/scene/snap.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>

using namespace gusset;
using Catch::Matchers::WithinAbs;
using support::Board;
using support::undoText;

namespace {

Board gridRoof(bool grid = true) {
    Board board = support::roofBoard();
    board.state.view.snapToGrid = grid;
    return board;
}

Vec2 lastJoint(const Board& board) { return board.state.truss.joints.back().at; }

// World vector of this many pixels.
Vec2 pixels(const Board& board, double x, double y) {
    return (1 / board.state.view.camera.scale) * Vec2{x, y};
}

std::vector<std::string> hints(Board& board) {
    derive(board.state, board.derived);
    std::vector<std::string> texts;
    for (const LabelMark& label : buildScene(board.state, board.derived, support::measure).labels) {
        if (label.kind == LabelKind::Hint) {
            texts.push_back(label.text);
        }
    }
    return texts;
}

} // namespace

TEST_CASE("a member drawn onto the middle of another splits it there") {
    Board board = gridRoof();
    board.use(Tool::Member);
    board.drag({3, 4}, Vec2{3, 0} + pixels(board, 2, -2));
    REQUIRE(board.state.truss.joints.size() == 4);
    CHECK(lastJoint(board) == Vec2{3, 0});
    CHECK(board.state.truss.members.size() == 5);
    CHECK(board.solution().status == Status::Determinate);
    board.press(Key::Undo);
    CHECK(board.state.truss == support::roof());
}

TEST_CASE("a chain by taps begins on a member by splitting it") {
    Board board = gridRoof();
    board.kind = PointerKind::Touch;
    board.use(Tool::Member);
    board.tap(Vec2{3, 0} + pixels(board, 2, 4));
    CHECK(board.state.truss == support::roof());
    board.tap({3, 4});
    CHECK(board.state.truss.members.size() == 5);
    CHECK(lastJoint(board) == Vec2{3, 0});
}

TEST_CASE("the middle, thirds and quarters of a sloping member are places to join it") {
    Board board = gridRoof(false);
    for (const double share : {0.5, 1.0 / 3, 0.75}) {
        SnapRequest request;
        request.pixel = toPixel(board.state.view.camera, share * Vec2{3, 4}) + Vec2{3, 1};
        const Snapped snapped = snapTo(board.state.truss, board.state.view, request);
        CAPTURE(share);
        CHECK(snapped.snap.kind == SnapKind::Member);
        CHECK_THAT(snapped.end.at.x, WithinAbs(3 * share, 1e-12));
        CHECK_THAT(snapped.end.at.y, WithinAbs(4 * share, 1e-12));
    }
}

TEST_CASE("a joint dropped on one that it is not joined to becomes one with it") {
    Board board = gridRoof();
    board.use(Tool::Member);
    board.drag({6, 0}, {10, 0});
    board.drag({10, 0}, {9, 3});
    board.use(Tool::Select);
    const std::size_t before = board.state.history.past().size();
    board.drag({9, 3}, Vec2{3, 4} + pixels(board, 2, 1)); // E on C
    CHECK(board.state.truss.joints.size() == 4);
    CHECK(board.state.truss.members.size() == 5);
    CHECK(board.state.truss.joints[2].at == Vec2{3, 4});
    CHECK(board.state.history.past().size() == before + 1);
    CHECK(undoText(board.state) == "Merge joint E into C");
    CHECK(board.state.selection.empty());
}

TEST_CASE("a joint dropped on a member stands in it") {
    Board board = gridRoof();
    board.use(Tool::Member);
    board.drag({6, 0}, {10, 0});
    board.use(Tool::Select);
    board.drag({10, 0}, Vec2{1.5, 2} + pixels(board, 1, 1)); // on the middle of rafter CA
    const Truss& truss = board.state.truss;
    CHECK(truss.joints.size() == 4);
    CHECK(lastJoint(board) == Vec2{1.5, 2});
    CHECK(findMember(truss, JointId{0}, JointId{3}).valid());
    CHECK(findMember(truss, JointId{3}, JointId{2}).valid());
    CHECK_FALSE(findMember(truss, JointId{0}, JointId{2}).valid());
}

TEST_CASE("a joint of several that are selected takes the others along") {
    Board board = gridRoof();
    board.shift = true;
    board.drag({-1, 1}, {7, -1});
    board.shift = false;
    const double step = board.state.view.gridStep;
    board.drag({6, 0}, {6 + 2 * step, step});
    CHECK(board.state.truss.joints[0].at == Vec2{2 * step, step});
    CHECK(board.state.truss.joints[1].at == Vec2{6 + 2 * step, step});
    CHECK(board.state.truss.joints[2].at == Vec2{3, 4});
    CHECK(undoText(board.state) == "Move 2 joints");
    CHECK(board.state.selection.joints.size() == 2);
    board.press(Key::Left);
    CHECK_THAT(board.state.truss.joints[0].at.x, WithinAbs(step, 1e-12));
}

TEST_CASE("without the grid joints stand in line with others, and dashed lines say so") {
    Board board = gridRoof(false);
    board.use(Tool::Member);
    board.down({3, 4});
    board.move(Vec2{6, 4} + pixels(board, 3, -4));
    CHECK(board.state.gesture.to.at == Vec2{6, 4}); // above B, level with C
    CHECK(board.state.gesture.snap.kind == SnapKind::Aligned);
    CHECK(board.state.gesture.snap.guides.size() == 2);
}

TEST_CASE("without the grid members are drawn at multiples of 15 degrees") {
    Board board = gridRoof(false);
    board.use(Tool::Member);
    board.down({6, 0});
    const Vec2 way = directionOf(30);
    board.move(Vec2{6, 0} + 2.7 * way + pixels(board, -1, 2));
    const Vec2 drawn = board.state.gesture.to.at - Vec2{6, 0};
    CHECK(board.state.gesture.snap.kind == SnapKind::Angle);
    CHECK_THAT(cross(drawn, way), WithinAbs(0, 1e-12));
}

TEST_CASE("without the grid a member is drawn as long as another") {
    Board board = gridRoof(false);
    board.use(Tool::Member);
    board.down({6, 0});
    board.move(Vec2{6, 0} + 4.97 * directionOf(23)); // the rafters are 5 long
    CHECK(board.state.gesture.snap.kind == SnapKind::EqualLength);
    CHECK_THAT(length(board.state.gesture.to.at - Vec2{6, 0}), WithinAbs(5, 1e-12));
    REQUIRE(hints(board).size() == 1);
    CHECK(hints(board)[0].find("5\u2009m = BC") == 0);
}

TEST_CASE("while a member is drawn its length, inclination and slope stand by the finger") {
    Board board = gridRoof();
    CHECK(hints(board).empty());
    board.use(Tool::Member);
    board.down({6, 0});
    board.move({10, 3});
    REQUIRE(hints(board).size() == 1);
    CHECK(hints(board)[0] == "5\u2009m   36.9°   3\u2009:\u20094");
    board.up({10, 3});
    CHECK(hints(board).empty());
    board.tap({10, 3}); // a chain, and a mouse that shows where it would go
    board.move({10, 1});
    REQUIRE(hints(board).size() == 1);
    CHECK(hints(board)[0] == "2\u2009m   90°");
}

TEST_CASE("a dragged joint tells its place, a drawn load its size and direction") {
    Board board = gridRoof();
    board.down({3, 4});
    board.move({3, 3});
    REQUIRE(hints(board).size() == 1);
    CHECK(hints(board)[0] == "x 3\u2009m   y 3\u2009m");
    board.feed(PointerPhase::Cancel, {3, 3});
    board.use(Tool::Load);
    const Vec2 joint = toPixel(board.state.view.camera, {0, 0});
    board.feedPixel(PointerPhase::Down, joint);
    board.feedPixel(PointerPhase::Move, joint + Vec2{0, 72}); // as long as that of the largest load
    REQUIRE(hints(board).size() == 1);
    CHECK(hints(board)[0] == "10\u2009kN   \u221290°");
}

TEST_CASE("figures of a gesture keep within the board and clear of the finger") {
    Board board = gridRoof();
    board.use(Tool::Member);
    for (const Vec2 pixel : {Vec2{20, 60}, Vec2{1350, 70}, Vec2{700, 760}, Vec2{10, 740}}) {
        board.down({6, 0});
        board.feedPixel(PointerPhase::Move, pixel);
        derive(board.state, board.derived);
        const Scene scene = buildScene(board.state, board.derived, support::measure);
        const auto hint =
            std::find_if(scene.labels.begin(), scene.labels.end(),
                         [](const LabelMark& label) { return label.kind == LabelKind::Hint; });
        REQUIRE(hint != scene.labels.end());
        const Vec2 half = 0.5 * support::measure(hint->text, hint->kind);
        const Vec2 end = toPixel(board.state.view.camera, board.state.gesture.to.at);
        CAPTURE(pixel.x, pixel.y, hint->at.x, hint->at.y);
        CHECK(hint->at.x - half.x >= 0);
        CHECK(hint->at.x + half.x <= 1366);
        CHECK(hint->at.y - half.y >= 0);
        CHECK((std::abs(hint->at.x - end.x) >= 50 || std::abs(hint->at.y - end.y) >= 50));
        board.feedPixel(PointerPhase::Cancel, pixel);
    }
}
