#include "canvas/hands/arrange.hpp"

#include "app/roof_board.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;
using support::Board;
using support::undoText;

namespace {

Board roofWith(const Things& selected) {
    Board board = support::roofBoard();
    board.act(SetSelection{selected});
    return board;
}

Things joints(std::vector<JointId> ids) { return {std::move(ids), {}, {}, {}}; }

void commit(Board& board, const std::optional<Edit>& edit) {
    REQUIRE(edit);
    board.act(Commit{*edit});
}

} // namespace

TEST_CASE("a mirror image about the right edge shares the joints on it") {
    Board board = roofWith(joints({JointId{0}, JointId{2}})); // rafter CA, C its right end
    commit(board, mirrorSelection(board.state, Side::Right));
    // A's image coincides with B and rafter CA's with BC, which exist already: nothing is
    // duplicated.
    CHECK(board.state.truss.joints.size() == 3);
    CHECK(board.state.truss.members.size() == 3);
    CHECK(board.state.truss.loads.size() == 1); // the load at C is its own image
    board.act(SetSelection{joints({JointId{0}, JointId{1}, JointId{2}})});
    commit(board, mirrorSelection(board.state, Side::Right));
    CHECK(board.state.truss.joints.size() == 5);
    CHECK(board.state.truss.members.size() == 6);
    REQUIRE(board.state.truss.loads.size() == 2);
    CHECK(jointOf(board.state.truss.loads[1]) == JointId{4}); // C's image, after A's
    CHECK(board.state.truss.joints[4].at == Vec2{9, 4});
    board.press(Key::Undo);
    board.press(Key::Undo);
    CHECK(board.state.truss == support::roof());
}

TEST_CASE("mirrored below, up loads come of down loads") {
    Board board = roofWith(joints({JointId{0}, JointId{1}, JointId{2}}));
    commit(board, mirrorSelection(board.state, Side::Below));
    CHECK(board.state.truss.joints.size() == 4);
    CHECK(board.state.truss.joints[3].at == Vec2{3, -4});
    CHECK(forceOf(board.state.truss.loads[1]) == Vec2{0, 10});
}

TEST_CASE("repetitions stand side by side and share what meets") {
    Board board = roofWith(joints({JointId{0}, JointId{1}, JointId{2}}));
    commit(board, repeatSelection(board.state, ownStep(board.state), 3));
    CHECK(board.state.truss.joints.size() == 9); // two more of each
    CHECK(board.state.truss.members.size() == 12);
    CHECK(board.state.truss.loads.size() == 4);
    CHECK(undoText(board.state) == "Repeat 3 joints");
}

TEST_CASE("loads on members and along chords go with their joints into copies and mirror images") {
    Truss truss = support::roof();
    truss.loads = {{MemberForce{JointId{0}, JointId{2}, 2, 1, -6}, "snow", {}},
                   {ChordLoad{{JointId{0}, JointId{2}, JointId{1}}, -5}, "", {}}};
    Board board;
    board.state = startWith(truss);
    board.act(SetSelection{joints({JointId{0}, JointId{1}, JointId{2}})});
    commit(board, repeatSelection(board.state, {6, 0}, 1)); // B is A's copy, then D, E of B, C
    REQUIRE(board.state.truss.loads.size() == 4);
    CHECK(board.state.truss.loads[2] ==
          Load{MemberForce{JointId{1}, JointId{4}, 2, 1, -6}, "snow", {}});
    CHECK(board.state.truss.loads[3] ==
          Load{ChordLoad{{JointId{1}, JointId{4}, JointId{3}}, -5}, "", {}});
    board.press(Key::Undo);
    board.act(SetSelection{joints({JointId{0}, JointId{1}, JointId{2}})});
    commit(board, mirrorSelection(board.state, Side::Below)); // D below C; A and B stay
    REQUIRE(board.state.truss.loads.size() == 4);
    CHECK(board.state.truss.loads[2] ==
          Load{MemberForce{JointId{0}, JointId{3}, 2, 1, 6}, "snow", {}});
    CHECK(board.state.truss.loads[3] ==
          Load{ChordLoad{{JointId{0}, JointId{3}, JointId{1}}, 5}, "", {}});
}

TEST_CASE("a load stays behind when one of its joints does, and a load on the mirror line is not "
          "doubled") {
    Truss truss = support::roof();
    truss.loads = {{MemberForce{JointId{0}, JointId{2}, 2, 0, -6}, "", {}},
                   {MemberForce{JointId{0}, JointId{1}, 3, 0, -4}, "", {}}};
    Board board;
    board.state = startWith(truss);
    board.act(SetSelection{joints({JointId{0}, JointId{1}})});
    commit(board, repeatSelection(board.state, {0, -2}, 1));
    REQUIRE(board.state.truss.loads.size() == 3); // the one on the tie
    board.press(Key::Undo);
    board.act(SetSelection{joints({JointId{0}, JointId{1}})});
    commit(board, mirrorSelection(board.state, Side::Below));
    CHECK(board.state.truss.loads.size() == 2);
}

TEST_CASE("a turn by 90 degrees takes the joints round the middle of their box") {
    Board board = roofWith(joints({JointId{0}, JointId{1}})); // the tie, middle at (3, 0)
    commit(board, turnSelection(board.state, 90));
    CHECK(board.state.truss.joints[0].at == Vec2{3, -3});
    CHECK(board.state.truss.joints[1].at == Vec2{3, 3});
}

TEST_CASE("nothing can be made of nothing, nor a row of what has no width") {
    Board board = roofWith({});
    CHECK_FALSE(mirrorSelection(board.state, Side::Left));
    CHECK_FALSE(repeatSelection(board.state, {2, 0}, 1));
    CHECK_FALSE(turnSelection(board.state, 45));
    board.act(SetSelection{joints({JointId{2}})});
    CHECK_FALSE(repeatSelection(board.state, ownStep(board.state), 2));
}
