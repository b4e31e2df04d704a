#include "hand/paper/working.hpp"
#include "report/derivation/body_forces.hpp"
#include "report/derivation/working_text.hpp"
#include "report/formula/exact_notation.hpp"
#include "report/text/formula.hpp"
#include "report/text/math_ml.hpp"

#include "support/reading/working_reader.hpp"
#include "support/reading/written.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cmath>

using namespace gusset;
using namespace gusset::support;

namespace {

Truss exactly(Truss truss) {
    truss.classSettings.form = NumberForm::Exact;
    return truss;
}

//  A
//  | \        wall bracket 2 wide and 1 high, 10 down at its tip C: AC = 10·√5/1, BC = −10·2/1
//  B---C
Truss bracket() {
    Truss truss;
    joint(truss, "A", 0, 1);
    joint(truss, "B", 0, 0);
    joint(truss, "C", 2, 0);
    member(truss, "A", "C");
    member(truss, "B", "C");
    pin(truss, "A");
    pin(truss, "B");
    force(truss, "C", 0, -10);
    return exactly(truss);
}

} // namespace

TEST_CASE(
    "a class that writes exact numbers reads roots and fractions, with decimals beside them") {
    const std::string text = textOf(bracket());
    CHECK(contains(text, "F_AC = 10\u221A5\u2009kN \u2248 22.36\u2009kN (tension)\n"));
    CHECK(contains(text, "F_BC = \u221220\u2009kN (compression)\n"));
    CHECK(contains(text, "sin\u2009\u03B1 = 1/\u221A5, cos\u2009\u03B1 = 2/\u221A5\n"));
    const std::string html = workingHtml({englishPhrases(), bracket()}, workingOf(bracket()));
    CHECK(contains(html, "<mn>10</mn><msqrt><mn>5</mn></msqrt>"));
    CHECK(contains(html, "<mfrac><mn>1</mn><msqrt><mn>5</mn></msqrt></mfrac>"));
}

TEST_CASE("free bodies carry exact values where the equations do") {
    Truss truss = exactly(gable());
    truss.loads.clear();
    force(truss, "C", 0, -10); // rafters 25/3, as below
    const Working working = workingOf(truss);
    const Notation notation = notationOf({englishPhrases(), truss}, working);
    std::string labels;
    for (std::size_t step = 0; step < working.steps.size(); ++step) {
        for (const FreeBody& body : freeBodiesOf(notation, step)) {
            for (const BodyForce& force : body.forces) {
                labels += plainText(force.label) + "\n";
            }
        }
    }
    // Each rafter is found at its support, and is known at the ridge with the value of its own
    // result.
    const std::string text = textOf(truss);
    const std::size_t found = text.find("F_AC = ");
    REQUIRE(found != std::string::npos);
    const std::size_t unit = text.find("\u2009kN", found);
    const std::size_t last = text.rfind(" = ", unit); // after the quotient
    const std::string value = "F_AC" + text.substr(last, unit - last);
    INFO(value << "\n" << labels);
    CHECK(contains(labels, value + "\u2009kN"));
}

TEST_CASE("a fraction stands in brackets before what it is multiplied with") {
    Truss truss = exactly(gable());
    truss.loads.clear();
    force(truss, "C", 0, -10); // rafters 5·5/3 = 25/3, tie 20/3
    const std::string text = textOf(truss);
    CHECK(contains(text, "F_AC = \u221225/3\u2009kN \u2248 \u22128.33\u2009kN (compression)\n"));
    CHECK(contains(text, "(\u221225/3)\u2009cos\u2009\u03B1"));
    CHECK(contains(text, "F_AB = 20/3\u2009kN \u2248 6.67\u2009kN (tension)\n"));
}

TEST_CASE("a root over a fraction stays one number, in text and in MathML") {
    const Truss truss;
    const Working working;
    const Notation notation = notationOf({englishPhrases(), truss}, working);
    const auto written = [&](const char* above, const char* root, const char* below) {
        return plainText(runsOf(surdTokens(notation, {above, root, below, 0.0})));
    };
    CHECK(written("-35", "2", "2") == "\u221235\u221A2/2");
    CHECK(written("1", "2", "3") == "\u221A2/3");
    CHECK(written("-1", "2", "3") == "\u2212\u221A2/3");
    CHECK(written("-1", "3", "1") == "\u2212\u221A3");
    CHECK(written("7", "1", "3") == "7/3");
    CHECK(mathMl(surdTokens(notation, {"-35", "2", "2", 0.0})) ==
          "<math displaystyle=\"true\"><mrow><mfrac><mrow><mrow><mo>\u2212</mo><mn>35</mn></mrow>"
          "<msqrt><mn>2</mn></msqrt></mrow><mn>2</mn></mfrac></mrow></math>");
    CHECK(plainText(runsOf(surdTokens(notation, {"15", "1", "2", 7.5}))) == "7.5");
}

TEST_CASE("exact values are the working's own, force by force and reaction by reaction") {
    int exact = 0;
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        Truss truss = randomDeterminateTruss(seed);
        truss.classSettings.form = NumberForm::Exact;
        INFO("seed " << seed);
        REQUIRE(objectionToWorkingOf(truss) == "");
        const Working working = workingOf(truss);
        if (working.exact.forces.empty()) {
            continue;
        }
        ++exact;
        double largest = 0;
        for (const Found& found : working.steps.back().found) {
            largest = std::max(largest, std::abs(found.value));
        }
        for (const Found& found : working.steps.back().found) {
            const Surd& surd = found.symbol.kind == SymbolKind::Reaction
                                   ? working.exact.reactions[found.symbol.restraint.at()]
                                   : working.exact.forces[found.symbol.member.at()];
            REQUIRE(std::abs(surd.value - found.value) <= 1e-9 * largest);
        }
    }
    CHECK(exact > 100);
}

TEST_CASE("without exact numbers to be had the working is in decimals") {
    Truss truss = bracket();
    std::get<JointForce>(truss.loads[0].what).fy = -1.0 / 3;
    CHECK(workingOf(truss).exact.forces.empty());
    const char* exactFirst = "kN \u2248"; // 50/3 kN ≈ 16.67 kN
    CHECK(contains(textOf(bracket()), exactFirst));
    CHECK_FALSE(contains(textOf(truss), exactFirst));
    Truss decimals = bracket();
    decimals.classSettings.form = NumberForm::Decimals;
    CHECK(workingOf(decimals).exact.forces.empty());
    CHECK_FALSE(contains(textOf(decimals), exactFirst));
}
