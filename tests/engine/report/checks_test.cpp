// Member checks as they are read: rows, sentences, sheets with their caution, and the working of
// one check, whose formulas are recalculated from the printed numbers.
#include "report/results/check_text.hpp"

#include "exchange/results/json_checks.hpp"
#include "report/derivation/check_working.hpp"
#include "report/derivation/passage.hpp"
#include "support/reading/calculator.hpp"
#include "support/trusses/checked_truss.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <catch2/matchers/catch_matchers_string.hpp>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::ContainsSubstring;
using Catch::Matchers::WithinRel;

namespace {

MemberChecks checked(const Truss& truss) { return checkMembers(truss, solve(truss), {}); }

std::string workingOf(const Truss& truss, const char* a, const char* b) {
    const MemberChecks checks = checked(truss);
    return passagesText(
        checkPassages({englishPhrases(), truss}, checks.members[memberAt(truss, a, b)]));
}

bool hasLine(const std::vector<std::string>& lines, const std::string& line) {
    return std::find(lines.begin(), lines.end(), line) != lines.end();
}

std::vector<std::string> split(const std::string& text, const std::string& sign) {
    std::vector<std::string> parts;
    for (std::size_t from = 0;;) {
        const std::size_t to = text.find(sign, from);
        parts.push_back(text.substr(from, to - from));
        if (to == std::string::npos) {
            return parts;
        }
        from = to + sign.size();
    }
}

// A unit follows only a number.
std::string withoutUnit(std::string text, const Truss& truss) {
    for (const std::string unit : {symbolOf(truss.units.force), symbolOf(truss.units.stress)}) {
        const std::string tail = "\u2009" + unit;
        if (!unit.empty() && text.ends_with(tail)) {
            return text.substr(0, text.size() - tail.size());
        }
    }
    return text;
}

// The uncertainty of numbers rounded to five significant figures: at most 5e-5 relative for each
// factor of a term, of which squares count twice, and for the result; summed over all terms, even
// where they cancel.
double slackOf(std::string side) {
    const std::string minus = "\u2212";
    for (std::size_t at = side.find(minus); at != std::string::npos; at = side.find(minus)) {
        side.replace(at, minus.size(), "+");
    }
    return 3e-4 * calculated(side).value_or(0);
}

// In every equation the parts that hold only numbers have the same value; returns how many were
// compared.
int compare(const Truss& truss, const std::vector<Passage>& passages) {
    int compared = 0;
    for (const auto& part : passages.front().parts) {
        const auto* line = std::get_if<WorkingLine>(&part);
        if (!line || line->formula.empty()) {
            continue;
        }
        for (const std::string& equation : split(plainText(line->runs), ", ")) {
            std::optional<double> before;
            double slack = 0;
            for (const std::string& side : split(equation, " = ")) {
                const auto value = calculated(withoutUnit(side, truss));
                if (value && before) {
                    INFO(plainText(line->runs));
                    // Five significant figures go into each; a utilisation has two decimals.
                    const bool use = line->role == LineRole::Result;
                    CHECK(std::abs(*value - *before) <= slack + (use ? 0.005 : 0));
                    ++compared;
                }
                before = value ? value : before;
                slack = value ? slackOf(withoutUnit(side, truss)) : slack;
            }
        }
    }
    return compared;
}

} // namespace

TEST_CASE("A row of checks has force, check, what is allowed, use, slenderness and remark") {
    Truss truss = steelGable();
    const std::vector<CheckRow> rows = checkRows({englishPhrases(), truss}, checked(truss));
    const CheckRow& tie = rows[memberAt(truss, "A", "B")];
    CHECK(tie.force == "16.00");
    CHECK(tie.check == "strength");
    CHECK(tie.allowed == "156.67"); // 235 · 1000 / 1.5
    CHECK(tie.use == "0.10");
    CHECK(tie.slenderness == "320");
    CHECK(tie.remark == "λ over 300");
    const CheckRow& rafter = rows[memberAt(truss, "A", "C")];
    CHECK(rafter.force == "\u221220.00");
    CHECK(rafter.check == "buckling");
    CHECK(rafter.allowed == "25.91"); // π² · 210 000 · 1000 / 200² / 2
    CHECK(rafter.use == "0.77");
    CHECK(rafter.remark.empty());
    CHECK_FALSE(rafter.faulty);

    truss.sections[0].radius = 20;
    truss.materials[0].strength.reset();
    CHECK(checkRows({englishPhrases(), truss}, checked(truss))[memberAt(truss, "A", "C")].remark ==
          "no strength; λ over 200");
}

TEST_CASE("A use that is just over 1 is not rounded to 1") {
    const Truss truss;
    CHECK(useText(truss, 0.834) == "0.83");
    CHECK(useText(truss, 0.9999) == "1.00");
    CHECK(useText(truss, 1) == "1.00");
    CHECK(useText(truss, 1.004) == "1.004");
    CHECK(useText(truss, 1.00012) == "1.0001");
    CHECK(useText(truss, 1.2345) == "1.23");
    Truss commas;
    commas.classSettings.decimalSign = ',';
    CHECK(useText(commas, 12.5) == "12,50");
}

TEST_CASE("The sentences name the most used member, what fails, what lacks, and the rule") {
    Truss truss = steelGable();
    std::vector<std::string> lines = checkLines({englishPhrases(), truss}, checked(truss), {});
    CHECK(lines.front() == "Highest utilisation: member AC, 0.77 by buckling.");
    CHECK(hasLine(lines, "More slender than allowed: AB."));
    CHECK(hasLine(lines, "Under all loads together."));
    CHECK(lines.back() == "Strength on the gross area divided by 1.5; of members in compression "
                          "also Euler's critical "
                          "force divided by 2, with K = 1.");
    truss.checks.tensionLimit = 0;
    CHECK(hasLine(checkLines({englishPhrases(), truss}, checked(truss), {}),
                  "No member carries more, or is more slender, than allowed."));

    truss.checks.formula = ColumnFormula::En1993;
    truss.checks.curve = BucklingCurve::A0;
    truss.materials[0].strength.reset();
    truss.members[memberAt(truss, "A", "C")].section = "";
    lines = checkLines({englishPhrases(), truss}, checked(truss), {{OneCase{"snow"}}, false});
    CHECK(hasLine(lines, "Not checked, as there is no strength: CB and AB."));
    CHECK(hasLine(lines, "Not checked, as there is no area, strength, modulus E and radius of "
                         "gyration: AC."));
    CHECK(hasLine(lines, "Under snow."));
    CHECK_THAT(lines.back(), ContainsSubstring("EN 1993-1-1") && ContainsSubstring("curve a₀"));
    CHECK_FALSE(hasLine(lines, "No member carries more, or is more slender, than allowed."));
}

TEST_CASE("What is not of steel is named beside a formula for steel, and what bends is named") {
    Truss truss = steelGable();
    truss.checks.formula = ColumnFormula::Aisc360;
    truss.materials.push_back({"oak", 11e3, 18, {}, {}, {}});
    truss.sections.push_back({"post", "oak", {}, {}, "timber", {{"B", 100}, {"H", 150}}, {}});
    truss.members[memberAt(truss, "A", "C")].section = "post";
    truss.loads.push_back({MemberForce{JointId{0}, JointId{1}, 4, 0, -2}, {}, {}});
    const auto lines = checkLines({englishPhrases(), truss}, checked(truss),
                                  {{OneCombination{"strength"}, OneCombination{"use"}}, true});
    CHECK(hasLine(lines, "Not of steel, hence by strength divided by 1.5 and Euler's critical "
                         "force divided by 2: AC."));
    CHECK(hasLine(lines, "Bent too by loads between their joints, which is left out here: AB."));
    CHECK(hasLine(lines, "The worst of each member over strength and use, each by itself."));
}

TEST_CASE("Checks both ways, on the net area and of timber add up as they are written") {
    int compared = 0;
    for (const char* shape : {"double-angle", "rhs", "timber"}) {
        for (int i = 0; i < 6; ++i) {
            INFO(shape << ", " << i);
            Truss truss = steelGable();
            truss.checks.formula = static_cast<ColumnFormula>(i % 3);
            truss.checks.safety = static_cast<AiscSafety>(i % 2);
            truss.checks.held = {{JointId{0}, JointId{1}}};
            truss.materials[0].ultimate = 360;
            truss.materials.push_back({"C24", 11e3, {}, 420, {}, {}});
            truss.materials[1].tension = 14.5;
            truss.materials[1].compression = 21;
            truss.materials[1].E05 = 7400;
            Section& bar = truss.sections[0];
            bar = {"bar", shape == std::string("timber") ? "C24" : "steel", {}, {}, shape, {}};
            bar.dimensions = {{"H", 90}, {"B", 60}, {"t", 6}, {"gap", 8}};
            bar.inPlane = i % 2 ? "strong" : "weak";
            bar.holes = {2, 14, {}};
            bar.lag = 0.85;
            bar.packing = 1200;
            truss.members[memberAt(truss, "A", "C")].factors = {0.8, 0.95, {}};
            for (const MemberCheck& check : checked(truss).members) {
                REQUIRE(isChecked(check));
                compared += compare(truss, checkPassages({englishPhrases(), truss}, check));
            }
        }
    }
    CHECK(compared > 300);
}

TEST_CASE("Every sheet of checks carries the caution whole, whatever the truss") {
    std::vector<Truss> trusses = exampleTrusses();
    trusses.push_back(steelGable());
    trusses.emplace_back();
    for (const Truss& truss : trusses) {
        const MemberChecks checks = checked(truss);
        const std::vector<std::string> caution = cautionLines(englishPhrases());
        REQUIRE(caution.size() == 3);
        std::vector<std::string> sheets{checksText({englishPhrases(), truss}, checks, {}),
                                        checksHtml({englishPhrases(), truss}, checks, {}),
                                        checksCsv({englishPhrases(), truss}, checks),
                                        writeChecks(englishPhrases(), truss, checks, {caution})};
        for (const MemberCheck& check : checks.members) {
            const auto passages = checkPassages({englishPhrases(), truss}, check);
            sheets.push_back(passagesText(passages));
            sheets.push_back(passagesHtml(passages));
        }
        for (const std::string& sheet : sheets) {
            for (const std::string& line : caution) {
                CHECK_THAT(sheet, ContainsSubstring(line));
            }
        }
    }
    const std::string all = cautionLines(englishPhrases())[0] + cautionLines(englishPhrases())[1] +
                            cautionLines(englishPhrases())[2];
    for (const char* word :
         {"Preliminary", "connections", "lateral restraint", "top chord out of plane", "fatigue",
          "load combinations", "Local codes and a licensed engineer decide"}) {
        CHECK_THAT(all, ContainsSubstring(word));
    }
}

TEST_CASE("The working of a tie's check reads as on paper") {
    const std::string text = workingOf(steelGable(), "A", "B");
    CHECK_THAT(text, ContainsSubstring("Check of member AB"));
    CHECK_THAT(text, ContainsSubstring("It is pulled by 16.00\u2009kN."));
    CHECK_THAT(text, ContainsSubstring("A = 1000\u2009mm², f = 235\u2009MPa"));
    CHECK_THAT(text, ContainsSubstring("N_R = f\u2009·\u2009A / γ = 235\u2009·\u20091000 / 1.5 / "
                                       "1000 = 156.67\u2009kN"));
    CHECK_THAT(text, ContainsSubstring("λ = L / r = 8000 / 25 = 320"));
    CHECK_THAT(text, ContainsSubstring("That is more than 300: too slender."));
    CHECK_THAT(text, ContainsSubstring("N / N_R = 16 / 156.67 = 0.10"));
    CHECK_THAT(text, ContainsSubstring("Not more than 1: it holds."));
}

TEST_CASE("The working of a rafter's check goes through the formula that was chosen") {
    Truss truss = steelGable();
    std::string text = workingOf(truss, "A", "C");
    CHECK_THAT(text, ContainsSubstring("λ = K\u2009·\u2009L / r = 1\u2009·\u20095000 / 25 = 200"));
    CHECK_THAT(text, ContainsSubstring("σ_cr = π²\u2009·\u2009E / λ² = "
                                       "3.1416²\u2009·\u2009210000 / 200² = 51.815\u2009MPa"));
    CHECK_THAT(text, ContainsSubstring("N_b = N_cr / n = 51.815 / 2 = 25.908\u2009kN"));
    CHECK_THAT(text, ContainsSubstring("The smaller of the two governs: buckling."));

    truss.checks.formula = ColumnFormula::En1993;
    text = workingOf(truss, "A", "C");
    CHECK_THAT(text, ContainsSubstring("by curve c, α = 0.49"));
    CHECK_THAT(text, ContainsSubstring("χ = 1 / ("));
    CHECK_THAT(text, ContainsSubstring("N_b = χ\u2009·\u2009f_y\u2009·\u2009A / γ_M1"));

    truss.checks.formula = ColumnFormula::Aisc360;
    text = workingOf(truss, "A", "C");
    CHECK_THAT(text, ContainsSubstring("F_y / F_e is more than 2.25"));
    CHECK_THAT(text, ContainsSubstring("F_cr = 0.877\u2009·\u2009F_e"));
    CHECK_THAT(text, ContainsSubstring("N_b = F_cr\u2009·\u2009A\u2009·\u2009φ"));
    truss.sections[0].radius = 80;
    truss.checks.safety = AiscSafety::Allowable;
    text = workingOf(truss, "A", "C");
    CHECK_THAT(text, ContainsSubstring("F_cr = 0.658 ^ "));
    CHECK_THAT(text, ContainsSubstring("N_b = F_cr\u2009·\u2009A / Ω"));
}

TEST_CASE("Every printed formula of a check gives what stands behind its equals sign") {
    int compared = 0;
    for (std::uint64_t seed = 0; seed < 150; ++seed) {
        INFO("seed " << seed);
        Truss truss = withChecks(withSections(randomDeterminateTruss(seed), seed), seed);
        if (seed % 4 == 3) { // conversion factors between the units of force, stress and area
            truss.units.force = ForceUnit::kip;
        }
        const MemberChecks checks = checked(truss);
        for (const MemberCheck& check : checks.members) {
            compared += compare(truss, checkPassages({englishPhrases(), truss}, check));
        }
    }
    CHECK(compared > 5000);
}

TEST_CASE("The reader of printed formulas finds one that is wrong") {
    CHECK(calculated("(1 + 0.49\u2009·\u2009(2 \u2212 0.2) + 2²) / 2") ==
          std::optional(0.5 * (1 + 0.49 * 1.8 + 4)));
    CHECK(calculated("1 / (3 + √4)") == std::optional(0.2));
    CHECK(calculated("2 ^ 3\u2009·\u20092") == std::optional(16.0));
    CHECK_FALSE(calculated("f\u2009·\u2009A").has_value());
}

TEST_CASE("A table for a spreadsheet has a row a member and the caution in rows of its own") {
    const Truss truss = steelGable();
    const std::string csv = checksCsv({englishPhrases(), truss}, checked(truss));
    CHECK_THAT(csv, ContainsSubstring(
                        "kind,name,force,check,allowed,use,slenderness,limit,remark,unit\r\n"));
    CHECK_THAT(csv, ContainsSubstring("member,AB,16,tension,156.666666667,"));
    CHECK_THAT(csv, ContainsSubstring(",320,300,λ over 300,kN\r\n"));
    CHECK_THAT(csv, ContainsSubstring("caution,\"Preliminary"));
    const auto lines = split(csv, "\r\n");
    CHECK(lines.size() == 1 + 3 + 3 + 1);
}

TEST_CASE("A member is labelled by its use, and by more than a number where it does not hold") {
    Truss truss = steelGable();
    truss.checks.tensionLimit = 0;
    const auto label = [&](const char* a, const char* b) {
        return useLabel({englishPhrases(), truss}, checked(truss).members[memberAt(truss, a, b)]);
    };
    CHECK(label("A", "C") == "0.77");
    truss.checks.tensionLimit = 300;
    CHECK(label("A", "B") == "0.10, λ > 300");
    truss.checks.eulerFactor = 4;
    CHECK(label("A", "C") == "1.54 > 1");
    truss.materials[0].strength.reset();
    CHECK(label("A", "C") == "?");
    truss.loads.clear();
    truss.checks.tensionLimit = truss.checks.compressionLimit = 0;
    CHECK(label("A", "B") == "0");
}

TEST_CASE("A stress for the drawing has three figures and its unit") {
    Truss truss = steelGable();
    const Solution solution = solve(truss);
    const MemberId tie{static_cast<int>(memberAt(truss, "A", "B"))};
    const MemberId rafter{static_cast<int>(memberAt(truss, "A", "C"))};
    CHECK(stressOf(truss, solution, tie) == "16\u2009MPa");
    CHECK(stressOf(truss, solution, rafter) == "20\u2009MPa");
    truss.members[tie.at()].section = "";
    CHECK(stressOf(truss, solve(truss), tie).empty());
}
