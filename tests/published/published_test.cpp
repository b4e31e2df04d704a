// Every case from the literature, solved from its model file and compared with what its source
// prints.
#include "published/published_case.hpp"

#include "exchange/files/model_file.hpp"
#include "statics/moving/moving.hpp"
#include "statics/solve/solution.hpp"
#include "support/reading/written.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <set>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinAbs;

namespace {

double component(Vec2 vector, const std::string& axis) { return axis == "x" ? vector.x : vector.y; }

struct Checked {
    const Truss& truss;
    const Solution& solution;
    double newton = toNewton(truss.units.force);
};

void checkForce(const Checked& it, const PublishedLine& line) {
    const MemberId member = memberNamed(it.truss, line.of[0]);
    REQUIRE(member.valid());
    CHECK_THAT(it.solution.forces[member.at()] / it.newton, WithinAbs(line.value, line.within));
    if (std::abs(line.value) <= line.within) {
        return;
    }
    CHECK(senseOf(it.solution, member) == (line.value > 0 ? Sense::Tension : Sense::Compression));
}

void checkReaction(const Checked& it, const PublishedLine& line) {
    const Vec2 reaction = it.solution.jointReactions[findJoint(it.truss, line.of[0]).at()];
    CHECK_THAT(component(reaction, line.of[1]) / it.newton, WithinAbs(line.value, line.within));
}

void checkDisplacement(const Checked& it, const PublishedLine& line) {
    REQUIRE(it.solution.displaced);
    const Vec2 moved = it.solution.displacements[findJoint(it.truss, line.of[0]).at()];
    CHECK_THAT(component(moved, line.of[1]) / toMetre(it.truss.units.displacement),
               WithinAbs(line.value, line.within));
}

// The weight is the sum of the reactions under self-weight alone.
void checkWeight(const Checked& it, const PublishedLine& line) {
    Truss truss = it.truss;
    Load weight;
    weight.what = SelfWeight{};
    truss.loads = {weight};
    double sum = 0;
    for (Vec2 reaction : solve(truss).jointReactions) {
        sum += reaction.y;
    }
    CHECK_THAT(sum / it.newton, WithinAbs(line.value, line.within));
}

void checkLargestStress(const Checked& it, const PublishedLine& line) {
    double largest = 0;
    for (double stress : it.solution.stresses) {
        largest = std::max(largest, std::abs(stress));
    }
    CHECK_THAT(largest / toPascal(it.truss.units.stress), WithinAbs(line.value, line.within));
}

void checkLargestDisplacement(const Checked& it, const PublishedLine& line) {
    double largest = 0;
    for (Vec2 moved : it.solution.displacements) {
        largest = std::max({largest, std::abs(moved.x), std::abs(moved.y)});
    }
    CHECK_THAT(largest / toMetre(it.truss.units.displacement), WithinAbs(line.value, line.within));
}

std::vector<JointId> pathOf(const Truss& truss, const std::vector<PublishedLine>& lines) {
    std::vector<JointId> path;
    for (const PublishedLine& line : lines) {
        if (line.what != "path") {
            continue;
        }
        for (const std::string& label : line.of) {
            path.push_back(findJoint(truss, label));
        }
    }
    return path;
}

// "member:B-C" or "reaction:A:y"
InfluenceLine lineOf(const Checked& it, const std::vector<JointId>& path, const std::string& of) {
    Effect effect;
    const std::string rest = of.substr(of.find(':') + 1);
    if (of.rfind("member", 0) == 0) {
        effect.member = memberNamed(it.truss, rest);
    } else {
        effect.kind = EffectKind::Reaction;
        effect.joint = findJoint(it.truss, rest.substr(0, rest.find(':')));
    }
    return influenceLine(analysePath(it.truss, path).value(), effect);
}

void checkMoving(const Checked& it, const std::vector<PublishedLine>& lines) {
    const std::vector<JointId> path = pathOf(it.truss, lines);
    for (const PublishedLine& line : lines) {
        if (line.what == "influence") {
            const auto joint = std::find(path.begin(), path.end(), findJoint(it.truss, line.of[1]));
            REQUIRE(joint != path.end());
            const InfluenceLine found = lineOf(it, path, line.of[0]);
            CHECK_THAT(found.ordinates[static_cast<std::size_t>(joint - path.begin())],
                       WithinAbs(line.value, line.within));
        }
        if (line.what == "moving-max") {
            const std::vector<Wheel> wheels = wheelsOf(it.truss, it.truss.moving.front());
            const TrainExtremes extremes = extremesOf(lineOf(it, path, line.of[0]), wheels);
            CHECK_THAT(extremes.largest.value / it.newton, WithinAbs(line.value, line.within));
        }
    }
}

void checkStatus(const Checked& it, const PublishedLine& line) {
    const std::string& word = line.of[0];
    const Status status = word == "mechanism"       ? Status::Mechanism
                          : word == "indeterminate" ? Status::Indeterminate
                                                    : Status::Determinate;
    CHECK(it.solution.status == status);
}

// The listed members have no force; if the source says "zero only these", all others have one.
void checkZeros(const Checked& it, const std::vector<PublishedLine>& lines) {
    std::set<int> listed;
    bool complete = false;
    for (const PublishedLine& line : lines) {
        if (line.what != "zero") {
            continue;
        }
        if (line.of[0] == "only") {
            complete = true;
        } else {
            listed.insert(memberNamed(it.truss, line.of[0]).index);
        }
    }
    for (int i = 0; i < static_cast<int>(it.truss.members.size()); ++i) {
        const bool idle = senseOf(it.solution, MemberId{i}) == Sense::Zero;
        INFO(memberName(it.truss, MemberId{i}));
        if (listed.count(i) > 0) {
            CHECK(idle);
        } else if (complete) {
            CHECK_FALSE(idle);
        }
    }
}

void check(const Checked& it, const PublishedLine& line) {
    if (line.what == "status") {
        checkStatus(it, line);
    }
    if (line.what == "mechanisms") {
        CHECK(it.solution.counting.mechanisms == std::stoi(line.of[0]));
    }
    if (line.what == "redundants") {
        CHECK(it.solution.counting.redundants == std::stoi(line.of[0]));
    }
    if (line.what == "force") {
        checkForce(it, line);
    }
    if (line.what == "reaction") {
        checkReaction(it, line);
    }
    if (line.what == "displacement") {
        checkDisplacement(it, line);
    }
    if (line.what == "weight") {
        checkWeight(it, line);
    }
    if (line.what == "largest-stress") {
        checkLargestStress(it, line);
    }
    if (line.what == "largest-displacement") {
        checkLargestDisplacement(it, line);
    }
}

} // namespace

TEST_CASE("published cases have the answers that their sources print") {
    const std::vector<PublishedCase> cases = publishedCases();
    REQUIRE(cases.size() == 40);
    for (const PublishedCase& published : cases) {
        INFO(published.name);
        const Outcome<Reading> reading = readModel(published.model);
        REQUIRE(reading.ok());
        const Truss& truss = reading.value().truss;
        const Solution solution = solve(truss);
        REQUIRE(solution.errors.empty());
        const Checked it{truss, solution};
        REQUIRE(solution.solved == (solution.status != Status::Mechanism));
        for (const PublishedLine& line : published.lines) {
            check(it, line);
        }
        checkMoving(it, published.lines);
        if (solution.solved) {
            checkZeros(it, published.lines);
        }
    }
}
