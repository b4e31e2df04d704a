#include "canvas/hands/board_menu.hpp"

#include "app/roof_board.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;
using support::Board;
using support::roofBoard;
using support::undoText;

namespace {

Board touchedRoof() { return support::roofBoard(PointerKind::Touch); }

int lineNamed(const Board& board, const std::string& label) {
    const std::vector<MenuLine> lines = boardMenuLines(board.state);
    const auto found = std::find_if(lines.begin(), lines.end(),
                                    [&](const MenuLine& line) { return line.label == label; });
    return found == lines.end() ? -1 : static_cast<int>(found - lines.begin());
}

void choose(Board& board, const std::string& label) {
    const int line = lineNamed(board, label);
    INFO(label);
    REQUIRE(line >= 0);
    Actions actions;
    chooseMenuLine(board.state, line, actions);
    update(board.state, actions);
    CHECK_FALSE(board.state.menu.open);
}

} // namespace

TEST_CASE("a long press opens the menu of what lies there and does nothing of the tool's") {
    for (const Tool tool : {Tool::Select, Tool::Member, Tool::Pin, Tool::Load, Tool::Erase}) {
        Board board = touchedRoof();
        board.use(tool);
        INFO(static_cast<int>(tool));
        board.hold({3, 4});
        CHECK(board.state.menu.open);
        CHECK(boardMenuTitle(board.state) == "Joint C");
        board.up({3, 4});
        CHECK(board.state.menu.open);
        CHECK(board.state.truss == support::roof());
        CHECK(board.state.history.past().empty());
        CHECK_FALSE(board.state.chain.active);
        CHECK_FALSE(board.state.field.id);
    }
}

TEST_CASE("a stroke under way is not a long press") {
    Board board = touchedRoof();
    board.down({3, 4});
    board.move({3, 2});
    board.feed(PointerPhase::LongPress, {3, 2});
    CHECK_FALSE(board.state.menu.open);
    board.up({3, 2});
    CHECK(board.state.truss.joints[2].at == Vec2{3, 2});
}

TEST_CASE("the right button opens the same menu without a stroke") {
    Board board = roofBoard(PointerKind::Mouse);
    board.feed(PointerPhase::LongPress, {3, 0});
    CHECK(boardMenuTitle(board.state) == "Member AB");
    CHECK(board.state.gesture.kind == GestureKind::None);
}

TEST_CASE("a press beside the menu, Escape, and a moved board close it and do nothing else") {
    for (const int how : {0, 1, 2}) {
        Board board = touchedRoof();
        board.use(Tool::Member);
        board.hold({3, 1.6});
        board.up({3, 1.6});
        REQUIRE(board.state.menu.open);
        if (how == 0) {
            board.tap({0, 0});
        } else if (how == 1) {
            board.press(Key::Escape);
        } else {
            board.act(SetCamera{panBy(board.state.view.camera, {50, 0})});
        }
        CHECK_FALSE(board.state.menu.open);
        CHECK_FALSE(board.state.chain.active);
        CHECK(board.state.truss == support::roof());
    }
}

TEST_CASE("a joint is held, loaded, drawn from and removed by its menu") {
    Board board = touchedRoof();
    board.hold({3, 4});
    choose(board, "Roller");
    CHECK(board.state.truss.supports.back().kind == SupportKind::Roller);
    board.hold({3, 4});
    CHECK(lineNamed(board, "Roller") < 0); // it is a roller already
    choose(board, "Take the support away");
    CHECK(board.state.truss == support::roof());
    board.hold({6, 0});
    choose(board, "Load…");
    CHECK(board.state.truss.loads.size() == 2);
    CHECK(board.state.field.id == FieldId(LoadField{LoadId{1}}));
    board.act(EndField{});
    board.hold({6, 0});
    choose(board, "Draw a member from it");
    CHECK(board.state.tool == Tool::Member);
    CHECK(board.state.chain.last == Vec2{6, 0});
    board.use(Tool::Select);
    board.hold({6, 0});
    choose(board, "Remove the joint");
    CHECK(board.state.truss.joints.size() == 2);
    CHECK(undoText(board.state) == "Remove joint B");
}

TEST_CASE("a member is split, loaded and asked about by its menu") {
    Board board = touchedRoof();
    board.hold({3, 0});
    choose(board, "Joint in the middle");
    REQUIRE(board.state.truss.joints.size() == 4);
    CHECK(board.state.truss.joints[3].at == Vec2{3, 0});
    board.press(Key::Undo);
    board.hold({3, 0});
    choose(board, "Load in the middle…");
    const auto& force = std::get<MemberForce>(board.state.truss.loads.back().what);
    CHECK(force.at == 3);
    CHECK(force.fy == -10);
    board.act(EndField{});
    board.hold({1.5, 0}); // now the load is at midspan
    choose(board, "Why this force?");
    CHECK(board.state.selection.members == std::vector{MemberId{0}});
    CHECK(board.state.notebook.working == WorkingPage::OneForce);
}

TEST_CASE("a section is chosen from a second page of the member's menu") {
    Board board;
    Truss truss = support::roof();
    Section tube;
    tube.id = "tube";
    truss.sections.push_back(tube);
    board.state = startWith(truss);
    board.hold({3, 0});
    Actions actions;
    chooseMenuLine(board.state, lineNamed(board, "Section…"), actions);
    update(board.state, actions);
    REQUIRE(board.state.menu.open);
    choose(board, "tube");
    CHECK(board.state.truss.members[0].section == "tube");
    CHECK(board.state.truss.members[1].section.empty());
}

TEST_CASE("on empty paper the menu puts a joint there and copies what is picked") {
    Board board = touchedRoof();
    board.hold({8, 2});
    choose(board, "Joint here");
    CHECK(board.state.truss.joints.back().at == Vec2{8, 2});
    board.act(SetSelection{{{JointId{0}, JointId{2}}, {}, {}, {}}});
    board.up({8, 2});
    board.hold({8, -1});
    choose(board, "Copy what is picked to here");
    CHECK(board.state.truss.joints.size() == 6);
    CHECK(board.state.truss.joints[4].at == Vec2{8, -1}); // A, the lower left joint of the two
    CHECK(board.state.truss.joints[5].at == Vec2{11, 3});
}

TEST_CASE("the menu stands wholly on the page, its lines as high as a fingertip") {
    for (const Vec2 page : {Vec2{1366, 768}, Vec2{390, 844}, Vec2{844, 390}}) {
        Board board = touchedRoof();
        board.state.view.camera.size = page;
        board.state.menu.open = true;
        for (const Vec2 place : {Vec2{0, 0}, Vec2{page.x, 0}, Vec2{0, page.y}, page}) {
            board.state.menu.pixel = place;
            const Rect rect = boardMenuRect(board.state, 6);
            CHECK(rect.at.x >= 0);
            CHECK(rect.at.y >= 0);
            CHECK(rect.at.x + rect.size.x <= page.x);
            const bool fits = rect.size.y <= page.y;
            CHECK((!fits || rect.at.y + rect.size.y <= page.y));
            CHECK(rect.size.y >= 7 * kTouchTarget); // its title and six lines
        }
    }
}

TEST_CASE("the menu key opens the menu of what is picked, and arrows and Enter choose") {
    Board board = roofBoard(PointerKind::Mouse);
    board.act(SetSelection{{{JointId{2}}, {}, {}, {}}});
    board.press(Key::Menu);
    CHECK(boardMenuTitle(board.state) == "Joint C");
    const int remove = lineNamed(board, "Remove the joint");
    board.press(Key::Up); // from the first line to the last
    CHECK(board.state.menu.lit == remove);
    board.press(Key::Down);
    board.press(Key::Down);
    CHECK(board.state.menu.lit == 1);
    CHECK(board.state.truss == support::roof()); // the arrow keys move no joint meanwhile
    board.press(Key::Up);
    board.press(Key::Enter);
    CHECK(board.state.truss.supports.size() == 3);
    CHECK_FALSE(board.state.menu.open);
}
