// What must hold for every truss, on ten thousand random ones: half determinate, half
// indeterminate.
#include "statics/solve/analysis.hpp"

#include "support/random.hpp"
#include "support/trusses/random_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>

using namespace gusset;
using support::Random;

namespace {

constexpr std::uint64_t kTrusses = 10'000;
constexpr double kSame = 1e-9; // relative to the largest of its kind

Truss anyTruss(std::uint64_t seed) {
    return seed % 2 ? support::randomIndeterminateTruss(seed)
                    : support::withSections(support::randomDeterminateTruss(seed), seed);
}

double largestOf(const std::vector<double>& values) {
    double largest = 0;
    for (const double value : values) {
        largest = std::max(largest, std::abs(value));
    }
    return largest;
}

double farthest(const std::vector<Vec2>& moves) {
    double largest = 0;
    for (const Vec2 move : moves) {
        largest = std::max(largest, length(move));
    }
    return largest;
}

// The largest difference of the forces, relative to the largest force, where a member's force is
// `sign` times that of the member given by `other`.
double difference(const Solution& one, const Solution& two, const std::vector<std::size_t>& other) {
    double worst = 0;
    for (std::size_t i = 0; i < one.forces.size(); ++i) {
        worst = std::max(worst, std::abs(one.forces[i] - two.forces[other[i]]));
    }
    return worst / std::max(one.largest, two.largest);
}

std::vector<std::size_t> inOrder(std::size_t count) {
    std::vector<std::size_t> order(count);
    std::iota(order.begin(), order.end(), std::size_t{0});
    return order;
}

std::vector<Vec2> randomLoads(std::size_t joints, Random& random) {
    std::vector<Vec2> loads(joints);
    for (Vec2& load : loads) {
        const double x = random.decimal(-20, 20, 2);
        load = {1e3 * x, 1e3 * random.decimal(-20, 20, 2)};
    }
    return loads;
}

double work(const std::vector<Vec2>& loads, const std::vector<Vec2>& moves) {
    double sum = 0;
    for (std::size_t i = 0; i < loads.size(); ++i) {
        sum += dot(loads[i], moves[i]);
    }
    return sum;
}

// The truss rotated by a right angle, with its supports and loads: (x, y) becomes (−y, x).
Truss turned(Truss truss) {
    for (Joint& joint : truss.joints) {
        joint.at = {-joint.at.y, joint.at.x};
    }
    for (Support& support : truss.supports) {
        support.reaction += 90; // a pin holds every direction
    }
    for (Load& load : truss.loads) {
        if (auto* force = std::get_if<JointForce>(&load.what)) {
            *force = {force->joint, -force->fy, force->fx};
        } else {
            std::get<AngledForce>(load.what).angle += 90;
        }
    }
    return truss;
}

Truss mirrored(Truss truss) {
    for (Joint& joint : truss.joints) {
        joint.at.x = -joint.at.x;
    }
    for (Support& support : truss.supports) {
        support.reaction = 180 - support.reaction;
    }
    for (Load& load : truss.loads) {
        if (auto* force = std::get_if<JointForce>(&load.what)) {
            force->fx = -force->fx;
        } else {
            auto& angled = std::get<AngledForce>(load.what);
            angled.angle = 180 - angled.angle;
        }
    }
    return truss;
}

Truss scaled(Truss truss, double factor) {
    for (Joint& joint : truss.joints) {
        joint.at = factor * joint.at;
    }
    return truss;
}

// Members in another order; `order` gives the new index of each.
Truss renumbered(Truss truss, Random& random, std::vector<std::size_t>& order) {
    order = inOrder(truss.members.size());
    for (std::size_t i = order.size(); i > 1; --i) {
        std::swap(order[i - 1],
                  order[static_cast<std::size_t>(random.integer(0, static_cast<int>(i) - 1))]);
    }
    const std::vector<Member> members = truss.members;
    for (std::size_t i = 0; i < members.size(); ++i) {
        truss.members[order[i]] = members[i];
    }
    return truss;
}

} // namespace

TEST_CASE("every joint of every random truss is in equilibrium") {
    for (std::uint64_t seed = 0; seed < kTrusses; ++seed) {
        const Solution solution = solve(anyTruss(seed));
        REQUIRE(solution.solved);
        REQUIRE(solution.residual < 1e-12);
    }
}

TEST_CASE("forces add up as loads do, and work is reciprocal and stored as strain energy") {
    for (std::uint64_t seed = 0; seed < kTrusses; ++seed) {
        INFO("seed " << seed);
        const Truss truss = anyTruss(seed);
        const Analysis analysis = analyse(truss, structureOf(truss));
        Random random(seed);
        const std::vector<Vec2> p = randomLoads(truss.joints.size(), random);
        const std::vector<Vec2> q = randomLoads(truss.joints.size(), random);
        std::vector<Vec2> both;
        for (std::size_t i = 0; i < p.size(); ++i) {
            both.push_back(p[i] + 2.0 * q[i]);
        }
        const Response byP = respond(analysis, p).value();
        const Response byQ = respond(analysis, q).value();
        const Response byBoth = respond(analysis, both).value();
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            const double sum = byP.found.forces[i] + 2 * byQ.found.forces[i];
            REQUIRE(std::abs(byBoth.found.forces[i] - sum) <= kSame * byBoth.found.largest);
        }
        // Maxwell and Betti.
        const double scale = farthest(byP.displacements) * 20e3 * static_cast<double>(p.size());
        REQUIRE(std::abs(work(p, byQ.displacements) - work(q, byP.displacements)) <= kSame * scale);
        // Clapeyron: a load that grows from zero does half its final work.
        const double energy = strainEnergyOf(analysis.structure, byP.found.forces);
        REQUIRE(std::abs(work(p, byP.displacements) / 2 - energy) <= kSame * scale);
    }
}

TEST_CASE("turning, mirroring, scaling and renumbering a truss leave its forces as they are") {
    for (std::uint64_t seed = 0; seed < kTrusses; ++seed) {
        INFO("seed " << seed);
        const Truss truss = anyTruss(seed);
        const Solution solution = solve(truss);
        const std::vector<std::size_t> same = inOrder(truss.members.size());
        REQUIRE(difference(solution, solve(turned(truss)), same) < kSame);
        REQUIRE(difference(solution, solve(mirrored(truss)), same) < kSame);
        REQUIRE(difference(solution, solve(scaled(truss, 2.5)), same) < kSame);
        Random random(seed);
        std::vector<std::size_t> order;
        const Truss other = renumbered(truss, random, order);
        REQUIRE(difference(solution, solve(other), order) < kSame);
    }
}

TEST_CASE("settlement, temperature and misfit press no determinate truss, and stress indeterminate "
          "ones") {
    int stressed = 0;
    for (std::uint64_t seed = 0; seed < kTrusses; ++seed) {
        Truss truss = anyTruss(seed);
        truss.loads.clear();
        support::addRandomStrains(truss, seed);
        const Solution solution = solve(truss);
        if (!solution.solved) {
            // Two supports of one joint may have been given contradictory movements.
            REQUIRE(solution.status == Status::Indeterminate);
            REQUIRE_FALSE(solution.errors.empty());
            continue;
        }
        if (solution.status == Status::Determinate) {
            REQUIRE(largestOf(solution.forces) == 0);
        } else if (largestOf(solution.forces) > 1) { // N
            ++stressed;
        }
    }
    CHECK(stressed > 3000);
}
