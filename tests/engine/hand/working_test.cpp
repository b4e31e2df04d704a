#include "hand/paper/working.hpp"

#include "phrases/working/remarks.hpp"
#include "support/reading/working_reader.hpp"
#include "support/reading/written.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;

namespace {

constexpr int kTrusses = 10000;

ClassSettings settingsOf(int seed) {
    ClassSettings settings;
    settings.moments = seed % 2 == 0 ? MomentSense::Clockwise : MomentSense::Anticlockwise;
    settings.angles = static_cast<AngleStyle>(seed / 2 % 3);
    return settings;
}

const Step& firstStep(const Working& working, StepKind kind) {
    for (const Step& step : working.steps) {
        if (step.kind == kind) {
            return step;
        }
    }
    FAIL("no such step");
    return working.steps.front();
}

} // namespace

TEST_CASE("the working of every determinate truss balances and ends at the solver's forces") {
    for (int seed = 0; seed < kTrusses; ++seed) {
        Truss truss = randomDeterminateTruss(static_cast<std::uint64_t>(seed));
        truss.classSettings = settingsOf(seed);
        INFO("seed " << seed);
        REQUIRE(objectionToWorkingOf(truss) == "");
    }
}

TEST_CASE("only complex trusses need the equations of several joints together") {
    for (const Form form : {Form::Simple, Form::Cantilever, Form::Compound, Form::ThreeHinged,
                            Form::ManyPins, Form::KBraced}) {
        for (std::uint64_t seed = 0; seed < 300; ++seed) {
            const Working working = workingOf(randomDeterminateTruss(form, seed));
            INFO("form " << static_cast<int>(form) << ", seed " << seed);
            REQUIRE(countSteps(working, StepKind::Simultaneous) == 0);
        }
    }
}

TEST_CASE("a simple truss is worked by joints alone") {
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        const Working working = workingOf(randomDeterminateTruss(Form::Simple, seed));
        INFO("seed " << seed);
        REQUIRE(countSteps(working, StepKind::SectionIntro) == 0);
    }
}

TEST_CASE(
    "with guessed senses a known force is drawn as it acts, and every equation still balances") {
    for (int seed = 0; seed < kTrusses / 20; ++seed) {
        Truss truss = randomDeterminateTruss(static_cast<std::uint64_t>(seed));
        truss.classSettings.senses = AssumedSense::Guessed;
        INFO("seed " << seed);
        REQUIRE(objectionToWorkingOf(truss) == "");
    }
}

TEST_CASE("a guess from an equation with one unknown is always right") {
    Truss truss = gable();
    truss.classSettings.senses = AssumedSense::Guessed;
    const Working working = workingOf(truss);
    // Joint A, vertical: 12 − F_AC sin α = 0, drawn in compression: 20 kN.
    const Step& step = firstStep(working, StepKind::JointEquation);
    CHECK(step.equations[0].terms.back().sign == -1);
    CHECK(step.equations[0].terms.back().factors.front().value == 20);
    CHECK(step.found[0].value == -20);
    CHECK(step.found[0].drawn == -1);
}

TEST_CASE(
    "rounded values are carried on as they are written, and the check reports what that costs") {
    int missed = 0;
    for (int seed = 0; seed < kTrusses / 20; ++seed) {
        Truss truss = randomDeterminateTruss(static_cast<std::uint64_t>(seed));
        truss.classSettings.carry = CarriedValues::Rounded;
        truss.classSettings.digits = 2;
        INFO("seed " << seed);
        REQUIRE(objectionToWorkingOf(truss) == "");
        const Working working = workingOf(truss);
        for (const Found& found : working.steps.back().found) {
            REQUIRE(std::abs(found.value * 100 - std::round(found.value * 100)) < 1e-6);
        }
        for (const Step& step : working.steps) {
            double worst = 0;
            for (const Equation& equation : step.equations) {
                worst = std::max(worst, std::abs(valueOf(equation)));
            }
            if (step.kind == StepKind::ClosingSums &&
                says(step.remarks.front(), phrase::kSumsMiss)) {
                REQUIRE(partOf<double>(step.remarks.front(), "number") == worst);
                ++missed;
            }
        }
    }
    CHECK(missed > 0);
}

TEST_CASE("moments are taken about the pin, where two unknowns drop out") {
    Truss truss = gable();
    force(truss, "A", 0, -5); // not the same on both sides, but without a moment about A
    const Working working = workingOf(truss);
    const Step& step = firstStep(working, StepKind::ReactionMoment);
    CHECK(step.joint == findJoint(truss, "A"));
    REQUIRE(step.equations.size() == 1);
    // B_y · 8 − 24 · 4 = 0
    REQUIRE(step.equations[0].terms.size() == 2);
    CHECK(valueOf(step.equations[0].terms[0]) == 96);
    CHECK(valueOf(step.equations[0].terms[1]) == -96);
}

TEST_CASE("the sense in which moments count positive turns every sign of a moment equation") {
    Truss truss = gable();
    force(truss, "A", 0, -5); // so that reactions are not halves by symmetry
    const Working plain = workingOf(truss);
    truss.classSettings.moments = MomentSense::Clockwise;
    const Working turned = workingOf(truss);
    const auto& a = firstStep(plain, StepKind::ReactionMoment).equations[0].terms;
    const auto& b = firstStep(turned, StepKind::ReactionMoment).equations[0].terms;
    REQUIRE(a.size() == b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        CHECK(a[i].sign == -b[i].sign);
        CHECK(valueOf(a[i]) == -valueOf(b[i]));
    }
}

TEST_CASE("the angle style changes what an inclined force is multiplied with, not its value") {
    Truss truss = gable();
    const auto inclinedFactor = [&](AngleStyle style) {
        truss.classSettings.angles = style;
        const Working working = workingOf(truss);
        // Joint A, vertical: 12 + F_AC sin α = 0
        const Step& step = firstStep(working, StepKind::JointEquation);
        return step.equations[0].terms.back().factors.back();
    };
    CHECK(inclinedFactor(AngleStyle::SinCos).kind == FactorKind::Sine);
    CHECK(inclinedFactor(AngleStyle::Cosines).kind == FactorKind::AxisCosine);
    CHECK(inclinedFactor(AngleStyle::Slopes).kind == FactorKind::Ratio);
    for (const AngleStyle style : {AngleStyle::SinCos, AngleStyle::Cosines, AngleStyle::Slopes}) {
        CHECK(inclinedFactor(style).value == 0.6);
    }
}

TEST_CASE("a truss that nothing acts on is zero throughout, by one sentence") {
    Truss truss = gable();
    truss.loads.clear();
    const Working working = workingOf(truss);
    CHECK(working.complete);
    CHECK(countSteps(working, StepKind::JointIntro) == 0);
    for (const Found& found : working.steps.back().found) {
        CHECK(found.value == 0);
    }
}

TEST_CASE("a mechanism and an indeterminate truss are counted, and the working ends there") {
    Truss truss = gable();
    truss.members.pop_back();
    Working working = workingOf(truss);
    REQUIRE(working.steps.size() == 1);
    CHECK(says(working.steps[0].remarks.front(), phrase::kCountMechanism));
    CHECK_FALSE(working.complete);

    truss = gable();
    truss.supports.back().kind = SupportKind::Pin;
    working = workingOf(truss);
    REQUIRE(working.steps.size() == 1);
    CHECK(says(working.steps[0].remarks.front(), phrase::kCountIndeterminate));
}

TEST_CASE("three rollers at odd angles: moments about the point where two lines meet") {
    // The lines of A (vertical) and B (30° to the horizontal) meet at (0, 8 tan 30°), where there
    // is no joint.
    Truss truss = gable();
    truss.supports.clear();
    roller(truss, "A", 90);
    roller(truss, "B", 150);
    roller(truss, "C", 20);
    CHECK(objectionToWorkingOf(truss) == "");
    const Working working = workingOf(truss);
    const Step& step = firstStep(working, StepKind::ReactionMoment);
    CHECK_FALSE(step.joint.valid());
    CHECK(says(step.remarks.front(), phrase::kCentreOffTruss));
    CHECK(step.found.size() == 1);
}

TEST_CASE("across a straight rafter only the strut is left, without simultaneous equations") {
    //      C         Rafters A–D–C and C–E–B are straight, struts D–F and E–F; different loads at D
    //    D   E       and E, so nothing is symmetric. E is next after B; perpendicular to the rafter
    //  A---F---B     there, with tan α = 3/4: F_EF = −4·cos α/sin 2α = −4·0.8/0.96 = −10/3.
    Truss truss = struttedRoof();
    force(truss, "D", 0, -10);
    force(truss, "E", 0, -4);
    CHECK(objectionToWorkingOf(truss) == "");
    const Working working = workingOf(truss);
    CHECK(countSteps(working, StepKind::JointPair) == 0);
    int across = 0;
    for (const Step& step : working.steps) {
        const bool turned = step.kind == StepKind::JointEquation &&
                            step.equations[0].kind == EquationKind::SumAlong;
        if (turned && step.joint == findJoint(truss, "E")) {
            ++across;
            CHECK(step.found[0].symbol.member ==
                  findMember(truss, findJoint(truss, "E"), findJoint(truss, "F")));
            CHECK(std::abs(step.found[0].value + 10.0 / 3) < 1e-12);
        }
    }
    CHECK(across == 1);
}
