// The pages of influence lines and envelopes: what they show of the truss on the board.
#include "app/derived/derived_moving.hpp"

#include "app/board.hpp"
#include "app/fields/cells.hpp"
#include "app/fields/load_cells.hpp"
#include "app/page/page_text.hpp"
#include "exchange/files/model_file.hpp"
#include "support/files.hpp"
#include "support/trusses/hard_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double kWidth = 360; // px of the plot

Board pageOf(Truss truss, ResultPage page) {
    Board board;
    board.state = startWith(std::move(truss));
    board.act(Set{&NotebookState::tab, NotebookTab::Forces});
    board.act(Set{&NotebookState::results, page});
    board.solution();
    return board;
}

// As soon as the line is ready: whatever else is asked for comes later.
InfluenceShown& lineOf(Board& board) {
    InfluenceShown& shown = board.derived.influence;
    Slice unit = oneUnit();
    while (deriveInfluence(board.state, shown, kWidth, unit) && !shown.report) {
        unit = oneUnit();
    }
    return shown;
}

// Runs all slices at once.
InfluenceShown& exactLineOf(Board& board) { return board.line(kWidth); }

void set(Board& board, const InfluenceView& view) {
    board.act(Set{&InfluenceView::path, view.path});
    board.act(Set{&InfluenceView::load, view.load});
    board.act(Set{&InfluenceView::picked, view.picked});
    board.act(Set{&InfluenceView::picking, view.picking});
    board.act(Set{&InfluenceView::horizontal, view.horizontal});
    board.act(Set{&InfluenceView::at, view.at});
    board.act(Set{&InfluenceView::members, view.members});
    board.act(Set{&InfluenceView::byHand, view.byHand});
}

void select(Board& board, const Things& things) { board.act(SetSelection{things}); }

} // namespace

TEST_CASE("the page of influence lines begins with the first reaction, along the first path") {
    Board board = pageOf(stripTruss(Web::Pratt, 6), ResultPage::Influence);
    const InfluenceShown& shown = lineOf(board);
    REQUIRE(shown.paths.size() == 2);
    CHECK(shown.paths[0].name == "bottom chord");
    CHECK(shown.paths[1].name == "top chord");
    REQUIRE(shown.report);
    CHECK(shown.title.find("the vertical reaction at B0") != std::string::npos);
    CHECK(shown.at == 0); // read at the largest ordinate
    CHECK(shown.reading == "Load on B0: +1");
    CHECK_FALSE(shown.sketch.areas.empty());
}

TEST_CASE("a selected member is asked for its force, a joint for its displacement") {
    Board board = pageOf(stripTruss(Web::Pratt, 6), ResultPage::Influence);
    const std::size_t member = memberAt(board.state.truss, "B2", "B3");
    select(board, {.joints = {}, .members = {MemberId{int(member)}}, .supports = {}, .loads = {}});
    CHECK(lineOf(board).title.find("the force in B2–B3") != std::string::npos);
    CHECK_FALSE(lineOf(board).canTurn);
    select(board, {.joints = {findJoint(board.state.truss, "B6")},
                   .members = {},
                   .supports = {},
                   .loads = {}});
    CHECK(lineOf(board).title.find("the vertical reaction at B6") != std::string::npos);
    select(board, {.joints = {findJoint(board.state.truss, "B3")},
                   .members = {},
                   .supports = {},
                   .loads = {}});
    // Its members have no stiffness: the message says what is missing and how to add it.
    CHECK_FALSE(lineOf(board).report);
    CHECK(lineOf(board).says.find("E and A of every member") != std::string::npos);
}

TEST_CASE("a line is read off where the pointer lies, exactly on a joint") {
    Board board = pageOf(stripTruss(Web::Pratt, 6), ResultPage::Influence);
    // The reaction at B0 is 1 − x/18 for a load at x.
    InfluenceShown* shown = &exactLineOf(board);
    const auto placeFor = [&](double metres) {
        return 30 + metres / 18 * (kWidth - 60); // the sketch's margins are 30 px
    };
    CHECK_THAT(placeUnder(board.state.truss, *shown, placeFor(4.5)), WithinAbs(4.5, 1e-9));
    CHECK(placeUnder(board.state.truss, *shown, placeFor(6) + 5) == 6);
    CHECK(placeUnder(board.state.truss, *shown, -50) == 0);
    CHECK(placeUnder(board.state.truss, *shown, 1000) == 18);
    InfluenceView view;
    view.at = 4.5;
    set(board, view);
    CHECK(lineOf(board).reading == "Load 4.5\u2009m from B0: +0.75");
    view.at = 3;
    set(board, view);
    CHECK(lineOf(board).reading == "Load on B1, 3\u2009m from B0: +5/6 \u2248 +0.8333");
    CHECK(lineOf(board).ordinates[1].exact == "+5/6");
}

TEST_CASE("exact ordinates are abandoned by the next edit and found again for the new truss") {
    Board board = pageOf(stripTruss(Web::Pratt, 6), ResultPage::Influence);
    CHECK(exactLineOf(board).ordinates[2].exact == "+2/3");
    board.act(Commit{MoveJoint{findJoint(board.state.truss, "B2"), {8, 0}}});
    CHECK(lineOf(board).ordinates[2].exact.empty());
    CHECK(exactLineOf(board).ordinates[2].exact == "+5/9"); // 1 − 8/18
}

TEST_CASE("taps pick a path while one is being picked, and nothing else is selected by them") {
    Board board = pageOf(stripTruss(Web::Pratt, 6), ResultPage::Influence);
    InfluenceView view;
    view.picking = true;
    set(board, view);
    const Truss& truss = board.state.truss;
    for (const char* label : {"T4", "T1", "T2"}) {
        board.tap(truss.joints[jointAt(truss, label)].at);
    }
    CHECK(board.state.selection.empty());
    const InfluenceShown& shown = lineOf(board);
    REQUIRE(shown.paths.back().kind == PathKind::Picked);
    CHECK(pathName(truss, shown.paths[shown.chosen].path) == "T1–T2–T3–T4");
    board.tap(truss.joints[jointAt(truss, "T4")].at); // a second tap removes it
    CHECK(pathName(truss, lineOf(board).paths[lineOf(board).chosen].path) == "T1–T2");
    view = board.state.notebook.influence;
    view.picking = false;
    set(board, view);
    board.tap(truss.joints[jointAt(truss, "B6")].at);
    CHECK(board.state.selection.joints.size() == 1);
}

TEST_CASE(
    "moving loads are placed for the extreme, and every member under them stands in a table") {
    Board board = pageOf(stripWithCart(), ResultPage::Influence);
    InfluenceView view;
    view.members = true;
    set(board, view);
    const InfluenceShown& shown = board.line(kWidth);
    CHECK(shown.paths[shown.chosen].name == "cart");
    REQUIRE(shown.moving.size() == 1);
    // Axles at B0 and B1: 10·(1 + 5/6) = 18.33 kN. The first axle leads, so that when it is at B1
    // the second is at B0.
    CHECK(shown.moving[0].find("cart: 18.33\u2009kN, with axle ") == 0);
    REQUIRE(shown.members.loads.size() == 1);
    const std::vector<EnvelopeRow>& rows = shown.members.loads[0].rows;
    REQUIRE(rows.size() == board.state.truss.members.size());
    // The tie B2–B3 of a Pratt truss, from the moment about the panel point above: for a cart at B2
    // and B3, over the height of 3 m; or for one at B1 and B2. With 1 kN at x the moment at 6 m
    // from the left is 12·x/18 up to there and 6·(18 − x)/18 beyond: at 3, 6 and 9 m it is 2, 4 and
    // 3 kN·m. The worse is 10·(4 + 3)/3 = 23.33 kN.
    const EnvelopeRow& tie = rows[memberAt(board.state.truss, "B2", "B3")];
    const EnvelopeRow& other = rows[memberAt(board.state.truss, "B3", "B4")];
    CHECK(tie.tension == "23.33");
    CHECK(tie.tension == other.tension); // by symmetry
    CHECK(tie.compression == "0");
    CHECK(tie.compressionBy.empty());
    CHECK((tie.tensionBy == "1 on B3 →" || tie.tensionBy == "1 on B2 ←" ||
           tie.tensionBy == "2 on B2 →" || tie.tensionBy == "2 on B3 ←"));
}

TEST_CASE("an envelope says for each member which case is worst, or how to get cases") {
    Truss truss = gable();
    Board one = pageOf(truss, ResultPage::Envelope);
    one.finish(deriveEnvelope);
    CHECK(one.derived.envelope.rows.empty());
    CHECK(one.derived.envelope.says.find("give each load a case") != std::string::npos);

    // The same load acts upwards in another case, half as large: the tension of 16 kN in the tie
    // becomes a compression of 8 kN.
    force(truss, "C", 0, 12, "uplift");
    Board board = pageOf(truss, ResultPage::Envelope);
    board.finish(deriveEnvelope);
    const EnvelopeShown& shown = board.derived.envelope;
    CHECK(shown.says.find("loads and uplift") != std::string::npos);
    const EnvelopeRow& tie = shown.rows[memberAt(truss, "A", "B")];
    CHECK(tie.tension == "16.00");
    CHECK(tie.tensionBy == "loads");
    CHECK(tie.compression == "8.00");
    CHECK(tie.compressionBy == "uplift");
}

TEST_CASE("the envelope of the one combination there is is what the command line gives, by name") {
    // Alone the load puts the rafters in compression and the tie in tension with 16 kN; 1.5 times
    // that is 24.
    Truss truss = gable();
    force(truss, "C", 0, 12, "uplift");
    truss.combinations.push_back({"strength", {{"loads", 1.5}}, {}});
    Board board = pageOf(truss, ResultPage::Envelope);
    board.finish(deriveEnvelope);
    const EnvelopeShown& shown = board.derived.envelope;
    CHECK(shown.hasChoice);
    CHECK(shown.says.find("under strength, the only combination") != std::string::npos);
    const std::size_t tie = memberAt(truss, "A", "B");
    CHECK(shown.rows[tie].tension == "24.00");
    CHECK(shown.rows[tie].tensionBy == "strength");
    const auto same = envelopeOf(truss, envelopeChoices(truss)); // as on the command line
    REQUIRE(same.ok());
    CHECK(envelopeRows(truss, same.value())[tie].tension == shown.rows[tie].tension);

    board.act(Set{&NotebookState::envelopeOfCases, true});
    board.finish(deriveEnvelope);
    CHECK(board.derived.envelope.says.find("under the cases loads and uplift") !=
          std::string::npos);
    CHECK(board.derived.envelope.rows[tie].tension == "16.00");
}

TEST_CASE("an envelope of a mechanism at rest says that it is one, beside its table") {
    Truss truss = gable();
    truss.supports[0].kind = SupportKind::Roller; // reactions and loads are all vertical
    force(truss, "C", 0, 12, "uplift");
    Board board = pageOf(truss, ResultPage::Envelope);
    board.finish(deriveEnvelope);
    CHECK_FALSE(board.derived.envelope.rows.empty());
    REQUIRE(board.derived.envelope.warnings.size() == 1);
    CHECK(board.derived.envelope.warnings[0].find("mechanism on which these loads") !=
          std::string::npos);
    CHECK(movingHtml(board.state, board.derived).find("mechanism on which these loads") !=
          std::string::npos);

    force(truss, "A", 5, 0, "wind"); // which makes it slide
    Board moves = pageOf(truss, ResultPage::Envelope);
    moves.finish(deriveEnvelope);
    CHECK(moves.derived.envelope.rows.empty());
    CHECK(moves.derived.envelope.refused);
    CHECK(movingHtml(moves.state, moves.derived).find("it has no envelope before it is stable") !=
          std::string::npos);
}

TEST_CASE("pages of an arch as flat as a line say what its figures are worth") {
    const Truss truss = archOnStilts();
    const auto says = [](const std::vector<std::string>& warnings, const char* what) {
        return std::any_of(warnings.begin(), warnings.end(), [&](const std::string& warning) {
            return warning.find(what) != std::string::npos;
        });
    };
    Board board = pageOf(truss, ResultPage::Envelope);
    board.finish(deriveEnvelope);
    CHECK(says(board.derived.envelope.warnings, "Close to a mechanism at joint C"));
    CHECK(says(board.derived.envelope.warnings, "Rounding leaves 6 figures"));

    Board line = pageOf(truss, ResultPage::Influence);
    select(line, {.joints = {}, .members = {MemberId{0}}, .supports = {}, .loads = {}});
    const InfluenceShown& shown = lineOf(line);
    REQUIRE(shown.report);
    CHECK(says(shown.warnings, "Close to a mechanism at joint C"));
    CHECK(says(shown.warnings, "Rounding leaves 6 figures of the largest ordinate"));
    CHECK(movingHtml(line.state, line.derived).find("6 figures of the largest ordinate") !=
          std::string::npos);
}

TEST_CASE("the board shows the path, the unit load where it is read, and its effect in figures") {
    Board board = pageOf(stripTruss(Web::Pratt, 6), ResultPage::Influence);
    InfluenceView view;
    view.at = 4.5;
    set(board, view);
    (void)lineOf(board);
    const Scene scene = buildScene(board.state, board.derived, [](const std::string&, LabelKind) {
        return Vec2{20, 16};
    });
    const auto says = [&](const char* text) {
        return std::any_of(scene.labels.begin(), scene.labels.end(),
                           [&](const LabelMark& label) { return label.text == text; });
    };
    CHECK(says("1"));
    CHECK(says("+0.75"));
    const Vec2 place = toPixel(board.state.view.camera, {4.5, 0});
    CHECK(std::any_of(scene.triangles.begin(), scene.triangles.end(), [&](const auto& head) {
        return head.ink == Ink::Load && std::abs(head.a.x - place.x) < 0.01 && head.a.y < place.y &&
               head.a.y > place.y - 20;
    }));
    CHECK_FALSE(says("10 kN")); // the truss's own loads are not shown
    board.act(Set{&NotebookState::results, ResultPage::Forces});
    const Scene plain = buildScene(board.state, board.derived, [](const std::string&, LabelKind) {
        return Vec2{20, 16};
    });
    CHECK(plain.labels.size() > scene.labels.size());
}

TEST_CASE(
    "how a line is found by hand is worked out when it is asked for, and once for all places") {
    Board board = pageOf(readModel(repositoryFile("site/examples/farm_bridge.json")).value().truss,
                         ResultPage::Influence);
    (void)board.line(300);
    CHECK(board.derived.influence.byHand.passages.empty());
    board.act(Set{&InfluenceView::byHand, true});
    (void)board.line(300);
    const std::vector<Passage>& passages = board.derived.influence.byHand.passages;
    REQUIRE(passages.size() > 3);
    const Passage* first = passages.data();
    board.act(Set{&InfluenceView::at, 4.5});
    (void)board.line(300);
    CHECK(board.derived.influence.byHand.passages.data() == first);
    CHECK(passagesText(passages).find("ordinate") != std::string::npos);
}

TEST_CASE("a truss whose forces are refused tells the reason, not that it is indeterminate") {
    Board board;
    board.state = startWith(refusedStrip());
    derive(board.state, board.derived);
    const Derived& derived = board.derived;
    REQUIRE_FALSE(derived.solution.solved);
    REQUIRE(derived.solution.status == Status::Indeterminate);
    CHECK(derived.verdict.front().find("Statically indeterminate") == 0);
    CHECK(newsOf(derived) == derived.whyUnsolved);
    CHECK(derived.whyUnsolved.find("indeterminate") == std::string::npos);
    const std::vector<std::string>& says = derived.verdict;
    CHECK(std::count(says.begin(), says.end(), derived.whyUnsolved) == 1);
    CHECK(boardSummary(board.state, derived).find(derived.whyUnsolved) != std::string::npos);
}
