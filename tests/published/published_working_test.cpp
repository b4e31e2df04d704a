// The working of every case from the literature that equilibrium can solve, in each class style.
#include "published/published_case.hpp"
#include "support/working_reader.hpp"

#include "exchange/json.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;
using namespace gusset::support;

TEST_CASE("the working of published cases balances and ends at the solver's forces") {
    int worked = 0;
    for (const PublishedCase& published : publishedCases()) {
        INFO(published.name);
        const Outcome<Reading> reading = readModel(published.model);
        REQUIRE(reading.ok());
        Truss truss = reading.value().truss;
        const Solution solution = solve(truss);
        if (!solution.solved || solution.counting.redundants > 0)
            continue;
        ++worked;
        for (const AngleStyle style :
             {AngleStyle::SinCos, AngleStyle::Cosines, AngleStyle::Slopes}) {
            truss.classSettings.angles = style;
            CHECK(objectionToWorkingOf(truss) == "");
        }
    }
    CHECK(worked >= 20);
}
