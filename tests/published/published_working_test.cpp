// The workings of the cases from the literature: read step by step in several class styles, and
// compared with what their sources print.
#include "published/published_case.hpp"
#include "support/reading/working_reader.hpp"
#include "support/reading/written.hpp"

#include "exchange/files/model_file.hpp"
#include "hand/virtual_work/force_method.hpp"
#include "hand/virtual_work/influence_by_hand.hpp"
#include "hand/virtual_work/unit_load.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;

namespace {

double unitLoadTotal(const Truss& truss, const Solution& solution, const PublishedLine& line) {
    const DisplacementAxis axis = line.of[1] == "x" ? DisplacementAxis::X : DisplacementAxis::Y;
    const UnitLoadTable table =
        unitLoadTable(truss, {}, solution, findJoint(truss, line.of[0]), axis);
    REQUIRE(table.complete);
    return table.total;
}

MemberId theMember(const Truss& truss, const std::string& name) {
    const MemberId member = memberNamed(truss, name);
    REQUIRE(member.valid());
    return member;
}

// The effect of a line "influence member:B-C D" or "influence reaction:A:y D".
Effect effectOf(const Truss& truss, const PublishedLine& line) {
    const std::string rest = line.of[0].substr(line.of[0].find(':') + 1);
    Effect effect;
    if (line.of[0].rfind("member", 0) == 0) {
        effect.member = theMember(truss, rest);
    } else {
        effect.kind = EffectKind::Reaction;
        effect.joint = findJoint(truss, rest.substr(0, rest.find(':')));
    }
    return effect;
}

// The method's result for a line "force A-B" or "reaction A x".
double forceMethodValue(const Truss& truss, const ForceMethod& method, const PublishedLine& line) {
    if (line.what == "force") {
        return method.rows[theMember(truss, line.of[0]).at()].force;
    }
    const Structure structure = structureOf(truss);
    double sum = 0;
    for (const ForceMethodReaction& row : method.reactions) {
        const Restraint& restraint = structure.restraints[row.restraint.at()];
        if (restraint.joint == findJoint(truss, line.of[0])) {
            sum += row.force * (line.of[1] == "x" ? restraint.along.x : restraint.along.y);
        }
    }
    return sum;
}

} // namespace

TEST_CASE("the unit load tables of published cases come to the displacements that are printed") {
    int compared = 0;
    int redundant = 0; // of trusses whose forces come from the force method
    for (const PublishedCase& published : publishedCases()) {
        const Outcome<Reading> reading = readModel(published.model);
        REQUIRE(reading.ok());
        const Truss& truss = reading.value().truss;
        const Solution solution = solve(truss);
        for (const PublishedLine& line : published.lines) {
            if (line.what != "displacement" || !solution.solved) {
                continue;
            }
            INFO(published.name << ", joint " << line.of[0]);
            CHECK_THAT(unitLoadTotal(truss, solution, line),
                       Catch::Matchers::WithinAbs(line.value, line.within));
            ++compared;
            redundant += solution.counting.redundants > 0 ? 1 : 0;
        }
    }
    CHECK(compared >= 15);
    CHECK(redundant >= 8);
}

TEST_CASE("the working of published cases balances and ends at the solver's forces") {
    int worked = 0;
    for (const PublishedCase& published : publishedCases()) {
        INFO(published.name);
        const Outcome<Reading> reading = readModel(published.model);
        REQUIRE(reading.ok());
        Truss truss = reading.value().truss;
        const Solution solution = solve(truss);
        if (!solution.solved || solution.counting.redundants > 0) {
            continue;
        }
        ++worked;
        for (const AngleStyle style :
             {AngleStyle::SinCos, AngleStyle::Cosines, AngleStyle::Slopes}) {
            truss.classSettings.angles = style;
            CHECK(objectionToWorkingOf(truss) == "");
        }
    }
    CHECK(worked >= 20);
}

TEST_CASE(
    "the force method on published cases comes to the forces and reactions that are printed") {
    int worked = 0;
    int compared = 0;
    for (const PublishedCase& published : publishedCases()) {
        INFO(published.name);
        const Outcome<Reading> reading = readModel(published.model);
        REQUIRE(reading.ok());
        const Truss& truss = reading.value().truss;
        const Solution solution = solve(truss);
        if (!solution.solved || solution.counting.redundants == 0) {
            continue;
        }
        const ForceMethod method = forceMethod(truss, {}, solution);
        REQUIRE(method.end == ForceMethodEnd::Complete);
        CHECK(method.missed <= 1e-9);
        ++worked;
        for (const PublishedLine& line : published.lines) {
            if (line.what != "force" && line.what != "reaction") {
                continue;
            }
            CHECK_THAT(forceMethodValue(truss, method, line),
                       Catch::Matchers::WithinAbs(line.value, line.within));
            ++compared;
        }
    }
    CHECK(worked == 10);
    CHECK(compared >= 20);
}

TEST_CASE("the influence lines by hand of published cases have the ordinates that are printed") {
    int compared = 0;
    for (const PublishedCase& published : publishedCases()) {
        INFO(published.name);
        const Outcome<Reading> reading = readModel(published.model);
        REQUIRE(reading.ok());
        const Truss& truss = reading.value().truss;
        std::vector<JointId> path;
        for (const PublishedLine& line : published.lines) {
            if (line.what == "path") {
                for (const std::string& label : line.of) {
                    path.push_back(findJoint(truss, label));
                }
            }
        }
        for (const PublishedLine& line : published.lines) {
            if (line.what != "influence") {
                continue;
            }
            const InfluenceByHand influence = influenceByHand(truss, path, effectOf(truss, line));
            REQUIRE(influence.end == InfluenceEnd::Complete);
            const JointId joint = findJoint(truss, line.of[1]);
            const auto ordinate =
                std::find_if(influence.ordinates.begin(), influence.ordinates.end(),
                             [&](const InfluenceOrdinate& one) { return one.at == joint; });
            REQUIRE(ordinate != influence.ordinates.end());
            CHECK_THAT(ordinate->value, Catch::Matchers::WithinAbs(line.value, line.within));
            ++compared;
        }
    }
    CHECK(compared >= 12);
}
