#include "app/fields/cells.hpp"

#include "app/fields/fields.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;
using namespace gusset::support;

namespace {

//      C
//     / \        A (0, 0) pin, B (8, 0) roller, C (4, 3), 12 down at C
//   A --- B
Truss triangle() {
    Truss truss;
    support::joint(truss, "A", 0, 0);
    support::joint(truss, "B", 8, 0);
    support::joint(truss, "C", 4, 3);
    support::member(truss, "A", "B");
    support::member(truss, "B", "C");
    support::member(truss, "A", "C");
    support::pin(truss, "A");
    support::roller(truss, "B");
    support::force(truss, "C", 0, -12);
    return truss;
}

Cell cellNamed(const char* key) { return std::get<Cell>(fieldNamed(key)); }

} // namespace

TEST_CASE("A coordinate typed with a unit moves the joint") {
    const AppState state = typedIn(startWith(triangle()), "joint.2.y", "350 cm");
    CHECK(state.truss.joints[2].at == Vec2{4, 3.5});
    CHECK(undoText(state) == "Move joint C");
}

TEST_CASE("A cell left as it was makes no step of the history") {
    const AppState state = typedIn(startWith(triangle()), "joint.2.y", "3");
    CHECK(state.history.undoName().empty());
    CHECK(typedIn(state, "title", "").history.undoName().empty());
}

TEST_CASE("A text that is no number is refused in words, and the model stays") {
    const AppState state = typedIn(startWith(triangle()), "joint.0.x", "three");
    CHECK(state.truss == triangle());
    CHECK(state.message.kind == MessageKind::Problem);
    CHECK_FALSE(state.message.text.empty());
    CHECK_FALSE(state.field.id);
}

TEST_CASE("Tab goes on to the next cell and Shift-Tab back, over cells that can't be typed in") {
    const Truss truss = triangle();
    const auto after = [&](const char* key, FieldEnd how) {
        const Cell cell = cellNamed(key);
        const std::optional<Cell> next = cellAfter(truss, cell, how, asDrawn(truss, cell.table));
        return next ? keyOf(*next) : "";
    };
    CHECK(after("joint.0.label", FieldEnd::NextField) == "joint.0.x");
    CHECK(after("joint.0.y", FieldEnd::NextField) == "joint.1.label");
    CHECK(after("joint.1.label", FieldEnd::PreviousField) == "joint.0.y");
    CHECK(after("joint.0.label", FieldEnd::PreviousField).empty());
    CHECK(after("support.0.joint", FieldEnd::NextField) == "support.0.kind");
    CHECK(after("support.0.kind", FieldEnd::NextField) ==
          "support.0.settle"); // a pin: no direction
    CHECK(after("support.1.kind", FieldEnd::NextField) == "support.1.direction");
    CHECK(after("support.0.settle", FieldEnd::NextField) == "support.1.joint");
    CHECK(after("joint.2.y", FieldEnd::NextField) ==
          "joint.3.x"); // a new joint has its label already
    CHECK(after("joint.3.y", FieldEnd::NextField).empty());
}

TEST_CASE("The kind of a support is typed in full or by its first letter") {
    AppState state = typedIn(startWith(triangle()), "support.1.kind", "pin");
    CHECK(state.truss.supports[1].kind == SupportKind::Pin);
    state = typedIn(state, "support.1.kind", "R");
    CHECK(state.truss.supports[1].kind == SupportKind::Roller);
    state = typedIn(state, "support.1.kind", "hinge");
    CHECK(state.truss.supports[1].kind == SupportKind::Roller);
    CHECK(state.message.text == "Write pin or roller.");
}

TEST_CASE("Three columns pasted into an empty table of joints are names and coordinates") {
    const AppState state =
        typedIn(startWith({}), "joint.0.x", "joint\tx\ty\nP\t0\t0\nQ\t4.5\t0\nR\t2\t-3\n");
    REQUIRE(state.truss.joints.size() == 3);
    CHECK(state.truss.joints[0].label == "P");
    CHECK(state.truss.joints[1].label == "Q");
    CHECK(state.truss.joints[1].at == Vec2{4.5, 0});
    CHECK(state.truss.joints[2].at == Vec2{2, -3});
    const AppState two = typedIn(startWith({}), "joint.0.x", "0\t0\n4\t0");
    CHECK(two.truss.joints.size() == 2);
    CHECK(two.truss.joints[1].label == "B");
}

TEST_CASE("A typed number is shown in full, with a true minus sign") {
    Truss truss = triangle();
    truss.joints[2].at = {-1234.56789, 1.23456789};
    CHECK(cellLook(truss, cellNamed("joint.2.x")) == "−1234.56789");
    CHECK(cellLook(truss, cellNamed("joint.2.y")) == "1.23456789");
}

TEST_CASE("A keypad has the keys that its field can use") {
    const auto keys = [](const char* key) { return extraKeys(fieldNamed(key)); };
    CHECK(keys("joint.0.x").sign);
    CHECK_FALSE(keys("joint.0.x").angle);
    CHECK(keys("load.0.first").angle); // 5 @ 30°
    CHECK(keys("board.load.0").angle);
    CHECK(keys("support.0.direction").sign);
    CHECK_FALSE(keys("material.0.E").sign);
    CHECK_FALSE(keys("moving.0.0.force").sign);
}

TEST_CASE("Enter goes to the cell below, down to the row for a new thing") {
    const Truss truss = triangle();
    const RowOrder order = asDrawn(truss, CellTable::Joints);
    CHECK(cellAfter(truss, cellNamed("joint.1.x"), FieldEnd::Below, order) ==
          cellNamed("joint.2.x"));
    CHECK(cellAfter(truss, cellNamed("joint.2.x"), FieldEnd::Below, order) ==
          cellNamed("joint.3.x"));
    CHECK_FALSE(cellAfter(truss, cellNamed("joint.3.x"), FieldEnd::Below, order).has_value());
    CHECK_FALSE(cellAfter(truss, cellNamed("joint.1.x"), FieldEnd::Kept, order).has_value());
}

TEST_CASE("Joints are typed one after the other from the empty row") {
    AppState state = typedIn(startWith(triangle()), "joint.3.x", "12", FieldEnd::NextField);
    CHECK(openKey(state) == "joint.3.y");
    CHECK(state.field.text == "0");
    state = typedIn(state, "joint.3.y", "-2", FieldEnd::NextField);
    CHECK(state.truss.joints[3].at == Vec2{12, -2});
    CHECK(state.truss.joints[3].label == "D");
    CHECK(openKey(state) == "joint.4.x");
}

TEST_CASE("A member's ends are typed as two labels, joined in any usual way") {
    for (const char* text : {"A-C", "A–C", "A C", "AC", " A, C ", "C−A"}) {
        CAPTURE(text);
        const AppState state = typedIn(startWith(triangle()), "member.2.ends", text);
        CHECK(state.truss.members.size() == 3);
        CHECK(state.message.text.empty());
        CHECK(findMember(state.truss, JointId{0}, JointId{2}).valid());
    }
    AppState state = startWith(triangle());
    state = typedIn(state, "joint.3.x", "4");
    state = typedIn(state, "member.3.ends", "CD");
    CHECK(state.truss.members.size() == 4);
    CHECK(undoText(state) == "Draw member CD");
}

TEST_CASE("Labels that are each other's beginnings are told apart by the sign between them") {
    Truss truss = triangle();
    truss.joints[0].label = "1";
    truss.joints[1].label = "11";
    truss.joints[2].label = "111";
    // 1111 may be 1–111 or 111–1, which are the same pair, or 11–11, which is not a pair; it is not
    // guessed.
    const AppState vague = typedIn(startWith(truss), "member.0.ends", "1111");
    CHECK(vague.message.kind == MessageKind::Problem);
    CHECK(vague.truss == truss);
    const AppState clear = typedIn(startWith(truss), "member.3.ends", "1-111");
    CHECK(clear.message.text.find("already") != std::string::npos);
}

TEST_CASE("A load can be typed by components, or by size and angle in one go") {
    AppState state = typedIn(startWith(triangle()), "load.0.first", "1500 N");
    CHECK(state.truss.loads[0].what == decltype(Load::what)(JointForce{JointId{2}, 0, -1.5}));
    state = typedIn(state, "load.0.first", "5 @ 30°");
    CHECK(state.truss.loads[0].what == decltype(Load::what)(AngledForce{JointId{2}, 5, 30}));
    state = typedIn(state, "load.0.second", "-90");
    CHECK(state.truss.loads[0].what == decltype(Load::what)(AngledForce{JointId{2}, 5, -90}));
}

TEST_CASE(
    "A number typed over the size of a load keeps its direction, a negative one turns it round") {
    const auto typed = [](const decltype(Load::what)& what, const char* key, const char* text) {
        Truss truss = triangle();
        truss.loads[0].what = what;
        return typedIn(startWith(truss), key, text).truss.loads[0].what;
    };
    using What = decltype(Load::what);
    const JointId c{2};
    for (const char* key : {"load.0.first", "picked:load.0.first", "page.load.0.first"}) {
        CAPTURE(key);
        CHECK(typed(JointForce{c, 0, -5}, key, "8") == What(JointForce{c, 0, -8}));
        CHECK(typed(JointForce{c, 0, -5}, key, "-8") == What(JointForce{c, 0, 8}));
        CHECK(typed(JointForce{c, -5, 0}, key, "8") == What(JointForce{c, -8, 0}));
        CHECK(typed(AngledForce{c, 5, -60}, key, "8") == What(AngledForce{c, 8, -60}));
        CHECK(typed(AngledForce{c, -5, 90}, key, "8") == What(AngledForce{c, -8, 90}));
        CHECK(typed(JointForce{c, 0, 0}, key, "8") == What(JointForce{c, 0, -8}));
    }
    // By parts: each keeps its own direction.
    CHECK(typed(JointForce{c, 3, -4}, "load.0.first", "6") == What(JointForce{c, 6, -4}));
    CHECK(typed(JointForce{c, 3, -4}, "load.0.second", "6") == What(JointForce{c, 3, -6}));
    CHECK(typed(JointForce{c, 3, -4}, "load.0.second", "-6") == What(JointForce{c, 3, 6}));
    CHECK(typed(JointForce{c, 3, -4}, "load.0.first", "5 @ 30°") == What(AngledForce{c, 5, 30}));
    // A direction of its own.
    CHECK(typed(JointForce{c, 0, -5}, "load.0.second", "0") == What(JointForce{c, 5, 0}));
    CHECK(typed(JointForce{c, 0, -5}, "load.0.second", "30°") == What(AngledForce{c, 5, 30}));
}

TEST_CASE("A row of the loads shows whether it is a size and a direction, or parts") {
    Truss truss = triangle();
    const JointId c{2};
    truss.loads = {{JointForce{c, 0, -5}, {}, {}},
                   {AngledForce{c, 9, 112.6}, {}, {}},
                   {JointForce{c, 3, -4}, {}, {}},
                   {ChordLoad{{JointId{0}, JointId{1}}, -2}, {}, {}}};
    const auto look = [&](int row, int column) {
        return cellLook(truss, {CellTable::Loads, row, column});
    };
    CHECK(look(0, column::kLoadFirst) == "5");
    CHECK(look(0, column::kLoadSecond) == "↓");
    CHECK(look(1, column::kLoadFirst) == "9");
    CHECK(look(1, column::kLoadSecond) == "112.6°");
    CHECK(look(2, column::kLoadFirst) == "→\u20093");
    CHECK(look(2, column::kLoadSecond) == "↓\u20094");
    CHECK(look(3, column::kLoadFirst) == "2\u2009kN/m");
    CHECK(look(3, column::kLoadSecond) == "↓");
    // What typing begins with reads back the same.
    for (int row = 0; row < 4; ++row) {
        for (const int column : {column::kLoadFirst, column::kLoadSecond}) {
            const Cell cell{CellTable::Loads, row, column};
            if (canType(truss, cell)) {
                const Outcome<Edit> same = cellEdit(truss, cell, cellText(truss, cell));
                REQUIRE(same.ok());
                CAPTURE(row, column, cellText(truss, cell));
                CHECK(apply(truss, same.value()).value() == truss);
            }
        }
    }
}

TEST_CASE("Two pasted numbers of a load are its parts, to the right and up") {
    AppState state = typedIn(startWith(triangle()), "load.0.joint", "B\t1\t-2\nC\t0\t7");
    CHECK(state.truss.loads[0].what == decltype(Load::what)(JointForce{JointId{1}, 1, -2}));
    CHECK(state.truss.loads[1].what == decltype(Load::what)(JointForce{JointId{2}, 0, 7}));
}

TEST_CASE("A new load on a joint is as large as the last one, downward") {
    const AppState state = typedIn(startWith(triangle()), "load.1.joint", "B");
    CHECK(state.truss.loads[1].what == decltype(Load::what)(JointForce{JointId{1}, 0, -12}));
}

TEST_CASE("Supports are put on joints by name and turned by their direction") {
    AppState state = typedIn(startWith(triangle()), "support.1.direction", "60");
    CHECK(state.truss.supports[1].reaction == 60);
    state = typedIn(state, "support.1.joint", "C");
    CHECK(state.truss.supports[1].joint == JointId{2});
    CHECK(state.truss.supports[1].reaction == 60);
    state = typedIn(state, "support.2.joint", "Q");
    CHECK(state.message.text == "There is no joint “Q”.");
}

TEST_CASE("Rows copied from a spreadsheet are laid over a table and go on past its end") {
    const std::string rows = "joint\tx\ty\r\nA\t0\t0\r\nB\t9\t0\r\nTop\t4,5\t3\r\nQ\t2\t1\r\n";
    const AppState state = typedIn(startWith(triangle()), "joint.0.label", rows);
    REQUIRE(state.truss.joints.size() == 4);
    CHECK(state.truss.joints[1].at == Vec2{9, 0});
    CHECK(state.truss.joints[2].label == "Top");
    CHECK(state.truss.joints[2].at == Vec2{4.5, 3});
    CHECK(state.truss.joints[3].label == "Q");
    CHECK(state.truss.joints[3].at == Vec2{2, 1});
    CHECK(undoText(state) == "Paste rows");
}

TEST_CASE("Pasted rows are taken as a whole or not at all, and the message names the row") {
    const AppState state = typedIn(startWith(triangle()), "load.1.joint", "B\t1\t-2\nX\t3\t4");
    CHECK(state.truss == triangle());
    CHECK(state.message.text == "Row 2 of what was pasted: There is no joint “X”.");
}

TEST_CASE("A field whose row has gone meanwhile changes nothing") {
    AppState state = startWith(triangle());
    state.truss.loads.clear();
    state.committed = state.truss;
    state = typedIn(state, "load.0.second", "4");
    CHECK(state.truss.loads.empty());
    CHECK_FALSE(state.field.id);
}
