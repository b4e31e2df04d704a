#include "app/board.hpp"
#include "app/fields/fields.hpp"
#include "app/fields/page_controls.hpp"
#include "app/page/page_text.hpp"
#include "app/state/update.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>
#include <utility>
#include <vector>

namespace gusset {
namespace {

Truss triangle() {
    Truss truss = support::roof();
    truss.title = "Tripod <leg>";
    return truss;
}

std::string pageTextOf(const Truss& truss) {
    const AppState state = startWith(truss);
    Derived derived;
    derive(state, derived);
    return pageTextHtml(state, derived);
}

bool has(const std::string& html, const std::string& part) {
    return html.find(part) != std::string::npos;
}

TEST_CASE("The page's tables hold the model beside the results") {
    const std::string html = pageTextOf(triangle());
    CHECK(has(html, "<caption>Joints</caption>"));
    CHECK(
        has(html,
            "data-cell=\"page.joint.2.y\" data-text=\"4\" aria-label=\"4: y (m) of joint C\">4<"));
    CHECK(has(html, "aria-label=\"A–B: ends of member A–B\">A–B<"));
    CHECK(has(html, "data-press=\"page.support.0.kind\" data-text=\"roller\""));
    CHECK(has(html, "data-cell=\"page.support.1.direction\" data-text=\"90\""));
    CHECK(has(html, "data-cell=\"page.load.0.first\" data-text=\"10\""));
    // Half of 10 kN at each support; the legs have a vertical component of 5 kN and a rise of 4 in
    // 5 m: 6.25 kN.
    CHECK(has(html, "6.25"));
}

TEST_CASE("What a user typed never becomes markup in the page's tables") {
    Truss truss = triangle();
    truss.joints[2].label = "<img src=x onerror=alert(1)>";
    const std::string html = pageTextOf(truss);
    CHECK(has(html, "<h2>Tripod &lt;leg&gt;</h2>"));
    CHECK_FALSE(has(html, "<img"));
    CHECK(has(html, "&lt;img src=x onerror=alert(1)&gt;"));
}

TEST_CASE("An empty board has its tables too") {
    const std::string html = pageTextOf({});
    CHECK(has(html, "<h2>Untitled truss</h2>"));
    CHECK(has(html, "<caption>Joints</caption>"));
    CHECK(has(
        html,
        "data-cell=\"page.joint.0.x\" data-text=\"\" aria-label=\"Add: x (m) of a new joint\""));
    CHECK_FALSE(has(html, "Remove"));
}

TEST_CASE("The drawing is summed up in words for those who do not see it") {
    const AppState state = startWith(triangle());
    Derived derived;
    derive(state, derived);
    const std::string summary = boardSummary(state, derived);
    CHECK(summary.starts_with("The board: 3 joints, 3 members, 2 supports, 1 load. "));
    CHECK(has(summary, derived.verdict.front()));
}

TEST_CASE("Beside the board the page has the same tables, with nothing that takes the focus") {
    const AppState state = startWith(triangle());
    Derived derived;
    derive(state, derived);
    const std::string html = pageTextHtml(state, derived, PageCells::Plain);
    CHECK(has(html, "<caption>Joints</caption>"));
    CHECK(has(html, "<tr><th scope=\"row\">C</th><td>3</td><td>4</td></tr>"));
    CHECK(has(html, "<td>roller</td>"));
    for (const char* part : {"<button", "<select", "<input", "<a "}) {
        CHECK_FALSE(has(html, part));
    }
}

// Every heading follows one of the same level, of a higher one, or of the level just above.
void checkHeadings(const std::string& html) {
    int before = 1; // the page's own title
    for (std::size_t at = html.find("<h"); at != std::string::npos; at = html.find("<h", at + 1)) {
        const int level = html[at + 2] - '0';
        if (level < 1 || level > 6 || html[at + 3] != '>') {
            continue;
        }
        CHECK(level > 1);
        CHECK(level <= before + 1);
        before = level;
    }
    CHECK(before > 1);
}

struct Read { // the page as it is read, with what is asked of it
    support::Board board;

    explicit Read(Truss truss) { board.state = startWith(std::move(truss)); }
    void send(const std::string& key, const std::string& text) {
        board.state = support::typedIn(std::move(board.state), key, text);
    }
    // The answer of a list that has this name.
    void choose(PageQuestion question, const std::string& name) {
        const Choices answers = answersTo(board.state, question);
        for (std::size_t i = 0; i < answers.size(); ++i) {
            if (answers[i].name == name) {
                send(keyOf(PageAnswer{static_cast<int>(question)}), std::to_string(i));
                return;
            }
        }
        FAIL("no answer " << name);
    }
    void show(PagePart part) {
        send(keyOf(PageControl{PagePress::ShowPart, static_cast<int>(part)}), "");
    }
    std::string html() {
        derive(board.state, board.derived);
        board.finish(deriveEnvelope);
        board.finish(deriveChecks);
        board.finish(deriveExact);
        board.finish(deriveWorking);
        (void)board.line(400);
        return pageTextHtml(board.state, board.derived) + partsHtml(board.state, board.derived) +
               workingHtml(board.state, board.derived);
    }
};

TEST_CASE("Parts of the page are made when they are asked for, and go again") {
    Read page(support::stripWithCart());
    for (const auto& [part, shows] :
         {std::pair{PagePart::Envelope, "Greatest tension and compression"},
          std::pair{PagePart::Influence, "<caption>Influence"},
          std::pair{PagePart::Checks, "<caption>Factors and limits"},
          std::pair{PagePart::Exact, "<caption>Exact member forces"}}) {
        CAPTURE(shows);
        const std::string without = page.html();
        page.show(part);
        const std::string with = page.html();
        CHECK(with.size() > without.size());
        checkHeadings(with);
        page.show(part);
        CHECK(page.html() == without);
    }
}

TEST_CASE("What the page asks is answered as in the notebook, and captions name the loads") {
    Truss truss = triangle();
    truss.loads.push_back(truss.loads.front());
    truss.loads.back().caseId = "wind";
    Read page(truss);
    CHECK(has(page.html(), ", under all loads</caption>"));
    page.choose(PageQuestion::Loads, "wind");
    CHECK(page.board.state.choice == LoadChoice(OneCase{"wind"}));
    CHECK(has(page.html(), "Member forces in kN, tension positive, under wind</caption>"));
    page.choose(PageQuestion::Working, "Displacement");
    CHECK(page.board.state.notebook.working == WorkingPage::Displacement);
    page.choose(PageQuestion::About, "Joint C");
    CHECK(page.board.state.selection.joints == std::vector{JointId{2}});
    page.choose(PageQuestion::ForceUnits, "N");
    CHECK(forceOf(page.board.state.truss.loads[0])->y == -10000);
    page.choose(PageQuestion::Figures, "4");
    CHECK(page.board.state.truss.classSettings.digits == 4);
    const auto first = static_cast<int>(PageQuestion::FirstOfClass);
    page.choose(static_cast<PageQuestion>(first), "clockwise");
    CHECK(page.board.state.truss.classSettings.moments == MomentSense::Clockwise);
    page.choose(PageQuestion::Formula, "EN 1993-1-1");
    page.choose(PageQuestion::Curve, "b");
    CHECK(page.board.state.truss.checks.curve == BucklingCurve::B);
    page.send("page.undo", "");
    CHECK(page.board.state.truss.checks.curve == BucklingCurve::C);
    page.send("page.redo", "");
    CHECK(page.board.state.truss.checks.curve == BucklingCurve::B);
}

TEST_CASE("An answer that is not there, and a control of what is gone, do nothing") {
    Read page(triangle());
    const Truss before = page.board.state.truss;
    for (const char* key :
         {"page.ask.0", "page.ask.4", "page.ask.99", "page.show.9", "page.path", "page.moving.add",
          "page.moving.3.remove", "page.moving.0.0.remove", "page.combination.0.remove"}) {
        for (const char* text : {"", "99", "-1", "x", "0,9"}) {
            page.send(key, text);
        }
    }
    CHECK(page.board.state.truss == before);
}

TEST_CASE("A section through named members is worked on the page, and a wrong name is explained") {
    Read page(support::stripWithCart());
    const Truss& truss = page.board.state.truss;
    page.choose(PageQuestion::Working, "Force");
    page.send("page.cut", memberName(truss, MemberId{0}) + ", " + memberName(truss, MemberId{1}));
    CHECK(page.board.state.selection.members == std::vector{MemberId{0}, MemberId{1}});
    page.send("page.cut", "no such");
    CHECK(page.board.state.message.kind == MessageKind::Problem);
    CHECK(page.board.state.selection.members.size() == 2);
}

TEST_CASE("The whole force polygon is on the page, whatever step the notebook shows") {
    Read page(triangle());
    page.board.act(Set{&NotebookState::working, WorkingPage::Polygon});
    const std::string html = page.html();
    checkHeadings(html);
    const std::size_t drawn = page.board.derived.working.drawing.lines.size();
    const std::size_t lines = page.board.derived.working.polygon.lines.size();
    CHECK(drawn < lines);
    CHECK(has(html, "<figure"));
}

TEST_CASE("Moving loads and combinations are made and removed on the page") {
    Read page(support::stripWithCart());
    const std::size_t before = page.board.state.truss.moving.size();
    page.show(PagePart::Influence);
    CHECK(has(page.html(), "data-press=\"page.moving.add\""));
    page.send("page.moving.add", "0,1");
    CHECK(page.board.state.truss.moving.size() == before + 1);
    page.send("page.moving." + std::to_string(before) + ".remove", "");
    CHECK(page.board.state.truss.moving.size() == before);
    page.send("combination.0.name", "ULS");
    CHECK(has(page.html(), "data-cell=\"combination.0.name\" data-text=\"ULS\""));
    page.send("page.combination.0.remove", "");
    CHECK(page.board.state.truss.combinations.empty());
}

} // namespace
} // namespace gusset
