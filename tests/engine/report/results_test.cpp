#include "phrases/results/verdict.hpp"
#include "report/results/results_text.hpp"
#include "report/text/phrases.hpp"

#include "core/csv.hpp"
#include "report/results/solution_text.hpp"

#include "support/reading/written.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;

namespace {

std::vector<std::string> verdictOf(const Truss& truss) {
    return verdict({englishPhrases(), truss}, solve(truss));
}

} // namespace

TEST_CASE("the verdict of a solved truss counts it and names the worst members") {
    CHECK(
        verdictOf(gable()) ==
        std::vector<std::string>{"Statically determinate: 3 members + 3 reactions = 2 × 3 joints.",
                                 "Largest tension: 16.00\u2009kN in AB.",
                                 "Largest compression: 20.00\u2009kN in AC and CB."});
}

// The footbridge of the examples, 16 m wide and 3 m high, 24 kN down at B, D and F: reactions 36 kN
// each. About C AB = BD = 36·4/3 = 48 kN, and likewise DF and FH; about D
// CE = EG = (36·8 − 24·4)/3 = 64 kN.
TEST_CASE("the verdict names all members that carry the largest force, or two of many") {
    const Truss bridge = exampleTrusses().front();
    REQUIRE(bridge.title == "Footbridge over a mill stream, span 16 m");
    const std::vector<std::string> lines = verdictOf(bridge);
    REQUIRE(lines.size() >= 3);
    CHECK(lines[1] == "Largest tension: 48.00\u2009kN in AB, BD and 2 more.");
    CHECK(lines[2] == "Largest compression: 64.00\u2009kN in CE and EG.");
}

TEST_CASE("an empty board says what to do first") {
    CHECK(verdictOf(Truss{}) == std::vector<std::string>{"Nothing is drawn yet. Draw a member: "
                                                         "joints appear at its ends."});
}

TEST_CASE("a joint alone asks for a member") {
    Truss truss;
    joint(truss, "A", 0, 0);
    CHECK(verdictOf(truss).front() == "There is no member yet: join two joints.");
}

TEST_CASE("a truss without supports is told so first") {
    Truss truss = gable();
    truss.supports.clear();
    CHECK(verdictOf(truss).front() == "The truss has no support, so any load carries it off. "
                                      "Give it a pin and a roller.");
}

TEST_CASE("a loose joint is named") {
    Truss truss = gable();
    joint(truss, "K", 9, 9);
    CHECK(verdictOf(truss).front() == "Joint K has no member: join it to the truss or delete it.");
    joint(truss, "L", 12, 9);
    CHECK(verdictOf(truss).front() ==
          "Joints K and L have no member: join them to the truss or delete them.");
}

TEST_CASE("a truss with too few members says how many are missing, and what moves") {
    Truss truss = gable();
    truss.members.pop_back();
    const auto lines = verdictOf(truss);
    REQUIRE(lines.size() >= 2);
    CHECK(lines[0] == "Unstable: members and reactions are 2 + 3 = 5, and 2 × 3 joints need 6: "
                      "1 too few.");
    CHECK(lines[1] ==
          mechanismSentence({englishPhrases(), truss}, solve(truss).mechanisms.front()));
}

TEST_CASE(
    "an indeterminate truss says by how many, what it could do without, and what is assumed") {
    Truss truss = gable();
    truss.supports.back().kind = SupportKind::Pin;
    const auto lines = verdictOf(truss);
    CHECK(lines.front() == "Statically indeterminate to degree 1: 3 members + 4 reactions against "
                           "2 × 3 joints.");
    CHECK(lines[2] ==
          "It would be determinate without the horizontal reaction at B, for instance.");
    CHECK(lines[3].find("E·A is taken to be the same for all members") == 0);
}

TEST_CASE("an indeterminate truss whose stiffness is half known says that it is needed") {
    Truss truss = gable();
    truss.supports.back().kind = SupportKind::Pin;
    truss.materials.push_back({"steel", 210e3, {}, {}, {}, {}});
    truss.sections.push_back({"bar", "steel", 500, {}, "", {}, {}});
    truss.members.front().section = "bar";
    CHECK(verdictOf(truss).back() == "Equilibrium alone does not determine the forces: they "
                                     "depend on the stiffness of each member.");
    CHECK(solve(truss).errors.back().at == "members[1].section");
}

TEST_CASE("a truss that nothing acts on says that no member carries a force") {
    Truss truss = gable();
    truss.loads.clear();
    CHECK(verdictOf(truss).back() == "No member carries any force under these loads.");
}

TEST_CASE("rows stand in the model's order and units, by size and letter") {
    Truss truss = gable();
    truss.units.force = ForceUnit::N;
    const Solution solution = solve(truss);
    const auto forces = forceRows({englishPhrases(), truss}, solution);
    REQUIRE(forces.size() == 3);
    CHECK((forces[0].name + ' ' + forces[0].size + ' ' + forces[0].letter) == "AC 20.00 C");
    CHECK((forces[2].name + ' ' + forces[2].size + ' ' + forces[2].letter) == "AB 16.00 T");
    CHECK(forces[0].number == "\u221220.00");
    CHECK(forces[2].number == "16.00");
    const auto reactions = reactionRows(truss, solution);
    REQUIRE(reactions.size() == 2);
    CHECK((reactions[0].name + ' ' + reactions[0].x + ' ' + reactions[0].y) == "A 0.00 12.00");
}

TEST_CASE("a truss that was not solved has no rows and no tables") {
    Truss truss = gable();
    truss.members.pop_back();
    const Solution solution = solve(truss);
    CHECK(forceRows({englishPhrases(), truss}, solution).empty());
    CHECK(reactionRows(truss, solution).empty());
    CHECK(!contains(resultsHtml({englishPhrases(), truss}, solution), "<table"));
    CHECK(resultsCsv(truss, solution) == "\uFEFFkind,name,force,sense,fx,fy,unit\r\n");
}

TEST_CASE("the text table lines its columns up") {
    const Truss truss = gable();
    CHECK(contains(resultsText({englishPhrases(), truss}, solve(truss)),
                   "Member forces in kN, tension positive\n"
                   "  Member    Force   Sense\n"
                   "  AC       \u221220.00   compression\n"
                   "  CB       \u221220.00   compression\n"
                   "  AB        16.00   tension\n"));
}

TEST_CASE("CSV holds plain numbers, and text that a spreadsheet would run is disarmed") {
    Truss truss = gable();
    truss.joints[0].label = "=A";
    const std::string csv = resultsCsv(truss, solve(truss));
    CHECK(contains(csv, "\r\nmember,CB,-20,C,,,kN\r\n"));
    CHECK(contains(csv, "\r\nreaction,B,,,0,12,kN\r\n"));
    CHECK(contains(csv, "\r\nreaction,'=A,,,0,12,kN\r\n"));
    CHECK(csvTextCell("+1") == "'+1");
    CHECK(csvTextCell("a,\"b\"") == "\"a,\"\"b\"\"\"");
    CHECK(csvTextCell("-,x") == "\"'-,x\"");
    CHECK(csvTextCell("\t1") == "'\t1");
    CHECK(csvTextCell("@a") == "'@a");
    CHECK(csvTextCell("\r1") == "\"'\r1\"");
}

// Without the byte order mark U+FEFF a spreadsheet reads UTF-8 as an old code page: "A–C1" becomes
// "Aâ€“C1".
TEST_CASE("CSV begins with a byte order mark, and has exact forces in a column of their own") {
    Truss truss = gable();
    truss.joints[2].label = "C1";
    const std::string csv = resultsCsv(truss, solve(truss), solveExactly(truss));
    CHECK(csv.starts_with("\xEF\xBB\xBFkind,name,force,sense,fx,fy,unit,exact\r\n"));
    CHECK(contains(csv, "\r\nmember,A–C1,-20,C,,,kN,'-20\r\n")); // 12·5/3, by hand
    CHECK(contains(csv, "\r\nmember,AB,16,T,,,kN,16\r\n"));
    CHECK(contains(csv, "\r\nreaction,B,,,0,12,kN,\r\n"));
}

TEST_CASE("HTML tables have captions and scoped headings, and escape every name") {
    Truss truss = gable();
    truss.joints[0].label = "<b>&\"'";
    const std::string html = resultsHtml({englishPhrases(), truss}, solve(truss));
    CHECK(contains(html, "<caption>Member forces in kN, tension positive</caption>"));
    CHECK(contains(html, "<th scope=\"col\" class=\"words\">Member</th>"));
    CHECK(contains(html, "<th scope=\"row\">&lt;b&gt;&amp;&quot;&#39;"));
    CHECK(!contains(html, "<b>"));
}

TEST_CASE("the counting line compares members and reactions with the joints' equations") {
    Truss truss = gable();
    CHECK(countingLine(solve(truss)) == "m + r = 3 + 3 = 6 = 2j");
    truss.members.pop_back();
    CHECK(countingLine(solve(truss)) == "m + r = 2 + 3 = 5 < 6 = 2j");
}

TEST_CASE("a sentence takes its parts by name, and lists read as in speech") {
    const PhraseBook& book = englishPhrases();
    const auto list = [&](std::initializer_list<const char*> names) {
        std::vector<RichLine> items;
        for (const char* name : names) {
            items.push_back(plainLine(name));
        }
        return plainText(listOf(book, items));
    };
    CHECK(list({}) == "");
    CHECK(list({"A"}) == "A");
    CHECK(list({"A", "B"}) == "A and B");
    CHECK(list({"A", "B", "C", "D"}) == "A, B, C and D");
    CHECK(sayPlain(book, phrase::kLargestTension,
                   {{"members", plainLine("{value}")}, {"value", plainLine("1")}}) ==
          "Largest tension: 1 in {value}.");
}
