// What must hold for large trusses as for small ones, where a faster method is used; each is
// compared with the simple method.
#include "hand/polygon/force_polygon.hpp"
#include "hand/polygon/planar_faces.hpp"
#include "hand/virtual_work/virtual_work.hpp"
#include "report/sketch/sketch_room.hpp"
#include "statics/moving/envelope.hpp"
#include "statics/moving/moving.hpp"
#include "support/random.hpp"
#include "support/trusses/family_truss.hpp"
#include "support/trusses/random_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;

namespace {

double side(Vec2 a, Vec2 b, Vec2 point) { return cross(b - a, point - a) / length(b - a); }

bool liesWithin(Vec2 a, Vec2 b, Vec2 point, double small) {
    const double along = dot(point - a, b - a) / length(b - a);
    return std::fabs(side(a, b, point)) <= small && along > small && along < length(b - a) - small;
}

bool meet(const Truss& truss, const Member& one, const Member& other, double small) {
    const Vec2 a = truss.joints[one.a.at()].at;
    const Vec2 b = truss.joints[one.b.at()].at;
    const Vec2 c = truss.joints[other.a.at()].at;
    const Vec2 d = truss.joints[other.b.at()].at;
    const auto apart = [&](double p, double q) {
        return std::min(p, q) < -small && std::max(p, q) > small;
    };
    return (apart(side(a, b, c), side(a, b, d)) && apart(side(c, d, a), side(c, d, b))) ||
           liesWithin(a, b, c, small) || liesWithin(a, b, d, small) || liesWithin(c, d, a, small) ||
           liesWithin(c, d, b, small);
}

std::optional<std::pair<MemberId, MemberId>> firstCrossing(const Truss& truss) {
    const Extent box = extent(truss);
    const double small = 1e-9 * std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    for (int i = 0; i < static_cast<int>(truss.members.size()); ++i) {
        for (int k = i + 1; k < static_cast<int>(truss.members.size()); ++k) {
            if (meet(truss, truss.members[static_cast<std::size_t>(i)],
                     truss.members[static_cast<std::size_t>(k)], small)) {
                return std::pair{MemberId{i}, MemberId{k}};
            }
        }
    }
    return std::nullopt;
}

// Joints on a small grid, so that members often meet a joint or overlap.
Truss tangle(std::uint64_t seed) {
    Random random(seed);
    Truss truss;
    const int joints = random.integer(4, 30);
    for (int i = 0; i < joints; ++i) {
        const Vec2 at{1.0 * random.integer(0, 12), 1.0 * random.integer(0, 12)};
        const bool taken = std::any_of(truss.joints.begin(), truss.joints.end(),
                                       [&](const Joint& joint) { return joint.at == at; });
        if (!taken) {
            truss.joints.push_back({defaultLabel(i), at, {}});
        }
    }
    const int last = static_cast<int>(truss.joints.size()) - 1;
    for (int i = random.integer(1, 8); i > 0; --i) {
        Member member;
        member.a = {random.integer(0, last)};
        member.b = {random.integer(0, last)};
        if (member.a != member.b && !findMember(truss, member.a, member.b).valid()) {
            truss.members.push_back(member);
        }
    }
    return truss;
}

// The number of lines from a space to placed ones, along the given members.
std::vector<int> fixedBy(const ForcePolygon& polygon, const std::vector<bool>& placed) {
    std::vector<int> count(polygon.spaces.size());
    for (const PolygonLine& line : polygon.lines) {
        if (line.member.valid() && line.from != line.to) {
            const auto from = static_cast<std::size_t>(line.from);
            const auto to = static_cast<std::size_t>(line.to);
            count[from] += placed[to] ? 1 : 0;
            count[to] += placed[from] ? 1 : 0;
        }
    }
    return count;
}

// Each new point is the one fixed by the most drawn points; among several, that of the first space.
void checkOrder(const ForcePolygon& polygon) {
    std::vector<bool> placed;
    for (const PolygonSpace& space : polygon.spaces) {
        placed.push_back(space.outside);
    }
    for (const PolygonLine& line : polygon.lines) {
        const auto to = static_cast<std::size_t>(line.to);
        CHECK(placed[static_cast<std::size_t>(line.from)]);
        if (placed[to]) {
            continue;
        }
        const std::vector<int> fixed = fixedBy(polygon, placed);
        for (std::size_t i = 0; i < placed.size(); ++i) {
            CHECK((placed[i] || fixed[i] < fixed[to] || (fixed[i] == fixed[to] && i >= to)));
        }
        placed[to] = true;
    }
    CHECK(std::find(placed.begin(), placed.end(), false) == placed.end());
}

SketchBox anyBox(Random& random, double largest) {
    const Vec2 low{random.decimal(-300, 300, 10), random.decimal(-300, 300, 10)};
    return {low, low + Vec2{random.decimal(1, largest, 10), random.decimal(1, largest, 10)}};
}

SketchStroke anyStroke(Random& random) {
    const Vec2 a{random.decimal(-300, 300, 10), random.decimal(-300, 300, 10)};
    const Vec2 run{random.decimal(-150, 150, 10), random.decimal(-150, 150, 10)};
    switch (random.integer(0, 3)) {
    case 0:
        return {a, a + Vec2{run.x, 0}};
    case 1:
        return {a, a + Vec2{0, run.y}};
    default:
        return {a, a + run};
    }
}

Truss withCases(Truss truss, std::uint64_t seed) {
    Random random(seed);
    for (Load& load : truss.loads) {
        load.caseId = random.oneIn(4) ? "" : "case " + std::to_string(random.integer(0, 3));
    }
    for (int i = 0; i < 4; ++i) {
        Combination combination{"mix " + std::to_string(i), {}, {}};
        for (int k = random.integer(0, 5); k > 0; --k) {
            combination.factors.push_back(
                {random.oneIn(5) ? kDefaultCase : "case " + std::to_string(random.integer(0, 5)),
                 random.decimal(-2, 2, 4)});
        }
        truss.combinations.push_back(combination);
    }
    return truss;
}

} // namespace

TEST_CASE("the working of a large truss of any family ends, with the solver's forces") {
    for (const Family family : kFamilies) {
        for (const int members : {40, 300, 1000}) {
            const Truss truss = familyTruss(family, members);
            const Solution solution = solve(truss);
            INFO(nameOf(family) << " of " << truss.members.size() << " members");
            REQUIRE(solution.solved);
            CHECK((solution.counting.redundants == 0) == (family != Family::Lattice));
            const Working working = workOut(truss, {}, solution);
            REQUIRE(working.complete == (family != Family::Lattice));
            if (!working.complete) {
                continue;
            }
            const FoundForces found = forcesOf(working);
            double worst = 0;
            double largest = 0;
            for (std::size_t i = 0; i < found.members.size(); ++i) {
                const double expected = solution.forces[i] / 1000; // kN
                largest = std::max(largest, std::fabs(expected));
                worst = std::max(worst, std::fabs(found.members[i] - expected));
            }
            CHECK(worst <= 1e-8 * largest);
        }
    }
}

TEST_CASE("a large polygon grows by the point that most drawn ones fix, and closes") {
    for (const Family family : {Family::Warren, Family::Pratt, Family::K, Family::Compound,
                                Family::Complex, Family::Grown}) {
        const Truss truss = familyTruss(family, 100);
        const ForcePolygon polygon = forcePolygon(truss, {}, solve(truss));
        INFO(nameOf(family));
        REQUIRE(polygon.refusal == PolygonRefusal::None);
        checkOrder(polygon);
        const Extent box = extent(truss);
        CHECK(box.high.x > box.low.x);
        for (const PolygonLine& line : polygon.lines) { // their length is proportional to the force
            const Vec2 run = polygon.spaces[static_cast<std::size_t>(line.to)].point -
                             polygon.spaces[static_cast<std::size_t>(line.from)].point;
            CHECK(std::fabs(length(run) - std::fabs(line.force)) <= 1e-6 * 1000);
        }
    }
}

TEST_CASE("the first two members that meet without a joint are those of a look at every pair") {
    int crossing = 0;
    for (std::uint64_t seed = 1; seed <= 600; ++seed) {
        const Truss truss = tangle(seed);
        const auto expected = firstCrossing(truss);
        crossing += expected ? 1 : 0;
        CHECK(crossingMembers(truss) == expected);
    }
    CHECK(crossing > 100);
    CHECK(crossing < 500);
}

TEST_CASE("what is free in a drawing is told as by a look at all that is in it") {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        Random random(seed);
        SketchRoom room;
        std::vector<SketchBox> boxes;
        std::vector<SketchStroke> strokes;
        for (int i = random.integer(0, 40); i > 0; --i) {
            boxes.push_back(anyBox(random, random.oneIn(10) ? 400 : 40));
            strokes.push_back(anyStroke(random));
        }
        boxes.push_back({{250, 250}, {1e12, 1e12}}); // larger than any grid
        strokes.push_back({{-1e12, -290}, {1e12, -290}});
        for (const SketchBox& box : boxes) {
            room.take(box);
        }
        for (const SketchStroke& stroke : strokes) {
            room.take(stroke);
        }
        for (int i = 0; i < 300; ++i) {
            const SketchBox box = anyBox(random, random.oneIn(20) ? 5000 : 30);
            const auto taken = [&](const SketchBox& other) { return overlap(box, other); };
            const auto struck = [&](const SketchStroke& stroke) { // with a margin of two px
                return crosses(grown(box, 2), stroke);
            };
            CHECK(room.isFree(box) == (std::none_of(boxes.begin(), boxes.end(), taken) &&
                                       std::none_of(strokes.begin(), strokes.end(), struck)));
            const SketchStroke leader = anyStroke(random);
            const auto inWay = [&](const SketchBox& other) {
                return crosses(grown(other, -2), leader);
            };
            CHECK(room.isClear(leader) == std::none_of(boxes.begin(), boxes.end(), inWay));
        }
    }
}

TEST_CASE("the factors of all loads under a choice are those that each load has by itself") {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const Truss truss = withCases(familyTruss(Family::Grown, 40), seed);
        const LoadFactors factors(truss);
        std::vector<LoadChoice> choices = caseChoices(truss);
        for (const LoadChoice& choice : combinationChoices(truss)) {
            choices.push_back(choice);
        }
        choices.push_back({});
        choices.emplace_back(OneCombination{"no such combination"});
        choices.emplace_back(OneCase{"no such case"});
        for (const LoadChoice& choice : choices) {
            const std::vector<double> under = factors.under(choice);
            REQUIRE(under.size() == truss.loads.size());
            for (std::size_t i = 0; i < under.size(); ++i) {
                CHECK(under[i] == caseFactor(truss, choice, truss.loads[i]));
            }
        }
    }
}

TEST_CASE("an envelope over many combinations holds each solution, and names one that gives it") {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const Truss truss = withCases(familyTruss(Family::Warren, 60), seed);
        const auto envelope = envelopeOf(truss, envelopeChoices(truss));
        REQUIRE(envelope);
        std::vector<double> most(truss.members.size());
        std::vector<double> least(truss.members.size());
        for (const LoadChoice& choice : envelopeChoices(truss)) {
            const Solution solution = solve(truss, choice);
            for (std::size_t i = 0; i < most.size(); ++i) {
                most[i] = std::max(most[i], solution.forces[i]);
                least[i] = std::min(least[i], solution.forces[i]);
            }
        }
        for (std::size_t i = 0; i < most.size(); ++i) {
            const MemberEnvelope& each = envelope.value().members[i];
            CHECK(std::fabs(each.tension.force - most[i]) <= 1e-9 * 1e6);
            CHECK(std::fabs(each.compression.force - least[i]) <= 1e-9 * 1e6);
            CHECK(isCombination(each.tension.choice) == (each.tension.force != 0));
        }
    }
}

TEST_CASE("a uniform load makes of a line what its area under the load is, piece by piece") {
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        Random random(seed);
        InfluenceLine line;
        double at = 0;
        for (int i = random.integer(2, 9); i > 0; --i) {
            line.at.push_back(at);
            line.ordinates.push_back(random.decimal(-2, 2, 8));
            at += random.decimal(0.5, 3, 4);
        }
        const double length = random.decimal(0.25, 12, 4);
        const UniformExtremes extremes = extremesOfUniform(line, 3, length);
        for (const UniformPlace& place : {extremes.largest, extremes.smallest}) {
            constexpr int kPieces = 4000; // trapezia: exact except where the line bends within one
            const double from = std::clamp(place.from, 0.0, line.at.back());
            const double to = std::clamp(place.to, 0.0, line.at.back());
            const double width = (to - from) / kPieces;
            double area = 0;
            for (int i = 0; i < kPieces; ++i) {
                area += width * ordinateAt(line, from + (i + 0.5) * width);
            }
            CHECK(std::fabs(place.value - 3 * area) <= 1e-3);
        }
    }
}
