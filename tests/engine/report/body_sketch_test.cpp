// Free-body diagrams: that they show the forces that act, and that they are legible.

#include "report/derivation/body_forces.hpp"
#include "report/derivation/body_sketch.hpp"

#include "exchange/json/json_value.hpp"
#include "support/files.hpp"
#include "support/reading/sketch_checks.hpp"
#include "support/reading/written.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <cmath>
#include <cstdlib>
#include <functional>
#include <set>
#include <string>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinAbs;

namespace {

using Visit = std::function<void(const Truss&, const Working&, std::size_t step)>;

// Every step of a working, with every style of angles and senses.
void forEveryStep(Truss truss, const Visit& visit) {
    for (const AngleStyle angles : {AngleStyle::SinCos, AngleStyle::Cosines, AngleStyle::Slopes}) {
        for (const AssumedSense senses : {AssumedSense::Tension, AssumedSense::Guessed}) {
            truss.classSettings.angles = angles;
            truss.classSettings.senses = senses;
            const Working working = workingOf(truss);
            for (std::size_t step = 0; step < working.steps.size(); ++step) {
                visit(truss, working, step);
            }
        }
    }
}

void checkReadable(const Truss& truss, const Working& working, std::size_t step) {
    const std::vector<FreeBody> bodies =
        freeBodiesOf(notationOf({englishPhrases(), truss}, working), step);
    const std::vector<Sketch> sketches =
        bodySketches(notationOf({englishPhrases(), truss}, working), step);
    REQUIRE(sketches.size() == bodies.size());
    for (std::size_t i = 0; i < sketches.size(); ++i) {
        INFO(sketches[i].says);
        REQUIRE(faultOfSketch(sketches[i]) == "");
        REQUIRE(sketches[i].arrows.size() == bodies[i].forces.size());
        // Nothing lacks its label: each force, each joint, each angle or triangle.
        const bool slopes = truss.classSettings.angles == AngleStyle::Slopes;
        const bool measured = working.steps[step].kind == StepKind::JointIntro;
        std::size_t angles = sketches[i].arcs.size();
        for (const BodyForce& force : bodies[i].forces) {
            const bool inclined =
                std::fabs(force.along.x) > 1e-9 && std::fabs(force.along.y) > 1e-9;
            angles += slopes && inclined && measured ? 2 : 0;
        }
        REQUIRE(sketches[i].words.size() >=
                bodies[i].forces.size() + bodies[i].joints.size() + angles);
    }
}

// The final values of the working.
struct Ends {
    std::vector<double> forces;
    std::vector<double> reactions;
};

Ends endsOf(const Truss& truss, const Working& working) {
    Ends ends{std::vector<double>(truss.members.size()),
              std::vector<double>(working.structure.restraints.size())};
    for (const Step& step : working.steps) {
        for (const Found& found : step.found) {
            (found.symbol.kind == SymbolKind::MemberForce
                 ? ends.forces[found.symbol.member.at()]
                 : ends.reactions[found.symbol.restraint.at()]) = found.value;
        }
    }
    return ends;
}

// The component along an arrow, by the final values.
double alongArrow(const Working& working, const Ends& ends, const BodyForce& force) {
    if (!force.of) {
        return dot(working.loads[force.at.at()], force.along);
    }
    const auto* member = std::get_if<MemberId>(&*force.of);
    return member ? ends.forces[member->at()] * dot(force.along, force.out)
                  : ends.reactions[std::get<RestraintId>(*force.of).at()];
}

// The value written at an arrow, if there is one.
std::optional<double> writtenValue(const BodyForce& force) {
    const std::string text = plainText(force.label);
    const auto equals = text.find(" = ");
    if (equals == std::string::npos && force.of) {
        return std::nullopt;
    }
    std::string number = equals == std::string::npos ? text : text.substr(equals + 3);
    const std::string minus = "\u2212";
    if (number.starts_with(minus)) {
        number.replace(0, minus.size(), "-");
    }
    return std::atof(number.c_str());
}

void checkBalanced(const Truss& truss, const Working& working, std::size_t step) {
    const Ends ends = endsOf(truss, working);
    for (const FreeBody& body :
         freeBodiesOf(notationOf({englishPhrases(), truss}, working), step)) {
        Vec2 sum;
        double largest = 1;
        for (const BodyForce& force : body.forces) {
            const double value = alongArrow(working, ends, force);
            sum = sum + value * force.along;
            largest = std::max(largest, std::fabs(value));
            REQUIRE_THAT(length(force.along), WithinAbs(1, 1e-12));
            if (const auto written = writtenValue(force)) { // two decimals
                REQUIRE_THAT(*written, WithinAbs(value, 0.0051));
            }
        }
        INFO(sentenceOf(notationOf({englishPhrases(), truss}, working), body));
        REQUIRE_THAT(length(sum), WithinAbs(0, 1e-8 * largest));
    }
}

} // namespace

TEST_CASE("free bodies of every example can be read, in every way of writing angles and senses") {
    for (const Truss& truss : exampleTrusses()) {
        INFO(truss.title);
        forEveryStep(truss, checkReadable);
    }
}

TEST_CASE("free bodies of 200 random trusses can be read") {
    for (std::uint64_t seed = 0; seed < 200; ++seed) {
        INFO("seed " << seed);
        forEveryStep(randomDeterminateTruss(seed), checkReadable);
    }
}

TEST_CASE("the forces of every free body balance by the values that the working ends with") {
    for (const Truss& truss : exampleTrusses()) {
        forEveryStep(truss, checkBalanced);
    }
    for (std::uint64_t seed = 1000; seed < 1300; ++seed) {
        INFO("seed " << seed);
        forEveryStep(randomDeterminateTruss(seed), checkBalanced);
    }
}

TEST_CASE("the whole is dimensioned between the lines of its forces") {
    // The gable of small_truss.hpp: reactions at 0 and 8, the load at 4; 3 high.
    const Truss truss = gable();
    const Working working = workingOf(truss);
    for (std::size_t step = 0; step < working.steps.size(); ++step) {
        if (working.steps[step].kind != StepKind::WholeBody) {
            continue;
        }
        std::multiset<std::string> shown;
        const std::vector<Sketch> sketches =
            bodySketches(notationOf({englishPhrases(), truss}, working), step);
        for (const SketchWords& words : sketches.front().words) {
            shown.insert(plainText(words.words));
        }
        CHECK(shown.count("4\u2009m") == 2);
        CHECK(shown.count("3\u2009m") == 1);
    }
}

TEST_CASE("an unknown that is guessed to push is drawn pushing, its value then without a sign") {
    // Two bars at 45° under a load of 10 down: both in compression with 10/√2 = 7.07.
    Truss truss;
    truss.units.force = ForceUnit::kN;
    truss.joints = {{"A", {0, 0}, {}}, {"B", {2, 2}, {}}, {"C", {4, 0}, {}}};
    for (const auto& [a, b] : {std::pair{0, 1}, {1, 2}}) {
        Member member;
        member.a = JointId{a};
        member.b = JointId{b};
        truss.members.push_back(member);
    }
    for (const int joint : {0, 2}) {
        Support support;
        support.joint = JointId{joint};
        truss.supports.push_back(support);
    }
    Load load;
    load.what = JointForce{JointId{1}, 0, -10};
    truss.loads.push_back(load);
    truss.classSettings.senses = AssumedSense::Guessed;
    const Working working = workingOf(truss);
    bool known = false;
    int seen = 0;
    for (std::size_t step = 0; step < working.steps.size(); ++step) {
        for (const FreeBody& body :
             freeBodiesOf(notationOf({englishPhrases(), truss}, working), step)) {
            for (const BodyForce& force : body.forces) {
                if (force.of == MemberOrRestraint{MemberId{0}}) {
                    CHECK(plainText(force.label) == (known ? "F_AB \u2248 7.07\u2009kN" : "F_AB"));
                    CHECK(dot(force.along, force.out) < 0);
                    known = true;
                    ++seen;
                }
            }
        }
    }
    CHECK(seen == 2); // at one end while unknown, at the other with its value
}
