#include "hand/virtual_work/force_method.hpp"
#include "report/derivation/force_method_text.hpp"

#include "support/reading/formula_reader.hpp"
#include "support/reading/formula_value.hpp"
#include "support/reading/sketch_checks.hpp"
#include "support/reading/working_reader.hpp"
#include "support/reading/written.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/worked_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>
#include <string>
#include <variant>
#include <vector>

using namespace gusset;
using namespace gusset::support;

namespace {

ForceMethod methodOf(const Truss& truss) { return forceMethod(truss, {}, solve(truss)); }

std::string methodTextOf(const Truss& truss) {
    return passagesText(forceMethodPassages({englishPhrases(), truss}, methodOf(truss)));
}

//  D---C
//  | X |     a square of 3 m with both diagonals, pin at A, roller at B;
//  A---B     the test adds load and EA
Truss crossedSquare() {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 3, 0);
    joint(truss, "C", 3, 3);
    joint(truss, "D", 0, 3);
    members(truss, {"AB", "BC", "CD", "DA", "AC", "BD"});
    pin(truss, "A");
    roller(truss, "B");
    return truss;
}

// Checks every equation of the method with the numbers in it.
std::string objectionToMethod(const ForceMethod& method) {
    constexpr double kClose = 1e-9;
    const std::size_t count = method.releases.size();
    for (std::size_t i = 0; i < count; ++i) {
        double sum = method.given[i].total - method.allowed[i];
        double size = std::abs(method.given[i].total) + std::abs(method.allowed[i]);
        for (std::size_t k = 0; k < count; ++k) {
            sum += method.redundants[k] * method.unit[i][k];
            size += std::abs(method.redundants[k] * method.unit[i][k]);
        }
        if (std::abs(sum) > kClose * size) {
            return "the displacements at a release do not fit";
        }
        if (method.unit[i][i] <= 0 || method.unit[0][1] != method.unit[1][0]) {
            return "unit displacements are not positive and reciprocal";
        }
    }
    // Compatibility at the releases holds for the final forces: Σ n·(N·L/EA + e) = Σ r·Δ.
    for (std::size_t i = 0; i < count; ++i) {
        double sum = 0;
        double size = 0;
        const auto add = [&](double term) {
            sum += term;
            size += std::abs(term);
        };
        for (const ForceMethodRow& row : method.rows) {
            add(row.unit[i] * row.force * row.weight);
            add(row.unit[i] * (row.thermal + row.misfit));
        }
        for (const ForceMethodReaction& row : method.reactions) {
            add(-row.unit[i] * row.settle);
        }
        if (std::abs(sum) > kClose * size) {
            return "the members' growth under the final forces does not fit together";
        }
    }
    return {};
}

// The workings that the table is based on, read like any working.
std::string objectionToWorkings(const ForceMethod& method) {
    std::string text =
        objectionTo(method.givenTruss, method.givenWorking, solve(method.givenTruss));
    for (std::size_t i = 0; text.empty() && i < method.releases.size(); ++i) {
        text = objectionTo(method.unitTrusses[i], method.unitWorkings[i],
                           solve(method.unitTrusses[i]));
    }
    return text;
}

} // namespace

TEST_CASE("the superposed forces of any truss with one or two redundants are those of the "
          "stiffness solution, and every equation balances") {
    int worked[kMostRedundants] = {0, 0};
    for (std::uint64_t seed = 0; worked[0] + worked[1] < 1200; ++seed) {
        Truss truss = randomIndeterminateTruss(seed);
        if (seed % 3 == 0) {
            addRandomStrains(truss, seed);
        }
        const Solution solution = solve(truss);
        if (!solution.solved || solution.counting.redundants > kMostRedundants) {
            continue;
        }
        INFO("seed " << seed << ", redundants " << solution.counting.redundants);
        const ForceMethod method = forceMethod(truss, {}, solution);
        if (method.end == ForceMethodEnd::Unstrained) { // a roller beside a support that holds it
            REQUIRE(method.shared.valid());
            continue;
        }
        REQUIRE(method.end == ForceMethodEnd::Complete);
        REQUIRE(method.missed <= 1e-9);
        REQUIRE(objectionToMethod(method) == "");
        REQUIRE(objectionToWorkings(method) == "");
        ++worked[method.counting.redundants - 1];
    }
    CHECK(worked[0] >= 500);
    CHECK(worked[1] >= 500);
}

TEST_CASE("the printed sums and equations of the force method hold to the digits that are shown") {
    int equations = 0;
    for (std::uint64_t seed = 0; seed < 400; ++seed) {
        Truss truss = randomIndeterminateTruss(seed);
        if (seed % 2 == 0) {
            addRandomStrains(truss, seed);
        }
        const ForceMethod method = methodOf(truss);
        INFO("seed " << seed);
        const FormulaReading reading =
            readFormulas(forceMethodPassages({englishPhrases(), truss}, method));
        REQUIRE(reading.objection == "");
        equations += reading.equations;
        if (method.end == ForceMethodEnd::Complete) {
            REQUIRE(reading.equations >= 2 * static_cast<int>(method.releases.size()));
        }
    }
    CHECK(equations > 300);
}

namespace {

// Of a table whose last column is the sum of the others, or whose last row is: how many sums were
// added up as printed. Fails at the first that does not add up.
int addedRows(const TextTable& table) {
    int added = 0;
    for (const std::vector<Words>& row : table.rows) {
        double sum = 0;
        for (std::size_t c = 1; c + 1 < row.size(); ++c) {
            sum += digitsOf(plainText(row[c].line)).value().value;
        }
        const std::string whole = plainText(row.back().line);
        const Digits printed = digitsOf(whole).value();
        INFO(table.caption << ", " << plainText(row.front().line) << ": " << sum << ", " << whole);
        REQUIRE(std::abs(sum - printed.value) <= 0.5000001 * printed.step());
        ++added;
    }
    return added;
}

int addedColumns(const TextTable& table) {
    int added = 0;
    for (std::size_t c = 1; c < table.head.size(); ++c) {
        const std::string total = plainText(table.rows.back()[c].line);
        if (total.empty()) {
            continue;
        }
        double sum = 0;
        for (std::size_t r = 0; r + 1 < table.rows.size(); ++r) {
            sum += digitsOf(plainText(table.rows[r][c].line)).value().value;
        }
        const Digits printed = digitsOf(total).value();
        INFO(table.caption << ", column " << c << ": " << sum << ", " << total);
        REQUIRE(std::abs(sum - printed.value) <= 1e-6 * printed.step());
        ++added;
    }
    return added;
}

} // namespace

TEST_CASE("a reader who adds up the rows and columns of the tables gets what is printed there") {
    int rows = 0;
    int columns = 0;
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        Truss truss = randomIndeterminateTruss(seed);
        if (seed % 2 == 0) {
            addRandomStrains(truss, seed);
        }
        truss.classSettings.digits = 1 + static_cast<int>(seed % 3);
        const ForceMethod method = methodOf(truss);
        INFO("seed " << seed);
        for (const Passage& passage : forceMethodPassages({englishPhrases(), truss}, method)) {
            for (const auto& part : passage.parts) {
                const auto* table = std::get_if<TextTable>(&part);
                if (!table) {
                    continue;
                }
                const bool superposed =
                    table->caption == "Member forces" || table->caption == "Reactions";
                const bool summed = table->caption == "What each member adds to the displacements";
                rows += superposed ? addedRows(*table) : 0;
                columns += summed ? addedColumns(*table) : 0;
            }
        }
    }
    CHECK(rows > 1000);
    CHECK(columns > 200);
}

TEST_CASE("figures follow the class, in the sums as well") {
    Truss truss = crossedSquare();
    force(truss, "C", 10, 0);
    truss.classSettings.form = NumberForm::Significant;
    truss.classSettings.digits = 3;
    // EA·δ10 = 15√2 + 60 = 81.213, EA·δ11 = 6 + 6√2 = 14.485
    const std::string text = methodTextOf(truss);
    CHECK(contains(text, "\u2248 81.2\u2009kN\u00B7m\n"));
    CHECK(contains(text, "\u2248 14.5\u2009m\n"));
    CHECK(contains(text, "81.2 + X_1\u2009\u00B7\u200914.5 = 0\n"));
}

TEST_CASE("each state of the released truss is drawn with its forces, and can be followed up") {
    Truss truss = crossedSquare();
    force(truss, "C", 10, 0);
    const auto passages = forceMethodPassages({englishPhrases(), truss}, methodOf(truss));
    const auto released = std::find_if(passages.begin(), passages.end(), [](const auto& passage) {
        return plainText(passage.title) == "Forces of the released truss";
    });
    REQUIRE(released != passages.end());
    std::vector<Sketch> sketches;
    for (const auto& part : released->parts) {
        if (const auto* sketch = std::get_if<Sketch>(&part)) {
            sketches.push_back(*sketch);
        }
    }
    REQUIRE(sketches.size() == 2);
    const auto shows = [](const Sketch& sketch, const char* text) {
        return std::count_if(sketch.words.begin(), sketch.words.end(),
                             [&](const auto& words) { return plainText(words.words) == text; });
    };
    CHECK(shows(sketches[0], "14.14") == 1);
    CHECK(shows(sketches[1], "\u22120.7071") == 4); // the sides
    for (const Sketch& sketch : sketches) {
        CHECK(faultOfSketch(sketch) == "");
        CHECK(std::count_if(sketch.lines.begin(), sketch.lines.end(),
                            [](const auto& line) { return line.dashed; }) == 1); // the cut member
    }
    REQUIRE(released->folded.size() == 2);
    CHECK(plainText(released->folded[0].title) == "How the forces N_0 are found");
    CHECK(released->folded[1].passages.size() > 3);
    const std::string html = passagesHtml(passages);
    CHECK(contains(
        html, "<details>\n<summary>How the forces <var>N</var><sub>0</sub> are found</summary>"));
    CHECK(contains(html, "<th scope=\"row\"><var>A</var><sub>x</sub></th>"));
}

TEST_CASE("the reader of formulas objects to an equation that does not hold") {
    const auto number = [](const char* text) { return Token{TokenKind::Number, text}; };
    const auto sign = [](const char* text) { return Token{TokenKind::Operator, text}; };
    const Token x{TokenKind::Variable, "X", "1"};
    const auto readingOf = [&](const char* constant) {
        Passage passage;
        addFormula(passage, LineRole::Equation,
                   {number(constant), sign("+"), x, sign("\u00B7"), number("0.50"), sign("="),
                    number("0")});
        addFormula(passage, LineRole::Result, {x, sign("="), number("12.3")});
        return readFormulas({passage});
    };
    CHECK(readingOf("\u22126.15").objection == "");
    CHECK(readingOf("\u22126.15").equations == 1);
    CHECK(readingOf("\u22126.45").objection != "");
    CHECK(readingOf("6.15").objection != "");
}

TEST_CASE("crossed diagonals: one of them is cut, and shares the load with the other") {
    Truss truss = crossedSquare();
    force(truss, "C", 10, 0);
    // Cut BD. N0: 10√2 in AC, −10 in BC (the diagonal's fall), nothing in AB, CD, DA. n: 1 in the
    // diagonals, −1/√2 in the sides. EA·δ10 = 3·(10/√2) + 3√2·10√2, EA·δ11 = 4·3/2 + 2·3√2:
    // X = −(15√2 + 60)/(6 + 6√2).
    const ForceMethod method = methodOf(truss);
    REQUIRE(method.end == ForceMethodEnd::Complete);
    REQUIRE(method.releases.size() == 1);
    CHECK(method.releases[0].reason == ReleaseReason::Crossing);
    CHECK(memberName(truss, std::get<MemberId>(method.releases[0].of)) == "BD");
    CHECK(memberName(truss, method.releases[0].other) == "AC");
    CHECK(method.timesStiffness);
    CHECK(method.assumed);
    CHECK(method.difficulty == Difficulty::Joints);
    const double root = std::sqrt(2.0);
    CHECK(std::abs(method.given[0].total - (15 * root + 60)) < 1e-9);
    CHECK(std::abs(method.unit[0][0] - (6 + 6 * root)) < 1e-12);
    CHECK(std::abs(method.redundants[0] + (15 * root + 60) / (6 + 6 * root)) < 1e-9);
}

TEST_CASE("over three supports the middle roller is taken away") {
    const Truss truss = redundantTrusses().front().truss;
    const ForceMethod method = methodOf(truss);
    REQUIRE(method.end == ForceMethodEnd::Complete);
    REQUIRE(method.releases.size() == 1);
    CHECK(method.releases[0].reason == ReleaseReason::SparesRoller);
    CHECK(method.releases[0].of == MemberOrRestraint{RestraintId{2}}); // A_x, A_y, C_y
    CHECK(method.allowed[0] == -4);         // mm, the support's own movement
    CHECK(method.given[0].settlement == 0); // none of the other supports moves
    CHECK_FALSE(method.timesStiffness);
}

TEST_CASE("a gable between two pins: one of them would do as a roller") {
    Truss truss = gable();
    truss.supports.back().kind = SupportKind::Pin;
    const ForceMethod method = methodOf(truss);
    REQUIRE(method.end == ForceMethodEnd::Complete);
    CHECK(method.releases[0].reason == ReleaseReason::PinSlides);
    // Released, the tie carries 16 kN; a unit thrust at B to the right puts 1 into the tie alone.
    // 8·16 + X·8 = 0: B_x = −16, to the left, and the tie carries nothing.
    CHECK(std::abs(method.redundants[0] + 16) < 1e-12);
    CHECK(method.rows[memberAt(truss, "A", "B")].force == 0);
}

TEST_CASE("what settles, warms or does not fit stands apart in the sums") {
    Truss truss = withSections(crossedSquare(), 1);
    truss.members[4].misfit = 2; // AC 2 mm too long; n = 1
    truss.members[0].warming = 30;
    truss.supports[1].settleAlong = -5; // statically determinate supports: no force from it
    const ForceMethod method = methodOf(truss);
    REQUIRE(method.end == ForceMethodEnd::Complete);
    CHECK(std::abs(method.given[0].misfit - 2) < 1e-12);
    CHECK(method.given[0].thermal < 0); // AB grows, n = −1/√2
    CHECK(method.given[0].elastic == 0);
    CHECK(method.given[0].settlement == 0);
    CHECK(method.missed <= 1e-9);
    CHECK(contains(methodTextOf(truss),
                   "No load acts, so the forces N_0 of the released truss are zero."));
}

TEST_CASE("a case alone is its loads alone, without warming, misfit and settlement") {
    Truss truss = withSections(crossedSquare(), 1);
    force(truss, "C", 10, 0, "wind");
    truss.members[4].misfit = 2;
    const LoadChoice wind = OneCase{"wind"};
    const ForceMethod method = forceMethod(truss, wind, solve(truss, wind));
    REQUIRE(method.end == ForceMethodEnd::Complete);
    CHECK(method.given[0].misfit == 0);
    CHECK(method.missed <= 1e-9);
}

TEST_CASE("the force method is refused with its reason") {
    CHECK(contains(methodTextOf(gable()), "there is no redundant"));

    Truss moves = gable();
    moves.members.pop_back();
    CHECK(contains(methodTextOf(moves), "The truss can move"));

    Truss many = crossedSquare();
    pin(many, "C");
    pin(many, "D");
    CHECK(solve(many).counting.redundants == 5);
    CHECK(contains(methodTextOf(many), "The truss has 5 redundants."));

    Truss soft = withSections(crossedSquare(), 1);
    soft.members[0].section.clear();
    CHECK(contains(methodTextOf(soft), "E and A are needed of AB"));

    Truss twice = gable();
    roller(twice, "B");
    CHECK(contains(methodTextOf(twice), "Supports hold B twice in the same direction."));
}
