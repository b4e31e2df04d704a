// The sheet: what it says of which truss, and under which loads.

#include "report/sheet/sheet.hpp"

#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>
#include <string_view>

using namespace gusset;
using namespace gusset::support;

namespace {

std::string sheetText(const Truss& truss, const SheetChoices& choices = {}) {
    return sheetHtml({englishPhrases(), truss}, choices, {});
}

bool says(const std::string& html, std::string_view words) {
    return html.find(words) != std::string::npos;
}

// The gable (small_truss) of steel, EA = 2·10⁸ N, with its load in a case of its own and 8 kN of
// snow: under the combination 24 · 1 + 8 · 1.5 = 36 kN, half as much again as the load alone.
Truss loadedGable() {
    Truss truss = gable();
    truss.title = "Gable <1>";
    truss.loads.front().caseId = "dead";
    force(truss, "C", 0, -8, "snow");
    truss.materials = {{"steel", 200e3, 235, {}, {}, {}}};
    truss.sections = {{"bar", "steel", 1000, 25, "", {}, {}}};
    for (Member& member : truss.members) {
        member.section = "bar";
    }
    truss.combinations = {{"winter", {{"dead", 1}, {"snow", 1.5}}, {}}, {"dry", {{"dead", 1}}, {}}};
    return truss;
}

} // namespace

TEST_CASE("a sheet of an empty board says that nothing is drawn, and has no table") {
    const std::string html = sheetText({});
    CHECK(says(html, "Nothing is drawn yet"));
    CHECK_FALSE(says(html, "<table"));
}

TEST_CASE("without a choice, a sheet is under the first combination, or under every load") {
    CHECK(usualLoads(loadedGable()) == LoadChoice{OneCombination{"winter"}});
    CHECK(usualLoads(gable()) == LoadChoice{});
}

TEST_CASE(
    "a sheet has the forces under each combination, and the greatest with their combination") {
    const std::string html = sheetText(loadedGable(), {.loads = OneCombination{"winter"}});
    // AB under winter and dry: 36 · 16/24 = 24 kN and 16 kN.
    CHECK(says(html, "<tr><th scope=\"row\">AB</th>"
                     "<td>24<span class=\"tail t3\">.00</span></td>"
                     "<td>16<span class=\"tail t3\">.00</span></td>"
                     "<td>24<span class=\"tail t3\">.00</span></td><td class=\"words\">winter</td>"
                     "<td>0<span class=\"tail t3\"></span></td><td class=\"words\"></td></tr>"));
    CHECK(says(html, "under the combinations winter and dry"));
    CHECK(says(html, "1 · dead and 1.5 · snow"));
}

TEST_CASE("a sheet has displacements under the loads chosen, also as a part of the span") {
    const std::string html = sheetText(loadedGable(), {.loads = OneCombination{"dry"}});
    // Under 24 kN, by Σ N·n·L/EA: 2 · 20 · 20/24 · 5 m and 16 · 16/24 · 8 m, over 200 MN: 1.26 mm,
    // of a span of 8 m.
    CHECK(says(html, "1<span class=\"tail t3\">.26</span>"));
    CHECK(says(html, "<td>L/6350</td>"));
    CHECK(says(html, "under combination dry"));
    CHECK(says(html, "L = 8"));
}

TEST_CASE("a sheet names the clause of each check, and what the check leaves out") {
    Truss truss = loadedGable();
    truss.checks.formula = ColumnFormula::En1993;
    const std::string html = sheetText(truss, {.loads = OneCombination{"winter"}});
    CHECK(says(html, "<td class=\"words\">6.2.3</td>")); // the tie
    CHECK(says(html, "<td class=\"words\">6.3.1</td>")); // the rafters
    CHECK(says(html, "Local codes and a licensed engineer decide."));
    SheetChoices choices{.loads = OneCombination{"winter"}};
    choices.parts[static_cast<std::size_t>(SheetPart::Checks)] = false;
    CHECK_FALSE(says(sheetText(truss, choices), "licensed engineer"));
}

TEST_CASE("a sheet lists the sections with their mass, and each of its pages bears the caution") {
    Truss truss = loadedGable();
    truss.materials.front().density = 7850;
    const std::string html = sheetText(truss);
    // Two rafters of 5 m and a tie of 8 m, 1000 mm² · 7850 kg/m³ = 7.85 kg/m: 141.3 kg.
    CHECK(says(html, "Sections and their mass"));
    CHECK(says(html, "<th scope=\"row\">bar</th>"));
    CHECK(says(html, "141<span"));
    CHECK(says(html, "@top-right { content: \"Preliminary: "));
    const std::string csv = sheetCsv({englishPhrases(), truss}, {});
    CHECK(says(csv, "bar,3,18.00,7.9,141.3"));
    CHECK(says(csv, "all,3,18.00,,141.3"));
    truss.members.front().section = {};
    truss.materials.front().density = {};
    CHECK(says(sheetCsv({englishPhrases(), truss}, {}), "bar,2,"));
    CHECK_FALSE(says(sheetCsv({englishPhrases(), truss}, {}), "141"));
    CHECK_FALSE(says(sheetText(gable()), "@top-right"));
    CHECK_FALSE(says(sheetText(gable()), "Sections and their mass"));
}

TEST_CASE(
    "a sheet of a truss from an outline has its loads as they come, and how they are shared") {
    Outline outline;
    outline.form = {.kind = FormKind::HoweRoof, .span = 24, .rise = 5, .panels = 10};
    outline.spacing = 6;
    outline.loads = {{{"S", LoadSpread::AreaOnPlan, 1.2, 1.2}, "snow", LoadedChord::Upper},
                     {{"W", LoadSpread::AreaNormal, 0.4, -0.3}, "wind", LoadedChord::Upper}};
    outline.selfWeight = "G";
    const Truss truss = trussOf(englishPhrases(), outline).value();
    const std::string html = sheetText(truss, {.outline = outline});
    CHECK(says(html, "Loads as they come, to trusses 6\u2009m apart"));
    CHECK(
        says(html,
             "<td class=\"words\">snow, up to 1000 m</td><td class=\"words\">1.2\u202FkN/m²</td>"));
    CHECK(says(html, "0.4\u202FkN/m² left, −0.3\u202FkN/m² right of the ridge"));
    CHECK(says(html, "own weight of the members"));
    CHECK(says(html, "What the joints of the upper chord carry"));
    CHECK_FALSE(says(html, "What the joints of the lower chord carry")); // no load lies on it
    CHECK(says(html, "half of what lies on either side"));
    const std::string csv = sheetCsv({englishPhrases(), truss}, {.outline = outline});
    CHECK(says(csv, "What the joints of the upper chord carry"));
    CHECK_FALSE(says(sheetText(truss), "Loads as they come"));
}

TEST_CASE("masses of a truss in feet are in pounds") {
    // 18 ft of the gable's bars, 1000 mm² · 7850 kg/m³ = 7.85 kg/m = 5.2750 lb/ft, as a foot is
    // 0.3048 m and a pound 0.45359237 kg: 94.9 lb.
    Truss truss = loadedGable();
    truss.units.length = LengthUnit::ft;
    truss.materials.front().density = 7850;
    const std::string html = sheetText(truss);
    CHECK(says(html, "lb/ft"));
    CHECK(says(html, "94<span class=\"tail t2\">.9</span>"));
    CHECK_FALSE(says(html, "kg/m<"));
}

TEST_CASE("a sheet names the rule of each combination, if there is one") {
    Truss truss = loadedGable();
    CHECK_FALSE(says(sheetText(truss), "By the rule"));
    truss.combinations.front().by = "EN 1990, 6.10";
    CHECK(says(sheetText(truss), "By the rule"));
    CHECK(says(sheetText(truss), "EN 1990, 6.10"));
}

TEST_CASE("a mechanism has no forces on its sheet, which says so, and its model") {
    Truss truss = loadedGable();
    truss.members.erase(truss.members.begin() +
                        static_cast<std::ptrdiff_t>(memberAt(truss, "A", "B")));
    const std::string html = sheetText(truss);
    CHECK(says(html, "So there are no forces"));
    CHECK(says(html, "<svg"));
    CHECK(says(html, "Joints"));
    CHECK_FALSE(says(html, "Member forces"));
}

TEST_CASE("a long title is cut short at the foot, where the number of the page stands beside it") {
    Truss truss = gable();
    for (int i = 0; i < 100; ++i) {
        truss.title += "\u00E9"; // two bytes each
    }
    const std::string html = sheetText(truss);
    std::string sixty;
    for (int i = 0; i < 60; ++i) {
        sixty += "\u00E9";
    }
    CHECK(says(html, "@bottom-left { content: \"" + sixty + "\u2026\""));
    CHECK(says(html, "<h1>" + truss.title + "</h1>"));
}
TEST_CASE("whatever is typed for a sheet stays text, in its head and at the foot of its pages") {
    const std::string evil = "</style><script>\"\\";
    const std::string html =
        sheetText(loadedGable(), {.project = evil, .author = evil, .date = evil});
    CHECK_FALSE(says(html, "<script"));
    CHECK_FALSE(says(html, "</style><"));
    CHECK(says(html, "Gable &lt;1&gt;"));
    CHECK(says(html, "Gable \\3c 1\\3e "));
}

TEST_CASE("the parts of a sheet are named as in its help, and a name that is none is refused") {
    CHECK(partsNamed(partNames()) ==
          std::array<bool, kSheetParts>{true, true, true, true, true, true, true, true});
    const auto some = partsNamed("checks,drawing");
    REQUIRE(some);
    CHECK((*some)[static_cast<std::size_t>(SheetPart::Checks)]);
    CHECK_FALSE((*some)[static_cast<std::size_t>(SheetPart::Forces)]);
    CHECK_FALSE(partsNamed("drawing,"));
    CHECK_FALSE(partsNamed("drawings"));
    CHECK_FALSE(sizeNamed("A3"));
}

TEST_CASE("the tables of a sheet as CSV begin with the title, and say under which loads they are") {
    const Truss truss = loadedGable();
    const std::string csv =
        sheetCsv({englishPhrases(), truss}, {.loads = OneCombination{"winter"}, .project = "=1+1"});
    // As many columns as the checks have: eight.
    CHECK(csv.starts_with("\xEF\xBB\xBFGable <1>,,,,,,,\r\nProject,'=1+1,,,,,,\r\n"));
    CHECK(says(csv, "\r\nMember,winter,dry,Greatest tension,by,Greatest compression,by,\r\n"));
    CHECK(says(csv, "\r\nAC,-30.00,-20.00,0,,30.00,winter,\r\n"));
    CHECK(says(csv, "under the combinations winter and dry"));
    CHECK(says(csv, "licensed engineer decide."));
}
