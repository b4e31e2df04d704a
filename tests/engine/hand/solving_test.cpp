// Equations solved together on paper, sums across a line, and walks with letters.
#include "exchange/files/model_file.hpp"
#include "hand/stages/sections.hpp"
#include "phrases/working/letters.hpp"
#include "phrases/working/remarks.hpp"
#include "phrases/working/together.hpp"
#include "report/derivation/body_sketch.hpp"
#include "report/derivation/working_text.hpp"

#include "published/published_case.hpp"
#include "support/reading/printed_working.hpp"
#include "support/reading/solving_truth.hpp"
#include "support/reading/working_reader.hpp"
#include "support/reading/written.hpp"
#include "support/trusses/family_truss.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinAbs;

namespace {

//      E         Hexagon braced corner to corner: at every joint meet three members. Pin at A,
//    F   D       roller at C, 4 kN to the right and 12 kN down at E, 8 kN down at D.
//    A   C
//      B
Truss hexagon() {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 3, -1);
    joint(truss, "C", 6, 0);
    joint(truss, "D", 6, 4);
    joint(truss, "E", 3, 6);
    joint(truss, "F", 0, 4);
    members(truss, {"AB", "BC", "CD", "DE", "EF", "FA", "AD", "BE", "CF"});
    pin(truss, "A");
    roller(truss, "C");
    force(truss, "E", 4, -12);
    force(truss, "D", 0, -8);
    return truss;
}

//      C         Straight rafters, struts DF and EF, 6 kN down at D and at E: at D the strut
//    D   E       alone acts across the rafter. The roof slopes 3 in 4.
//  A---F---B
Truss strutted() {
    Truss truss = struttedRoof();
    force(truss, "D", 0, -6);
    force(truss, "E", 0, -6);
    return truss;
}

std::string textIn(Truss truss, AngleStyle angles, NumberForm form) {
    truss.classSettings.angles = angles;
    truss.classSettings.form = form;
    return textOf(truss);
}

const Step& stepOf(const Working& working, StepKind kind) {
    const auto step = std::find_if(working.steps.begin(), working.steps.end(),
                                   [&](const Step& one) { return one.kind == kind; });
    REQUIRE(step != working.steps.end());
    return *step;
}

double answerIn(const Step& step, const Truss& truss, const char* a, const char* b) {
    for (const Found& found : step.found) {
        if (found.symbol.kind == SymbolKind::MemberForce &&
            found.symbol.member.at() == memberAt(truss, a, b)) {
            return found.value;
        }
    }
    FAIL("the step does not give the force");
    return 0;
}

Truss published(const char* name) {
    for (const PublishedCase& one : publishedCases()) {
        if (one.name == name) {
            return readModel(one.model).value().truss;
        }
    }
    FAIL("no such case");
    return {};
}

ClassSettings styleOf(std::uint64_t seed) {
    ClassSettings settings;
    settings.angles = static_cast<AngleStyle>(seed % 3);
    settings.form = static_cast<NumberForm>(seed / 3 % 3);
    settings.symbols = static_cast<SymbolStyle>(seed / 2 % 3);
    settings.senses = static_cast<AssumedSense>(seed / 4 % 2);
    const bool decimals = settings.form != NumberForm::Significant;
    settings.carry = static_cast<CarriedValues>(decimals && seed % 5 == 4);
    settings.digits = settings.form == NumberForm::Significant ? 4 : 2;
    return settings;
}

} // namespace

// At B, with sin = 1/√10 and cos = 3/√10 on both sides: F_BC = X from left and right, and
// F_BE = −2·X/√10. At D and E the walk goes on until A has an equation to spare.
TEST_CASE("a truss without an easy joint is walked round with one force called X") {
    const Truss truss = hexagon();
    const Working working = workingOf(truss);
    const Step& step = stepOf(working, StepKind::Simultaneous);
    REQUIRE(says(step.remarks.at(2), phrase::kCallOne));
    const std::string text = textOf(truss);
    CHECK(contains(text, "One force called X\n"));
    CHECK(contains(text, "    X = F_AB\n"));
    CHECK(contains(text, "    F_BC = X\n"));
    CHECK(contains(text, "    F_BE \u2248 \u22120.6325\u2009X\n"));
    // Moments about C over the left half of no section give it: only the spare equation at A does.
    CHECK(contains(text, "Joint A has this equation to spare"));
    CHECK(objectionToWorkingOf(truss) == "");
}

TEST_CASE("every walk with letters is true of its truss and holds in every class style") {
    SolvingCounts counts;
    int walked = 0;
    int inNumbers = 0;
    for (std::uint64_t seed = 0; seed < 600; ++seed) {
        INFO("seed " << seed);
        Truss truss = randomDeterminateTruss(Form::Complex, seed);
        truss.classSettings = styleOf(seed);
        const Solution solution = solve(truss);
        const Working working = workOut(truss, {}, solution);
        REQUIRE(objectionTo(truss, working, solution) == "");
        REQUIRE(falseSolving(truss, working, counts) == "");
        const std::string text = workingText({englishPhrases(), truss}, working);
        REQUIRE(readPrintedText(text, truss, solution).objection == "");
        for (const Step& step : working.steps) {
            walked += step.kind == StepKind::Simultaneous && !step.solving.empty() ? 1 : 0;
            inNumbers += step.kind == StepKind::Simultaneous && step.solving.empty() ? 1 : 0;
        }
    }
    CHECK(walked > 60);
    CHECK(inNumbers == 0); // one or two letters are enough for all of these
    CHECK(counts.walks == walked);
    CHECK(counts.walkedJoints > 3 * walked);
    CHECK(counts.eliminated > 500);
}

// F. P. Beer, E. R. Johnston et al., Vector Mechanics for Engineers: Statics, ch. 6, Problems 6.61
// and 6.62 (from memory): at B, 3 m below and 2 m beside which D and F lie, only 5 kN from the left
// and the two inclined members act. The vertical sum makes them equal and opposite, and the
// horizontal one gives 2·F·2/√13 = 5.
TEST_CASE("two unknowns of a published joint are found line by line: the tower's joint B") {
    const Truss truss = published("KC-01");
    const Working working = workingOf(truss);
    const Step& step = stepOf(working, StepKind::JointPair);
    REQUIRE(step.joint == findJoint(truss, "B"));
    const double force = 5 * std::sqrt(13.0) / 4;
    CHECK_THAT(answerIn(step, truss, "B", "D"), WithinAbs(force, 1e-12));
    CHECK_THAT(answerIn(step, truss, "B", "F"), WithinAbs(-force, 1e-12));
    const std::string text = textOf(truss);
    CHECK(contains(text, "By (2) the two are equal and opposite: put that into (1)."));
    CHECK(contains(text, "    (2):  F_BD = \u2212F_BF\n"));
    CHECK(contains(text, "    (1):  1.1094\u2009F_BF \u2248 \u22125.00\n"));
}

// D. W. Baker, W. Haynes, Engineering Statics: Open and Interactive, ch. 6 exercises, 'Method of
// joints: cantilever truss' (values as in tests/published/cases/MJ-08.txt): the answers printed
// there at the joint with two inclined unknowns are BC −259.81 N and CD 1183.57 N.
TEST_CASE("two unknowns of a published joint are found line by line: the cantilever's joint C") {
    const Truss truss = published("MJ-08");
    const Working working = workingOf(truss);
    const Step& step = stepOf(working, StepKind::JointPair);
    CHECK_THAT(answerIn(step, truss, "B", "C"), WithinAbs(-259.807621135, 1e-6));
    CHECK_THAT(answerIn(step, truss, "C", "D"), WithinAbs(1183.56805184, 1e-6));
    const auto eliminates = [](const SolvingLine& line) {
        const auto* remark = std::get_if<Remark>(&line);
        return remark && says(*remark, phrase::kPairMultiplyAdd);
    };
    CHECK(std::count_if(step.solving.begin(), step.solving.end(), eliminates) == 1);
}

//        C       Two frames on pins, hinged at C. With A_x and A_y unknown: about B of the whole,
//    D     E     A_x·1 − A_y·10 + 12·8 − 4·2 + 8·2 = 0; about C of the left part, A_x·4 − A_y·5 +
//              B 12·3 + 4·1 = 0. So A_x = 10·A_y − 104, 35·A_y = 376, A_x = 3760/35 − 104 = 24/7.
//  A
TEST_CASE("two reactions are found by substitution, exactly where the class writes exact numbers") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 10, 1);
    joint(truss, "C", 5, 4);
    joint(truss, "D", 2, 3);
    joint(truss, "E", 8, 3.5);
    members(truss, {"AC", "AD", "DC", "BC", "BE", "EC"});
    pin(truss, "A");
    pin(truss, "B");
    force(truss, "D", 4, -12);
    force(truss, "E", 0, -8);
    truss.classSettings.form = NumberForm::Exact;
    const std::string text = textOf(truss);
    CHECK(contains(text, "A_x has the factor 1 in (1): express it by the other unknown"));
    CHECK(contains(text, "    (1):  A_x = \u2212104 + 10\u2009A_y\n"));
    CHECK(contains(text, "    (2):  4(\u2212104 + 10\u2009A_y) \u2212 5\u2009A_y = \u221240\n"));
    CHECK(contains(text, "    (2):  35\u2009A_y = 376\n"));
    CHECK(contains(text, "    A_y = 376/35\u2009kN"));
    CHECK(contains(text, "    A_x = 24/7\u2009kN"));
    CHECK(readPrintedText(text, truss, solve(truss)).objection == "");
}

// The strut meets the rafter at 2·36.87° = 73.74°; sin and cos of the slope are 3/5 and 4/5, so
// that across the rafter act 6·4/5 and F·(4/5·3/5 + 3/5·4/5) = F·24/25: F = −5.
TEST_CASE("a sum across a line is written in the class's style, and says where its factors are "
          "from") {
    const std::string angles = textIn(strutted(), AngleStyle::SinCos, NumberForm::Decimals);
    CHECK(contains(angles, "F_DF makes the angle α + α ≈ 73.74° with F_DC"));
    CHECK(contains(angles, "\u22126\u2009cos\u2009α \u2212 F_DF\u2009sin\u200973.74° = 0"));
    const std::string slopes = textIn(strutted(), AngleStyle::Slopes, NumberForm::Decimals);
    CHECK(contains(slopes, "F_DF\u2009·\u2009(4/5\u2009·\u20093/5 + 3/5\u2009·\u20094/5) = 0"));
    CHECK(contains(slopes, "its horizontal part times 3/5 and its vertical part times 4/5"));
    const std::string cosines = textIn(strutted(), AngleStyle::Cosines, NumberForm::Decimals);
    CHECK(contains(cosines, "cos\u2009α_x\u2009cos\u2009α_y + cos\u2009α_y\u2009cos\u2009α_x"));
    const std::string exact = textIn(strutted(), AngleStyle::SinCos, NumberForm::Exact);
    CHECK(contains(exact, "cos\u2009α\u2009sin\u2009α + sin\u2009α\u2009cos\u2009α"));
    CHECK_FALSE(contains(exact, "73.74°"));
    for (const std::string* text : {&angles, &slopes, &cosines, &exact}) {
        CHECK(contains(*text, "F_DF = \u22125"));
    }
}

TEST_CASE("the direction n is drawn on the free body of its sum") {
    const Truss truss = strutted();
    const Working working = workingOf(truss);
    const Notation notation = notationOf({englishPhrases(), truss}, working);
    int drawn = 0;
    for (std::size_t i = 0; i < working.steps.size(); ++i) {
        const Step& step = working.steps[i];
        const bool atD = step.kind == StepKind::JointIntro && step.joint == findJoint(truss, "D");
        for (const Sketch& sketch : bodySketches(notation, i)) {
            const auto isAxis = [](const SketchLine& line) {
                // At right angles to the rafter, which rises 3 in 4 (y is down on paper).
                const Vec2 along = line.b - line.a;
                return line.dashed && std::fabs(dot(along, {4, -3})) < 1e-9 * length(along);
            };
            const auto axes = std::count_if(sketch.lines.begin(), sketch.lines.end(), isAxis);
            const bool named = contains(sketch.says, "The direction n points");
            CHECK(named == (axes == 1));
            CHECK((!atD || axes == 1));
            drawn += static_cast<int>(axes);
        }
    }
    CHECK(drawn >= 1);
}

TEST_CASE("what sections on demand say of moved forces and sums across a line is true") {
    SolvingCounts counts;
    for (std::uint64_t seed = 0; seed < 600; ++seed) {
        const Truss truss = randomDeterminateTruss(seed);
        const Solution solution = solve(truss);
        for (int i = 0; i < static_cast<int>(truss.members.size()); i += 2) {
            INFO("seed " << seed << ", member " << i);
            REQUIRE(falseSolving(truss, workSection(truss, {}, solution, MemberId{i}), counts) ==
                    "");
        }
    }
    CHECK(counts.moved > 50);
    CHECK(counts.across > 10);
}

TEST_CASE("the equations of a large complex truss are still solved") {
    for (const int joints : {36, 50}) {
        const Truss truss = familyTruss(Family::Complex, joints);
        CHECK(objectionToWorkingOf(truss) == "");
    }
}
