// What a screen reader is told of the board: each event once, and nothing of what did not happen.
#include "app/board.hpp"
#include "app/fields/fields.hpp"
#include "canvas/hands/board_menu.hpp"
#include "canvas/hands/heard.hpp"
#include "report/lesson/spoken.hpp"
#include "report/text/formula.hpp"
#include "support/reading/mock_language.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

struct Listener {
    Board board;
    Heard heard;
    FocusedItem item;

    explicit Listener(Truss truss) {
        board.state = startWith(std::move(truss));
        (void)hears();
    }
    std::string hears() {
        derive(board.state, board.derived);
        return announcement(heard, board.state, board.derived, item);
    }
    std::string press(Key key) {
        board.press(key);
        return hears();
    }
    std::string act(const Action& action) {
        board.act(action);
        return hears();
    }
};

} // namespace

// Roof: A (0, 0), B (6, 0), C (3, 4), 10 kN down at C: legs 5 long with a rise of 4, so −6.25 kN,
// and 6.25 · 3/5 = 3.75 kN in AB.
TEST_CASE("a joint that is moved is heard with its place and the largest forces, and its undo by "
          "name") {
    Listener listener(roof());
    CHECK(listener.act(Commit{MoveJoint{JointId{2}, {3, 3}}}) ==
          "C moved to 3, 3. Largest tension now 5.00\u2009kN in AB, largest compression "
          "7.07\u2009kN in BC.");
    CHECK(listener.hears().empty());
    CHECK(listener.press(Key::Undo) ==
          "Undone: Move joint C. Largest tension now 3.75\u2009kN in AB, largest compression "
          "6.25\u2009kN in BC.");
    CHECK(listener.press(Key::Redo).starts_with("Done again: Move joint C. "));
}

TEST_CASE("an edit that makes the truss unstable is heard with the verdict, one that changes no "
          "force alone") {
    Listener listener(roof());
    CHECK(listener.act(Commit{RemoveSupports{JointId{1}}})
              .starts_with("Done: Remove support at B. Unstable"));
    Listener renamed(roof());
    CHECK(renamed.act(Commit{SetTitle{"Roof"}}) == "Done: Change title");
}

TEST_CASE(
    "an edit that is refused is heard as its fault, and says it again when it is tried again") {
    Listener listener(roof());
    const Commit refused{RenameJoint{JointId{0}, "B"}};
    const std::string fault = listener.act(refused);
    CHECK_FALSE(fault.empty());
    CHECK(fault == listener.board.state.message.text);
    CHECK(listener.act(refused) == fault);
}

TEST_CASE("things are picked one after the other by keys, and heard with their values") {
    Listener listener(roof());
    CHECK(listener.press(Key::NextJoint) == "Joint A, x 0, y 0, pin");
    CHECK(listener.press(Key::PreviousJoint) == "Joint C, x 3, y 4, 1 load");
    CHECK(listener.press(Key::NextJoint).starts_with("Joint A"));
    CHECK(listener.press(Key::NextMember) == "Member AB, 6.00\u2009m, 3.75\u2009kN tension");
    CHECK(listener.press(Key::NextSupport).starts_with("Pin at A"));
    CHECK(listener.press(Key::NextLoad) == "Load at C, size 10, direction down");
    CHECK(listener.press(Key::Escape) == "Nothing is picked");
    CHECK(listener.press(Key::SelectAll) == "3 joints, 3 members picked");
}

TEST_CASE("keys pick nothing where there is nothing, and what is out of sight is brought into it") {
    Listener nothing{Truss{}};
    for (const Key key : {Key::NextJoint, Key::PreviousMember, Key::NextSupport, Key::NextLoad}) {
        CHECK(nothing.press(key).empty());
    }
    Listener listener(roof());
    Camera& camera = listener.board.state.view.camera;
    camera.centre = {1000, 1000};
    (void)listener.press(Key::NextJoint);
    const Vec2 at = toPixel(camera, {0, 0});
    CHECK(at.x >= 0);
    CHECK(at.x <= camera.size.x);
    CHECK(at.y >= 0);
    CHECK(at.y <= camera.size.y);
}

TEST_CASE("a load picked by a key has its menu beside it") {
    Listener listener(roof());
    (void)listener.press(Key::NextLoad);
    (void)listener.press(Key::Menu);
    CHECK(listener.board.state.menu.under == Hit(LoadId{0}));
    CHECK(listener.board.state.menu.pixel == toPixel(listener.board.state.view.camera, {3, 4}));
}

TEST_CASE("the menu of a place is heard with its title, then line by line, then what was chosen") {
    Listener listener(roof());
    (void)listener.press(Key::NextJoint);
    const std::string first = listener.press(Key::Menu);
    const std::vector<MenuLine> lines = boardMenuLines(listener.board.state);
    const std::string n = std::to_string(lines.size());
    CHECK(first == "Joint A, menu. " + lines[0].label + ", 1 of " + n);
    CHECK(listener.press(Key::Down) == lines[1].label + ", 2 of " + n);
    CHECK(listener.press(Key::Up) == lines[0].label + ", 1 of " + n);
    CHECK(listener.press(Key::Escape) == "Menu closed");
    (void)listener.press(Key::Menu);
    CHECK(listener.press(Key::Enter).starts_with("Done: Roller at A. "));
}

TEST_CASE("a drag is silent until it ends, and what was drawn is then heard once") {
    Listener listener(roof());
    listener.board.down({3, 4});
    listener.board.move({3.5, 4.5});
    listener.board.up({4, 5});
    CHECK(listener.hears().starts_with("C moved to 4, 5. "));
    CHECK(listener.hears().empty());
}

TEST_CASE("each step of the working is heard when it is shown, its equations in words") {
    Listener listener(roof());
    (void)listener.press(Key::NextStep); // opens the page
    listener.board.finish(deriveWorking);
    const std::string first = listener.hears();
    CHECK(first.starts_with("Step 1 of "));
    CHECK(listener.hears().empty());
    std::string all = first;
    for (int i = 1; i < stepsOf(listener.board.derived.working); ++i) {
        const std::string step = listener.press(Key::NextStep);
        CHECK(step.starts_with("Step " + std::to_string(i + 1) + " of "));
        all += step;
    }
    INFO(all);
    CHECK(all.find("Sum of F y equals 0: A y plus B y minus P C equals 0") != std::string::npos);
    CHECK(all.find(" kilonewtons up") != std::string::npos);
    for (const char* sign : {"\u03A3", "=", "\u00B7", "\u2212", "_", "\u2191"}) {
        CHECK(all.find(sign) == std::string::npos);
    }
    // An edit remakes the working: the edit is heard, and the step not again.
    CHECK(listener.act(Commit{MoveJoint{JointId{2}, {3, 3}}}).starts_with("C moved"));
    listener.board.finish(deriveWorking);
    CHECK(listener.hears().empty());
}

TEST_CASE("an item of a panel is heard with its panel when it is entered, and with its state") {
    Listener listener(roof());
    listener.item = {"tools", "Member", ItemState::Chosen, {}};
    CHECK(listener.hears() == "Tools: Member, chosen");
    listener.item = {"tools", "Pin", ItemState::Plain, {}};
    CHECK(listener.hears() == "Pin");
    listener.item = {"notebook", "", ItemState::Plain, {{"member", "AB"}, {"force", "3.75"}}};
    CHECK(listener.hears() == "Notebook: member AB, force 3.75");
    listener.item = {"notebook", "Snap", ItemState::On, {}};
    CHECK(listener.hears() == "Snap, on");
    listener.item.state = ItemState::Off;
    CHECK(listener.hears() == "Snap, off");
    listener.item = {};
    CHECK(listener.hears() == "The board");
}

TEST_CASE("signs of a formula are said as words") {
    const PhraseBook& book = englishPhrases();
    CHECK(spokenFormula(book, {variableToken("F", "AB"),
                               operatorToken("="),
                               numberToken("\u22125"),
                               operatorToken("\u00B7"),
                               {TokenKind::Fraction, "4", "", "41", true}}) ==
          "F AB equals minus 5 times 4 over root of 41");
    CHECK(spokenFormula(book, {operatorToken("\u27F2"),
                               operatorToken("\u03A3"),
                               variableToken("M", "A"),
                               operatorToken("="),
                               numberToken("0"),
                               operatorToken(":"),
                               {TokenKind::Root, "2"},
                               operatorToken("\u2248"),
                               numberToken("1.41")}) ==
          "sum of M A equals 0: root of 2 is about 1.41");
}

TEST_CASE("in a language made up for it, what is heard keeps no English word") {
    Listener listener(roof());
    listener.board.state.book = &mockPhrases();
    const auto check = [&](const std::string& text) {
        INFO(text);
        CHECK_FALSE(text.empty());
        CHECK(foreignWords(text, listener.board.state.truss) == std::vector<std::string>{});
    };
    listener.board.derived = {};
    (void)listener.hears();
    for (const Key key : {Key::NextJoint, Key::NextMember, Key::NextSupport, Key::NextLoad,
                          Key::SelectAll, Key::Escape, Key::Menu, Key::Down, Key::Escape}) {
        check(listener.press(key));
    }
    check(listener.act(Commit{MoveJoint{JointId{2}, {3, 3}}}));
    check(listener.press(Key::Undo));
    check(listener.press(Key::Redo));
    check(listener.act(Commit{SetTitle{"Q"}}));
    check(listener.act(Commit{RemoveSupports{JointId{1}}}));
    check(listener.press(Key::Undo));
    (void)listener.press(Key::NextStep);
    listener.board.finish(deriveWorking);
    check(listener.hears());
    for (int i = 1; i < stepsOf(listener.board.derived.working); ++i) {
        check(listener.press(Key::NextStep));
    }
    for (const char* panel : {"header", "beginning", "tools", "picked", "notebook", "message"}) {
        for (const ItemState state : {ItemState::Chosen, ItemState::On, ItemState::Off}) {
            listener.item = {panel, "A", state, {}};
            check(listener.hears());
        }
    }
    listener.item = {};
    check(listener.hears());
}
