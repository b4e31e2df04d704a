// Geometry at the limit of resolution: the working answers in words and never crashes.
#include "hand/polygon/force_polygon.hpp"
#include "hand/stages/explain.hpp"
#include "hand/stages/sections.hpp"
#include "report/derivation/force_polygon_text.hpp"
#include "report/derivation/working_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"

#include "support/reading/written.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cmath>

using namespace gusset;
using namespace gusset::support;

namespace {

// Two bars of 2 m whose joint C lies `rise` above the horizontal line from A to B.
Truss flatBars(double rise) {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 4, 0);
    joint(truss, "C", 2, rise);
    member(truss, "A", "C");
    member(truss, "B", "C");
    pin(truss, "A");
    pin(truss, "B");
    force(truss, "C", 3, -10);
    return truss;
}

// A triangle of 100 m, and a joint D, 5·10¹⁰ m above it, held by two bars.
Truss withFarJoint() {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 100, 0);
    joint(truss, "C", 50, 80);
    joint(truss, "D", 50, 5e10);
    for (const auto& [a, b] :
         {std::pair{"A", "B"}, {"B", "C"}, {"A", "C"}, {"C", "D"}, {"B", "D"}}) {
        member(truss, a, b);
    }
    pin(truss, "A");
    roller(truss, "B");
    force(truss, "C", 3, -10);
    return truss;
}

} // namespace

TEST_CASE("the working of an empty board says what to do first") {
    const std::string text = textOf(Truss{});
    CHECK(contains(text, "Nothing is drawn yet."));
    CHECK_FALSE(contains(text, "0 members"));
    CHECK_FALSE(workingOf(Truss{}).complete);
}

TEST_CASE("a force polygon without members is refused in words") {
    Truss truss;
    const auto refusal = [&] {
        const ForcePolygon polygon = forcePolygon(truss, {}, solve(truss));
        CHECK(polygon.refusal == PolygonRefusal::NoMember);
        return forcePolygonText({englishPhrases(), truss}, polygon);
    };
    CHECK(contains(refusal(), "Nothing is drawn yet."));
    joint(truss, "A", 0, 0);
    pin(truss, "A");
    force(truss, "A", 0, -1);
    CHECK(contains(refusal(), "There is no member yet"));
}

// With a rise of 1.5·10⁻⁹ m over 2 m each bar is inclined by 7.5·10⁻¹⁰, less than a written slope
// resolves, while the two directions differ by twice that.
TEST_CASE("bars that lean a hair's breadth to either side of level have no pair of equations") {
    for (const double rise : {0.5e-9, 1e-9, 1.5e-9, 1.9e-9, 2.1e-9, 4e-9, 1e-8}) {
        const Truss truss = flatBars(rise);
        const Working working = workingOf(truss);
        CAPTURE(rise);
        const std::string text = workingText({englishPhrases(), truss}, working);
        CHECK(working.complete != contains(text, "could not be brought to an end"));
        for (const Step& step : working.steps) {
            for (const Found& found : step.found) {
                CHECK(std::isfinite(found.value));
            }
        }
    }
}

TEST_CASE("beside a joint that is very far, every equation of a member's explanation holds") {
    const Truss truss = withFarJoint();
    const Solution solution = solve(truss);
    REQUIRE(solution.solved);
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const Symbol asked{.kind = SymbolKind::MemberForce, .member = {static_cast<int>(i)}};
        const Working why = explain(truss, {}, solution, asked);
        REQUIRE_FALSE(why.steps.empty());
        for (const Step& step : why.steps) {
            for (const Found& found : step.found) {
                CHECK(std::isfinite(found.value));
            }
        }
        CHECK_FALSE(workingText({englishPhrases(), truss}, why).empty());
    }
}

// Without AB the joint B slides on its roller, and a rotation about A, whose pin is beside it,
// would lift it off: the truss does not rotate as a whole, though all joints near each other appear
// to be at rest.
TEST_CASE("a motion that a support forbids is not said of the whole truss") {
    Truss truss = withFarJoint();
    truss.members.erase(truss.members.begin());
    const Solution solution = solve(truss);
    REQUIRE(solution.status == Status::Mechanism);
    REQUIRE_FALSE(solution.mechanisms.empty());
    const std::string sentence =
        mechanismSentence({englishPhrases(), truss}, solution.mechanisms.front());
    CHECK_FALSE(contains(sentence, "as a whole"));
    CHECK_FALSE(contains(sentence, "about joint A"));
}

// A triangle 8000 km wide and 3 mm high: no member has an angle with a letter.
TEST_CASE("a sum across a line that is level but for a trace is written without angles") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 8000000, 0);
    joint(truss, "C", 4000000, 0.003);
    members(truss, {"AC", "CB", "AB"});
    pin(truss, "A");
    roller(truss, "B");
    force(truss, "C", 0, -24);
    const Solution solution = solve(truss);
    for (int i = 0; i < 3; ++i) {
        const Working working = workSection(truss, {}, solution, MemberId{i});
        CHECK_FALSE(workingText({englishPhrases(), truss}, working).empty());
    }
    CHECK(contains(textOf(truss), "All forces"));
}
