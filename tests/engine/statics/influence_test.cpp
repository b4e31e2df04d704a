#include "statics/moving/envelope.hpp"
#include "statics/moving/moving.hpp"

#include "support/english.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

Effect reactionAt(JointId joint) {
    Effect effect;
    effect.kind = EffectKind::Reaction;
    effect.joint = joint;
    return effect;
}

Effect forceIn(const Truss& truss, const char* a, const char* b) {
    Effect effect;
    effect.member = MemberId{static_cast<int>(memberAt(truss, a, b))};
    return effect;
}

// A line that no truss has: up, down through zero, and up again to a nonzero end.
InfluenceLine crooked() { return {{0, 2, 5, 6, 10}, {0, 1.5, -0.5, -1, 0.25}}; }

const std::vector<Wheel> kTrain = {{0, -10}, {1.5, -20}, {4, -5}};

} // namespace

TEST_CASE("the line of a support's reaction is straight, and its area is half the span") {
    const Truss truss = stripTruss(Web::Pratt, 6);
    const PathAnalysis analysis = analysePath(truss, bottomChord(truss, 6)).value();
    const InfluenceLine line = influenceLine(analysis, reactionAt(findJoint(truss, "B0")));
    for (int i = 0; i <= 6; ++i) {
        CHECK_THAT(line.ordinates[static_cast<std::size_t>(i)], WithinAbs(1 - i / 6.0, 1e-14));
    }
    CHECK_THAT(areasOf(line).positive, WithinRel(18.0 / 2, 1e-14));
    CHECK(areasOf(line).negative == 0);
}

TEST_CASE("an ordinate is what a unit load there does, in random trusses") {
    int members = 0;
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        Truss truss = seed % 2 ? randomIndeterminateTruss(seed) : randomDeterminateTruss(seed);
        const Member& along = truss.members[seed % truss.members.size()];
        if (std::abs(
                memberVector(truss, MemberId{static_cast<int>(seed % truss.members.size())}).x) <
            0.1) {
            continue; // vertical: not a path
        }
        const PathAnalysis analysis = analysePath(truss, {along.a, along.b}).value();
        truss.loads.clear();
        Load unit;
        unit.what = JointForce{along.b, 0, -1}; // kN
        truss.loads.push_back(unit);
        const Solution solution = solve(truss);
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            Effect effect;
            effect.member = MemberId{static_cast<int>(i)};
            REQUIRE_THAT(influenceLine(analysis, effect).ordinates[1],
                         WithinAbs(solution.forces[i] / 1e3, 1e-9 * solution.largest / 1e3));
            ++members;
        }
    }
    CHECK(members > 3000);
}

TEST_CASE("the areas of a line are split where it crosses the path") {
    const InfluenceLine line{{0, 4}, {3, -1}};
    CHECK_THAT(areasOf(line).positive, WithinRel(4.5, 1e-15));  // 3 m high 3 m long, halved
    CHECK_THAT(areasOf(line).negative, WithinRel(-0.5, 1e-15)); // 1 by 1, halved
}

TEST_CASE("no place of a train that moves in small steps is worse than the extreme found") {
    const InfluenceLine line = crooked();
    const TrainExtremes extremes = extremesOf(line, kTrain);
    double most = 0;
    double least = 0;
    for (int step = -500; step <= 1500; ++step) {
        for (const double facing : {1.0, -1.0}) {
            double effect = 0;
            for (const Wheel& wheel : kTrain) {
                effect -= wheel.force * ordinateAt(line, step / 100.0 - facing * wheel.behind);
            }
            most = std::max(most, effect);
            least = std::min(least, effect);
        }
    }
    CHECK(most <= extremes.largest.value + 1e-12);
    CHECK(least >= extremes.smallest.value - 1e-12);
    // The steps include the joints, so both find the same.
    CHECK_THAT(most, WithinRel(extremes.largest.value, 1e-12));
    CHECK_THAT(least, WithinRel(extremes.smallest.value, 1e-12));
}

TEST_CASE("no place of a uniform load that moves in small steps is worse than the extreme found") {
    const InfluenceLine line = crooked();
    for (const double length : {0.7, 3.0, 20.0}) {
        const UniformExtremes extremes = extremesOfUniform(line, 4, length);
        double most = 0;
        double least = 0;
        for (int step = -2100; step <= 1100; ++step) {
            double effect = 0; // 4 N/m in slices of 1 cm, by the middle of each
            for (double x = 0.005; x < length; x += 0.01) {
                effect += 4 * 0.01 * ordinateAt(line, step / 100.0 + x);
            }
            most = std::max(most, effect);
            least = std::min(least, effect);
        }
        CHECK_THAT(most, WithinAbs(extremes.largest.value, 2e-3));
        CHECK_THAT(least, WithinAbs(extremes.smallest.value, 2e-3));
    }
}

TEST_CASE("paths that no load could roll along are refused with their place") {
    const Truss truss = stripTruss(Web::Pratt, 4);
    const auto fault = [&](std::initializer_list<const char*> labels) {
        std::vector<JointId> joints;
        for (const char* label : labels) {
            joints.push_back(findJoint(truss, label));
        }
        return analysePath(truss, joints).issues().front();
    };
    CHECK(english(fault({"B0", "B2"}).says).find("no member joins B0 and B2") == 0);
    CHECK(fault({"B0", "B1", "B2", "B1"}).at == "path[3]");
    CHECK(fault({"B0", "B1", "T1"}).at == "path[2]"); // vertical
    CHECK(english(fault({"B0"}).says) == "a path needs at least two joints");
}

TEST_CASE("a mechanism has no influence lines, and says so") {
    Truss truss = stripTruss(Web::Pratt, 4);
    truss.supports.pop_back();
    const auto lines = analysePath(truss, bottomChord(truss, 4));
    CHECK_FALSE(lines.ok());
    CHECK(english(lines.issues().front().says).find("the truss is a mechanism") == 0);
}

TEST_CASE("the members' envelope under a train holds every place of the train") {
    const Truss truss = stripTruss(Web::Warren, 5);
    const PathAnalysis analysis = analysePath(truss, bottomChord(truss, 5)).value();
    const std::vector<TrainExtremes> envelope = movingEnvelope(analysis, kTrain);
    REQUIRE(envelope.size() == truss.members.size());
    const Effect chord = forceIn(truss, "B2", "B3");
    const TrainExtremes own = extremesOf(influenceLine(analysis, chord), kTrain);
    CHECK(envelope[chord.member.at()].largest.value == own.largest.value);
    CHECK(own.largest.value > 0);
    CHECK(own.smallest.value == 0); // a bottom chord is never in compression
}

TEST_CASE("a displacement's line is that of the reciprocal load") {
    // Maxwell: δ at k for a load at i is δ at i for a load at k.
    const Truss truss = withSections(stripTruss(Web::Double, 6), 3);
    const std::vector<JointId> path = bottomChord(truss, 6);
    const PathAnalysis analysis = analysePath(truss, path).value();
    for (std::size_t i = 0; i < path.size(); ++i) {
        for (std::size_t k = 0; k < path.size(); ++k) {
            CHECK_THAT(analysis.responses[i].displacements[path[k].at()].y,
                       WithinAbs(analysis.responses[k].displacements[path[i].at()].y, 1e-18));
        }
    }
}

TEST_CASE("an envelope takes each member's extremes from all combinations") {
    Truss truss = stripTruss(Web::Pratt, 4);
    force(truss, "T2", 25, 0, "wind");
    truss.combinations.push_back({"gravity", {{"loads", 1.35}}, {}});
    truss.combinations.push_back({"storm", {{"loads", 1.0}, {"wind", 1.5}}, {}});
    const std::vector<LoadChoice> choices = envelopeChoices(truss);
    REQUIRE(choices.size() == 2);
    const std::vector<MemberEnvelope> envelope = envelopeOf(truss, choices).value().members;
    const Solution gravity = solve(truss, choices[0]);
    const Solution storm = solve(truss, choices[1]);
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        CHECK(envelope[i].tension.force == std::max({0.0, gravity.forces[i], storm.forces[i]}));
        CHECK(envelope[i].compression.force == std::min({0.0, gravity.forces[i], storm.forces[i]}));
    }
    CHECK(envelope[memberAt(truss, "B0", "B1")].tension.choice ==
          LoadChoice{OneCombination{"storm"}});
    CHECK(envelope[memberAt(truss, "T1", "T2")].compression.choice ==
          LoadChoice{OneCombination{"gravity"}});
}

TEST_CASE("without combinations the envelope runs over the cases") {
    Truss truss = stripTruss(Web::Pratt, 4);
    force(truss, "T2", 25, 0, "wind");
    CHECK(envelopeChoices(truss).size() == 2);
    CHECK(envelopeChoices(truss)[1] == LoadChoice{OneCase{"wind"}});
}
