#include "app/derived/shown_working.hpp"

#include "app/board.hpp"
#include "exchange/files/model_file.hpp"
#include "support/files.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;

namespace {

Board boardOf(const std::string& example) {
    Board board;
    board.state =
        startWith(readModel(repositoryFile("site/examples/" + example + ".json")).value().truss);
    return board;
}

const ShownWorking& showing(Board& board, WorkingPage page) {
    board.act(Set{&NotebookState::tab, NotebookTab::Working});
    board.act(Set{&NotebookState::working, page});
    board.finish(deriveWorking);
    return board.derived.working;
}

void pickMember(Board& board, const std::string& name) {
    const Truss& truss = board.state.truss;
    Things things;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        if (memberName(truss, MemberId{static_cast<int>(i)}) == name) {
            things.members = {MemberId{static_cast<int>(i)}};
        }
    }
    REQUIRE(things.members.size() == 1);
    board.act(SetSelection{things});
}

bool holds(const std::vector<Passage>& passages, const std::string& words) {
    return passagesText(passages).find(words) != std::string::npos;
}

} // namespace

TEST_CASE("the notebook's working of a determinate truss has a passage for every step") {
    Board board = boardOf("cottage_roof");
    const ShownWorking& shown = showing(board, WorkingPage::Truss);
    CHECK(shown.working.complete);
    CHECK(shown.passages.size() == shown.working.steps.size());
    CHECK(stepsOf(shown) == static_cast<int>(shown.passages.size()));
}

TEST_CASE("of an indeterminate truss the notebook shows the force method") {
    Board board = boardOf("braced_tower");
    const ShownWorking& shown = showing(board, WorkingPage::Truss);
    CHECK(holds(shown.passages, "redundant"));
    CHECK(shown.passages.size() > 3);
}

TEST_CASE("a picked member has its own way, shorter than that of the whole truss") {
    Board board = boardOf("cottage_roof");
    const std::size_t whole = showing(board, WorkingPage::Truss).passages.size();
    CHECK(showing(board, WorkingPage::OneForce).passages.empty());
    CHECK_FALSE(board.derived.working.asks.empty());
    pickMember(board, "AC");
    const ShownWorking& shown = showing(board, WorkingPage::OneForce);
    CHECK(shown.asks.empty());
    CHECK(shown.passages.size() < whole);
    const auto& found = shown.working.steps.back().found;
    CHECK(std::any_of(found.begin(), found.end(), [&](const Found& it) {
        return it.symbol.member == board.state.selection.members.front();
    }));
}

TEST_CASE("two picked members or more are cut by a section") {
    Board board = boardOf("cottage_roof");
    Things things;
    const Truss& truss = board.state.truss;
    for (const char* name : {"BD", "CD", "CE"}) {
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            if (memberName(truss, MemberId{static_cast<int>(i)}) == name) {
                things.members.push_back(MemberId{static_cast<int>(i)});
            }
        }
    }
    board.act(SetSelection{things});
    const ShownWorking& shown = showing(board, WorkingPage::OneForce);
    const auto cuts = [](const Step& step) { return step.kind == StepKind::SectionIntro; };
    CHECK(std::any_of(shown.working.steps.begin(), shown.working.steps.end(), cuts));
}

TEST_CASE("the displacement of the picked joint is written as a table, of none that of the one "
          "that moves furthest") {
    Board board = boardOf("farm_bridge");
    CHECK(holds(showing(board, WorkingPage::Displacement).passages,
                "Displacement of joint G by a unit load"));
    Things things;
    things.joints = {findJoint(board.state.truss, "D")};
    board.act(SetSelection{things});
    CHECK(holds(showing(board, WorkingPage::Displacement).passages,
                "Displacement of joint D by a unit load"));
}

TEST_CASE("the force polygon grows with the step, and a picked member's line stands out") {
    Board board = boardOf("cottage_roof");
    const ShownWorking& shown = showing(board, WorkingPage::Polygon);
    REQUIRE(shown.polygon.lines.size() == 16); // 3 loads, 2 reactions, 11 members
    CHECK(stepsOf(shown) == 16);
    CHECK(shown.drawing.lines.size() == 1);
    CHECK(shown.lit == 0); // the newest line
    CHECK(shown.drawingSays.find("one after the other, clockwise") != std::string::npos);
    board.act(Set{&NotebookState::step, 9});
    board.finish(deriveWorking);
    CHECK(board.derived.working.lit == 9);
    CHECK(board.derived.working.drawingSays.find("parallel to") != std::string::npos);
    pickMember(board, "AB");
    board.finish(deriveWorking);
    CHECK(board.derived.working.drawing.lines.size() == 10);
    const std::optional<std::size_t> lit = board.derived.working.lit;
    REQUIRE(lit);
    CHECK(shown.polygon.lines[*lit].member == board.state.selection.members.front());
}

TEST_CASE("all lines of the polygon together have no newest one") {
    Board board = boardOf("cottage_roof");
    (void)showing(board, WorkingPage::Polygon);
    board.act(Set{&NotebookState::wholeWorking, true});
    board.finish(deriveWorking);
    CHECK_FALSE(board.derived.working.lit);
    CHECK(board.derived.working.drawingSays.empty());
}

TEST_CASE("how the forces of the released truss were found can be followed in the notebook") {
    Board board = boardOf("braced_tower"); // one redundant: the method, N0 and n1
    CHECK(showing(board, WorkingPage::Truss).redundants == 1);
    const char* const words[] = {"P_B = 12", "P_Bx = 0.8", "The released truss"};
    for (int state = 1; state <= 3; ++state) {
        board.act(Set{&NotebookState::releasedState, state});
        board.finish(deriveWorking);
        INFO(state);
        CHECK(holds(board.derived.working.passages, words[state - 1]));
        CHECK(board.derived.working.working.steps.empty());
    }
}

TEST_CASE(
    "what the force method releases is known to the board, and so is that of a displacement") {
    Board board = boardOf("braced_tower");
    const std::vector<MemberId> cut{
        MemberId{static_cast<int>(memberAt(board.state.truss, "B", "C"))}};
    CHECK(showing(board, WorkingPage::Truss).released.members == cut);
    CHECK(showing(board, WorkingPage::Displacement).released.members == cut);
    CHECK(showing(board, WorkingPage::Polygon).released.members.empty());
}

TEST_CASE("picking something leaves the working of the whole truss as it is") {
    Board board = boardOf("cottage_roof");
    (void)showing(board, WorkingPage::Truss);
    pickMember(board, "AC");
    CHECK(isShown(board.state, board.derived.working));
}
