// The working as a document: where its equations break, its figures of the whole truss, the moment
// centre off the truss, and its order.

#include "report/paper/document.hpp"

#include "hand/stages/sections.hpp"
#include "report/derivation/body_sketch.hpp"
#include "report/derivation/truss_figures.hpp"
#include "report/derivation/working_text.hpp"
#include "report/text/formula.hpp"
#include "report/text/math_ml.hpp"
#include "support/reading/mock_language.hpp"
#include "support/reading/sketch_checks.hpp"
#include "support/reading/written.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinAbs;

namespace {

std::string written(const Formula& formula) { return plainText(runsOf(formula)); }

std::vector<std::string> brokenLines(const Formula& formula) {
    const BrokenFormula broken = brokenAtOperators(formula);
    std::vector<std::string> lines{written(broken.lead)};
    for (const Formula& piece : broken.rest) {
        lines.push_back(written(piece));
    }
    return lines;
}

Token op(const char* text) { return operatorToken(text); }

// Every word of a sketch.
std::multiset<std::string> wordsOfSketch(const Sketch& sketch) {
    std::multiset<std::string> words;
    for (const SketchWords& each : sketch.words) {
        words.insert(plainText(each.words));
    }
    return words;
}

std::vector<Truss> manyTrusses() {
    std::vector<Truss> trusses = exampleTrusses();
    for (std::uint64_t seed = 0; seed < 100; ++seed) {
        trusses.push_back(randomDeterminateTruss(seed));
    }
    return trusses;
}

//                H     three panels of 2 m between chords that meet `run` m to the left of A: the
//        D---F---|     bottom one is level, the top one rises from C, 1 m above A
//    C---| / | \ |
//    |\  |/  |  \|
//    A---B---E---G
Truss taperingTruss(double run) {
    Truss truss;
    const std::vector<std::pair<const char*, const char*>> posts{
        {"A", "C"}, {"B", "D"}, {"E", "F"}, {"G", "H"}};
    double x = 0;
    for (const auto& [low, high] : posts) {
        joint(truss, low, x, 0);
        joint(truss, high, x, 1 + x / run);
        member(truss, low, high);
        x += 2;
    }
    members(truss, {"AB", "BE", "EG", "CD", "DF", "FH", "BC", "BF", "FG"});
    pin(truss, "A");
    roller(truss, "G");
    force(truss, "D", 0, -10);
    return truss;
}

// The drawing of the cut through BE, BF and DF, whose equation for BF is about where BE and DF
// meet.
Sketch cutDrawing(const Truss& truss) {
    const Working working = workSection(truss, {}, solve(truss), memberNamed(truss, "B-F"));
    for (std::size_t step = 0; step < working.steps.size(); ++step) {
        const auto sketches = bodySketches(notationOf({englishPhrases(), truss}, working), step);
        if (working.steps[step].kind == StepKind::SectionIntro && !sketches.empty()) {
            return sketches.front();
        }
    }
    return {};
}

std::vector<SketchLine> dashedLines(const Sketch& sketch) {
    std::vector<SketchLine> dashed;
    for (const SketchLine& line : sketch.lines) {
        if (line.dashed && length(line.b - line.a) > 50) {
            dashed.push_back(line);
        }
    }
    return dashed;
}

} // namespace

TEST_CASE("an equation breaks before its signs, and stands clear of the name of its sum") {
    const Formula sum{op("\u03A3"),
                      variableToken("F", "y"),
                      op("="),
                      numberToken("0"),
                      op(":"),
                      op("\u2212"),
                      numberToken("24"),
                      op("+"),
                      variableToken("F", "BC"),
                      functionToken("sin"),
                      variableToken("\u03B1"),
                      op("="),
                      numberToken("0")};
    CHECK(brokenLines(sum) == std::vector<std::string>{"\u03A3F_y = 0:  ", "\u221224",
                                                       "+F_BC\u2009sin\u2009\u03B1", "= 0"});
    const Formula result{variableToken("F", "AB"),
                         op("="),
                         numberToken("50/3"),
                         wordToken("kN"),
                         op("\u2248"),
                         numberToken("16.67"),
                         wordToken("kN"),
                         wordToken("(tension)")};
    CHECK(brokenLines(result) ==
          std::vector<std::string>{"F_AB", "= 50/3\u2009kN", "\u2248 16.67\u2009kN (tension)"});
}

TEST_CASE("a list breaks behind its commas, and nothing breaks within brackets") {
    const Formula list{variableToken("\u03B1"),
                       op("\u2248"),
                       numberToken("36.87\u00B0"),
                       op(","),
                       functionToken("sin"),
                       variableToken("\u03B1"),
                       op("="),
                       numberToken("0.6")};
    const BrokenFormula broken = brokenAtOperators(list);
    CHECK(broken.lead.empty());
    CHECK(broken.rest.size() == 2);
    const Formula brackets{variableToken("x"), op("="), op("("), numberToken("1"), op("+"),
                           numberToken("2"),   op(")"), op("+"), numberToken("3")};
    CHECK(brokenAtOperators(brackets).rest.size() == 2);
}

TEST_CASE(
    "no formula of a working loses anything where it breaks, or parts a number from its sign") {
    std::size_t pieces = 0;
    for (const Truss& truss : manyTrusses()) {
        for (const Passage& passage :
             workingPassages({englishPhrases(), truss}, workingOf(truss))) {
            for (const auto& part : passage.parts) {
                const auto* line = std::get_if<WorkingLine>(&part);
                if (!line || line->formula.empty()) {
                    continue;
                }
                const BrokenFormula broken = brokenAtOperators(line->formula);
                Formula whole = broken.lead;
                for (const Formula& piece : broken.rest) {
                    REQUIRE_FALSE(piece.empty());
                    const Token& last = piece.back();
                    const bool goesOn =
                        last.kind == TokenKind::Operator && last.text != ")" && last.text != ",";
                    INFO(plainText(line->runs));
                    REQUIRE_FALSE(goesOn);
                    append(whole, piece);
                    ++pieces;
                }
                REQUIRE(written(whole) == plainText(line->runs));
            }
        }
    }
    CHECK(pieces > 5000);
}

TEST_CASE("brackets grow with a fraction in them, and not with one beside them") {
    const Token fraction{TokenKind::Fraction, "2", {}, "5"};
    const std::string beside =
        mathMl({op("("), numberToken("-3"), op(")"), op("\u00B7"), fraction});
    CHECK(contains(beside, "<mo stretchy=\"false\">(</mo>"));
    const std::string around = mathMl({op("("), fraction, op(")"), op("\u00B7"), numberToken("3")});
    CHECK_FALSE(contains(around, "stretchy"));
}

TEST_CASE("the truss as given can be read: its joints, loads and dimensions") {
    for (const Truss& truss : manyTrusses()) {
        INFO(truss.title);
        const Working working = workingOf(truss);
        const Notation notation = notationOf({englishPhrases(), truss}, working);
        const auto sketch = givenFigure(notation, {});
        REQUIRE(sketch);
        REQUIRE(faultOfSketch(*sketch) == "");
        const auto words = wordsOfSketch(*sketch);
        std::size_t loads = 0;
        for (std::size_t i = 0; i < truss.joints.size(); ++i) {
            REQUIRE(words.count(truss.joints[i].label) >= 1);
            loads += std::fabs(working.loads[i].x) > 1e-9 ? 1u : 0u;
            loads += std::fabs(working.loads[i].y) > 1e-9 ? 1u : 0u;
        }
        REQUIRE(sketch->arrows.size() == loads);
    }
    CHECK_FALSE(givenFigure(notationOf({englishPhrases(), Truss{}}, Working{}), {}));
}

TEST_CASE("the last figure has the force of every member, and its reactions as they act") {
    for (const Truss& truss : manyTrusses()) {
        INFO(truss.title);
        const Working working = workingOf(truss);
        const Notation notation = notationOf({englishPhrases(), truss}, working);
        const auto forces = finalForces(notation);
        REQUIRE(forces.has_value() == working.complete);
        if (!forces) {
            continue;
        }
        const auto sketch = answerFigure(notation, *forces);
        REQUIRE(sketch);
        REQUIRE(faultOfSketch(*sketch) == "");
        const auto words = wordsOfSketch(*sketch);
        for (const double force : forces->members) {
            const std::string size = formatNumber(std::fabs(force), notation.numbers);
            REQUIRE(words.count(force == 0 ? "0" : size + (force > 0 ? " T" : " C")) >= 1);
        }
        for (const std::string& word : words) {
            REQUIRE_FALSE(contains(word, "\u2212"));
        }
    }
}

TEST_CASE("a moment centre off the truss is drawn where the cut members meet, with its arms") {
    // The chords meet 3 m to the left of A. The part on the right, F, G and H, is looked at; the
    // equation takes F_BF at B, on the line of BE: 3 + 2 m from O, and G_y at 3 + 6 m.
    const Sketch sketch = cutDrawing(taperingTruss(3));
    const auto words = wordsOfSketch(sketch);
    CHECK(words.count("O") == 1);
    CHECK(words.count("B") == 1);
    CHECK(words.count("5\u2009m") == 1);
    CHECK(words.count("2\u2009m") == 2);
    const std::vector<SketchLine> lines = dashedLines(sketch);
    REQUIRE(lines.size() == 3);
    const double apart = std::min({length(lines[0].b - lines[1].b), length(lines[1].b - lines[2].b),
                                   length(lines[2].b - lines[0].b)});
    CHECK_THAT(apart, WithinAbs(0, 1e-9)); // two of them meet at O
    CHECK(faultOfSketch(sketch) == "");
}

TEST_CASE("one too far away is drawn at the edge, and its arm keeps its true length") {
    const Sketch sketch = cutDrawing(taperingTruss(60));
    const auto words = wordsOfSketch(sketch);
    CHECK(words.count("O") == 1);
    CHECK(words.count("62\u2009m") == 1);
    CHECK(sketch.width < 700); // to scale with the part, O would be thousands of px away
    CHECK(faultOfSketch(sketch) == "");
}

TEST_CASE("a document says everything in the language of its book, its results where asked for") {
    Truss truss = gable();
    truss.title = "X";
    truss.classSettings.decimalSign = ',';
    const Working working = workingOf(truss);
    const Writer writer{mockPhrases(), truss};
    const Notation notation = notationOf(writer, working);
    WorkingDocument document{.given = givenFigure(notation, {}),
                             .sought = {},
                             .working = workingPassages(writer, working),
                             .results = {},
                             .answer = answerFigure(notation, *finalForces(notation)),
                             .resultsFirst = false};
    document.results.push_back(document.working.back());
    document.working.pop_back();
    const auto bodyOf = [](const std::string& html) { return html.substr(html.find("<body>")); };
    const std::string html = documentHtml(writer, document);
    CHECK(foreignWords(textOfHtml(bodyOf(html)), truss) == std::vector<std::string>{});
    CHECK_FALSE(hasDecimalPoint(textOfHtml(bodyOf(html))));
    document.resultsFirst = true;
    const std::string other = documentHtml(writer, document);
    CHECK(other.size() == html.size());
    CHECK(other != html);
}

TEST_CASE("a line does not end between a number and the sign before it") {
    for (const char* word : {"=", "\u2248", "+", "\u2212"}) {
        CHECK(staysWithNext(word));
    }
    CHECK_FALSE(staysWithNext("kN"));
    CHECK_FALSE(staysWithNext("\u221224"));
}
