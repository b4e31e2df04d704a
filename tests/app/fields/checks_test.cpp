// Member checks in the page: typed settings, stress and utilisation on the board, the picture and
// the page around it.
#include "app/board.hpp"
#include "app/canvas/scene_checks.hpp"
#include "app/fields/check_field.hpp"
#include "app/fields/fields.hpp"
#include "app/page/page_text.hpp"
#include "app/state/session.hpp"
#include "support/trusses/checked_truss.hpp"
#include "support/trusses/example_trusses.hpp"
#include "ui/whole_picture.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_string.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::ContainsSubstring;

namespace {

// Its tie has a utilisation of 0.10 and is too slender, its rafters have 0.77.
Board gableBoard() {
    Board board;
    board.state = startWith(steelGable());
    return board;
}

void label(Board& board, MemberFigure figure) { board.act(Set{&View::memberFigure, figure}); }

void look(Board& board) {
    derive(board.state, board.derived);
    board.finish(deriveChecks);
}

Scene sceneOf(Board& board) {
    look(board);
    return buildScene(board.state, board.derived, measure);
}

std::string textOf(const Scene& scene) {
    std::string text;
    for (const LabelMark& mark : scene.labels) {
        text += mark.text + " ";
    }
    return text;
}

bool shows(const Scene& scene, const std::string& text) {
    return std::any_of(scene.labels.begin(), scene.labels.end(),
                       [&](const LabelMark& mark) { return mark.text == text; });
}

long count(const Scene& scene, Ink ink) {
    return std::count_if(scene.lines.begin(), scene.lines.end(),
                         [&](const LineMark& line) { return line.ink == ink; });
}

MemberId memberOf(const Board& board, const char* a, const char* b) {
    return MemberId{static_cast<int>(memberAt(board.state.truss, a, b))};
}

} // namespace

TEST_CASE("a factor of the checks is typed, undone, and reset by leaving its field empty") {
    Board board = gableBoard();
    type(board, "checks.eulerFactor", "2*1.5");
    CHECK(board.state.truss.checks.eulerFactor == 3);
    CHECK(checkText(board.state.truss, {&CheckSettings::eulerFactor}) == "3");
    board.act(Undo{});
    CHECK(board.state.truss.checks.eulerFactor == 2);
    type(board, "checks.K", "0.85");
    type(board, "checks.K", "");
    CHECK(board.state.truss.checks.effectiveLength == 1);
}

TEST_CASE("a limit of slenderness left empty is none, and its field stays empty") {
    Board board = gableBoard();
    type(board, "checks.compressionLimit", " ");
    CHECK(board.state.truss.checks.compressionLimit == 0);
    CHECK(checkLook(board.state.truss, {&CheckSettings::compressionLimit}).empty());
    type(board, "checks.compressionLimit", "180");
    CHECK(board.state.truss.checks.compressionLimit == 180);
}

TEST_CASE("a factor that makes no sense is refused in words, and the one before stays") {
    Board board = gableBoard();
    for (const char* text : {"-1", "0", "1000", "two"}) {
        const auto serial = board.state.message.serial;
        type(board, "checks.K", text);
        CHECK(board.state.truss.checks.effectiveLength == 1);
        CHECK(board.state.message.serial > serial);
        CHECK(board.state.message.kind == MessageKind::Problem);
    }
    CHECK_THAT(board.state.message.text, ContainsSubstring("two"));
    type(board, "checks.K", "0");
    CHECK(board.state.message.text == "the factor of the buckling length must be from 0.1 to 10");
}

TEST_CASE(
    "picked members have a K of their own while one is typed, and lose it with an empty field") {
    Board board = gableBoard();
    const std::vector<MemberId> rafters{memberOf(board, "A", "C"), memberOf(board, "C", "B")};
    Things picked;
    picked.members = rafters;
    board.act(SetSelection{picked});
    type(board, "picked.K.in", "0.9");
    type(board, "picked.K.out", "1.8/2");
    for (const MemberId rafter : rafters) {
        CHECK(board.state.truss.members[rafter.at()].factors == LengthFactors{0.9, 0.9, {}});
    }
    CHECK(factorText(board.state.truss, rafters, FactorField::In) == "0.9");
    // λ = 0.9 · 5 m / 25 mm = 180, with 200 before.
    derive(board.state, board.derived);
    board.finish(deriveChecks);
    CHECK(board.derived.checks.checks.members[rafters[0].at()].slenderness == 180);
    board.act(Undo{});
    CHECK_FALSE(board.state.truss.members[rafters[0].at()].factors.out);
    type(board, "picked.K.in", "");
    CHECK(board.state.truss.members[rafters[1].at()].factors == LengthFactors{});
    type(board, "picked.K.in", "50");
    CHECK(board.state.message.kind == MessageKind::Problem);
    CHECK_FALSE(board.state.truss.members[rafters[0].at()].factors.in);
}

TEST_CASE("where picked members differ in K, the field is empty") {
    Board board = gableBoard();
    board.act(Commit{FactorMembers{{memberOf(board, "A", "C")}, false, 0.8}});
    const std::vector<MemberId> both{memberOf(board, "A", "C"), memberOf(board, "C", "B")};
    CHECK(factorText(board.state.truss, both, FactorField::In).empty());
    CHECK(factorText(board.state.truss, {both[0]}, FactorField::In) == "0.8");
    CHECK(factorText(board.state.truss, {both[0]}, FactorField::Out).empty());
}

TEST_CASE("a picked joint that is let go of out of the plane makes its members buckle together") {
    Board board = gableBoard();
    label(board, MemberFigure::Use);
    const JointId top{static_cast<int>(jointAt(board.state.truss, "C"))};
    const long crosses = count(sceneOf(board), Ink::Muted);
    CHECK(areHeld(board.state.truss, {top}));
    board.act(Commit{holdEdit(board.state.truss, {top}, false)});
    CHECK_FALSE(areHeld(board.state.truss, {top}));
    CHECK(board.state.truss.checks.held->size() == 2);
    CHECK(count(sceneOf(board), Ink::Muted) == crosses + 2 * 2); // two joints are held
    board.act(Commit{holdEdit(board.state.truss, {top}, true)});
    CHECK_FALSE(board.state.truss.checks.held); // all of them again
}

TEST_CASE(
    "timber has factors of its own among the settings, and every formula a limit of movement") {
    Truss truss = steelGable();
    const auto has = [](const Truss& of, double CheckSettings::*number) {
        const std::vector<CheckFactor> all = factorsOf(of);
        return std::any_of(all.begin(), all.end(),
                           [&](const CheckFactor& each) { return each.number == number; });
    };
    CHECK(has(truss, &CheckSettings::deflection));
    CHECK_FALSE(has(truss, &CheckSettings::kMod));
    truss.sections.front().shape = "timber";
    CHECK(has(truss, &CheckSettings::kMod));
    CHECK(has(truss, &CheckSettings::betaC));
    truss.checks.formula = ColumnFormula::En1993;
    CHECK(has(truss, &CheckSettings::gammaM2));
}

TEST_CASE("members are labelled by force, stress or use, one of them at a time") {
    Board board = gableBoard();
    CHECK(shows(sceneOf(board), "20 C"));
    label(board, MemberFigure::Stress);
    Scene scene = sceneOf(board);
    CHECK(shows(scene, "20\u2009MPa C"));
    CHECK(shows(scene, "16\u2009MPa T"));
    CHECK_FALSE(shows(scene, "20 C"));
    label(board, MemberFigure::Use);
    scene = sceneOf(board);
    CHECK(shows(scene, "0.77"));
    CHECK(shows(scene, "0.10, λ > 300"));
    CHECK_FALSE(shows(scene, "20\u2009MPa C"));
}

TEST_CASE("where no area is known stress and use are question marks, and not forces") {
    Board board;
    board.state = startWith(gable());
    for (const MemberFigure figure : {MemberFigure::Stress, MemberFigure::Use}) {
        label(board, figure);
        const Scene scene = sceneOf(board);
        CHECK(shows(scene, "?"));
        CHECK_FALSE(shows(scene, "20 C"));
    }
}

TEST_CASE("a member used beyond 1 is marked by words and a dashed band, not by colour alone") {
    Board board = gableBoard();
    label(board, MemberFigure::Use);
    type(board, "checks.tensionLimit", "");
    CHECK(count(sceneOf(board), Ink::Warning) == 0);
    type(board, "checks.eulerFactor", "4"); // 20 kN of 51.8/4
    const Scene scene = sceneOf(board);
    CHECK(shows(scene, "1.54 > 1"));
    CHECK(count(scene, Ink::Warning) == 2);
    CHECK(std::all_of(scene.lines.begin(), scene.lines.end(), [](const LineMark& line) {
        return line.ink != Ink::Warning || line.dash > 0;
    }));
}

TEST_CASE("the member used most stands out while use is shown, and only then") {
    Board board = gableBoard();
    const long before = count(sceneOf(board), Ink::Muted);
    label(board, MemberFigure::Use);
    CHECK(count(sceneOf(board), Ink::Muted) == before + 1);
}

TEST_CASE("where use is shown the board says that it is preliminary, on every page") {
    for (const Vec2 page : {Vec2{1366, 768}, Vec2{1024, 768}, Vec2{390, 844}}) {
        Board board = gableBoard();
        Viewport viewport;
        viewport.size = page;
        const PageLayout layout = layoutFor(viewport, board.state.notebook);
        board.act(SetCamera{withLayout(board.state.view.camera, viewport, layout)});
        CHECK_THAT(textOf(sceneOf(board)), !ContainsSubstring("Preliminary"));
        label(board, MemberFigure::Use);
        CHECK_THAT(textOf(sceneOf(board)),
                   ContainsSubstring("Preliminary check only") &&
                       ContainsSubstring("Local codes and a licensed engineer decide."));
        for (const LabelMark& mark : sceneOf(board).labels) {
            if (mark.kind == LabelKind::Hint) {
                const double half = 0.5 * measure(mark.text, mark.kind).x;
                CHECK(mark.at.x - half >= 0);
                CHECK(mark.at.x + half <= page.x);
            }
        }
    }
}

TEST_CASE("labels of stress and of use overlap neither members nor one another") {
    for (const Truss& truss : exampleTrusses()) {
        for (const Vec2 page : {Vec2{1366, 768}, Vec2{390, 844}}) {
            for (const MemberFigure figure : {MemberFigure::Stress, MemberFigure::Use}) {
                Board board = boardOn(truss, page);
                label(board, figure);
                CAPTURE(truss.title, page.x, static_cast<int>(figure));
                CHECK(overlapsIn(sceneOf(board), truss) == std::vector<std::string>{});
            }
        }
    }
}

TEST_CASE("the picture of a board that shows use carries the whole caution, others none") {
    Board board = gableBoard();
    const auto svg = [&] {
        look(board);
        const MeasureText measuring = measure;
        return wholePicture(board.state, board.derived, measuring, paletteOf(PaletteName::Paper));
    };
    CHECK_THAT(svg(), !ContainsSubstring("Preliminary"));
    label(board, MemberFigure::Use);
    const std::string picture = svg();
    CHECK_THAT(picture, ContainsSubstring(">0.77</text>"));
    for (const char* word :
         {"Preliminary", "connections,", "restraint", "fatigue,", "combinations", "engineer"}) {
        CHECK_THAT(picture, ContainsSubstring(word));
    }
}

TEST_CASE("what must be known of the forces is marked among the lines of the checks") {
    Truss truss = steelGable();
    truss.supports[0].kind = SupportKind::Roller; // both vertical: in balance, but a mechanism
    Board board;
    board.state = startWith(truss);
    look(board);
    const ChecksShown& shown = board.derived.checks;
    REQUIRE_FALSE(shown.warnings.empty());
    for (const std::string& warning : shown.warnings) {
        CHECK(std::count(shown.lines.begin(), shown.lines.end(), warning) == 1);
    }
    CHECK_THAT(shown.warnings.front(), ContainsSubstring("mechanism"));
    CHECK(shown.warnings.size() < shown.lines.size());
}

TEST_CASE("checks follow the model, the loads and the choice of the worst") {
    Board board = gableBoard();
    look(board);
    CHECK(board.derived.checks.rows.size() == 3);
    CHECK_FALSE(board.derived.checks.hasChoice);
    board.act(Commit{AddLoad{{JointForce{JointId{2}, 0, -24}, "snow", {}}}});
    CHECK_FALSE(isOf(board.derived.checks, board.state));
    look(board);
    CHECK(board.derived.checks.hasChoice);
    CHECK(board.derived.checks.rows[memberOf(board, "A", "C").at()].use == "1.54");
    board.act(Set{&NotebookState::checksOfAll, true});
    look(board);
    CHECK(board.derived.checks.rows[memberOf(board, "A", "C").at()].use == "0.77"); // each alone
    CHECK(board.derived.checks.loads.worst);
    board.act(SetChoice{OneCase{"snow"}});
    board.act(Set{&NotebookState::checksOfAll, false});
    look(board);
    CHECK(board.derived.checks.rows[memberOf(board, "A", "C").at()].use == "0.77");
}

TEST_CASE("the check of the one member that is picked is worked out") {
    Board board = gableBoard();
    look(board);
    CHECK(board.derived.checks.working.empty());
    Things things;
    things.members = {memberOf(board, "A", "C")};
    board.act(SetSelection{things});
    look(board);
    REQUIRE(board.derived.checks.working.size() == 1);
    CHECK_THAT(passagesText(board.derived.checks.working),
               ContainsSubstring("Check of member AC") && ContainsSubstring("Preliminary"));
    things.members.push_back(memberOf(board, "A", "B"));
    board.act(SetSelection{things});
    look(board);
    CHECK(board.derived.checks.working.empty());
}

TEST_CASE("the page around the board has the table of checks and its caution, where one is shown") {
    Board board = gableBoard();
    look(board);
    CHECK(movingHtml(board.state, board.derived).empty());
    board.act(Set{&NotebookState::results, ResultPage::Checks});
    look(board);
    CHECK_THAT(movingHtml(board.state, board.derived),
               ContainsSubstring("<table>") && ContainsSubstring("0.77") &&
                   ContainsSubstring("licensed engineer decide"));
    board.act(Set{&NotebookState::results, ResultPage::Forces});
    label(board, MemberFigure::Use);
    CHECK_THAT(movingHtml(board.state, board.derived),
               ContainsSubstring("licensed engineer decide"));
}

TEST_CASE("what members are labelled by is kept from one visit to the next") {
    Board board = gableBoard();
    label(board, MemberFigure::Use);
    const std::optional<AppState> back = readSession(writeSession(board.state));
    REQUIRE(back);
    CHECK(back.value().view.memberFigure == MemberFigure::Use);
}
