// A solver that reuses what it has learned must give what a fresh solve gives, through any drag.
#include "statics/solve/solver.hpp"

#include "support/random.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;

namespace {

constexpr double kSameForce = 1e-9; // relative to the largest of its kind

double apart(const std::vector<double>& one, const std::vector<double>& other) {
    double worst = one.size() == other.size() ? 0 : HUGE_VAL;
    for (std::size_t i = 0; worst < HUGE_VAL && i < one.size(); ++i) {
        worst = std::max(worst, std::abs(one[i] - other[i]));
    }
    return worst;
}

std::vector<double> components(const std::vector<Vec2>& vectors) {
    std::vector<double> all;
    for (const Vec2 v : vectors) {
        all.insert(all.end(), {v.x, v.y});
    }
    return all;
}

double largestSize(const std::vector<double>& values) {
    return apart(values, std::vector<double>(values.size(), 0));
}

void checkReading(const Solution& kept, const Solution& fresh) {
    CHECK(kept.status == fresh.status);
    CHECK(kept.counting.rank == fresh.counting.rank);
    CHECK(kept.counting.mechanisms == fresh.counting.mechanisms);
    CHECK(kept.counting.redundants == fresh.counting.redundants);
    CHECK(kept.counting.internal == fresh.counting.internal);
    CHECK(kept.counting.external == fresh.counting.external);
    CHECK(kept.notes == fresh.notes);
    CHECK(kept.errors == fresh.errors);
    CHECK(kept.assumed == fresh.assumed);
    REQUIRE(kept.mechanisms.size() == fresh.mechanisms.size());
    for (std::size_t i = 0; i < kept.mechanisms.size(); ++i) {
        CHECK(kept.mechanisms[i].cure.a == fresh.mechanisms[i].cure.a);
        CHECK(kept.mechanisms[i].cure.b == fresh.mechanisms[i].cure.b);
        CHECK(kept.mechanisms[i].cure.support == fresh.mechanisms[i].cure.support);
        CHECK(apart(components(kept.mechanisms[i].velocities),
                    components(fresh.mechanisms[i].velocities)) <= kSameForce);
    }
}

void checkForces(const Solution& kept, const Solution& fresh) {
    CHECK(kept.solved == fresh.solved);
    CHECK(apart(kept.forces, fresh.forces) <= kSameForce * fresh.largest);
    CHECK(apart(kept.reactions, fresh.reactions) <= kSameForce * fresh.largest);
    CHECK(kept.residual <= kSameForce);
    CHECK(kept.displaced == fresh.displaced);
    const std::vector<double> moves = components(fresh.displacements);
    CHECK(apart(components(kept.displacements), moves) <= kSameForce * largestSize(moves));
}

void checkRedundants(const Solution& kept, const Solution& fresh) {
    REQUIRE(kept.redundants.size() == fresh.redundants.size());
    if (fresh.counting.redundants > static_cast<int>(kRedundantsShown)) {
        return;
    }
    for (std::size_t i = 0; i < fresh.redundants.size(); ++i) {
        CHECK(kept.redundants[i].what == fresh.redundants[i].what);
        CHECK(kept.redundants[i].sharing == fresh.redundants[i].sharing);
    }
}

void checkSolver(Solver& solver, const Truss& truss, const LoadChoice& choice = {}) {
    const Solution kept = solver.solve(truss, choice);
    const Solution fresh = solve(truss, choice);
    checkReading(kept, fresh);
    checkForces(kept, fresh);
    checkRedundants(kept, fresh);
}

std::vector<JointId> neighboursOf(const Truss& truss, JointId joint) {
    std::vector<JointId> neighbours;
    for (const Member& member : truss.members) {
        if (member.a == joint || member.b == joint) {
            neighbours.push_back(member.a == joint ? member.b : member.a);
        }
    }
    return neighbours;
}

// Between two of its neighbours, where a joint of two members is not restrained perpendicular to
// their line.
void dragBetweenNeighbours(Truss& truss, JointId joint, Random& random) {
    const std::vector<JointId> neighbours = neighboursOf(truss, joint);
    if (neighbours.size() < 2) {
        return;
    }
    const Vec2 a = truss.joints[random.pick(neighbours).at()].at;
    const Vec2 b = truss.joints[random.pick(neighbours).at()].at;
    truss.joints[joint.at()].at = 0.5 * (a + b);
}

void changeNumbers(Truss& truss, Random& random) {
    for (Load& load : truss.loads) {
        if (auto* force = std::get_if<JointForce>(&load.what)) {
            force->fy = random.decimal(-20, 20, 2);
        }
    }
    for (Section& section : truss.sections) {
        if (section.area) {
            section.area = *section.area * random.decimal(0.5, 2, 10);
        }
    }
    for (Support& support : truss.supports) {
        support.reaction += support.kind == SupportKind::Roller ? random.decimal(-5, 5, 1) : 0;
    }
}

// One frame of a drag: a joint moved slightly or onto a line, or a number in a table changed.
void change(Truss& truss, JointId dragged, Random& random) {
    Vec2& at = truss.joints[dragged.at()].at;
    switch (random.integer(0, 5)) {
    case 0:
        dragBetweenNeighbours(truss, dragged, random);
        return;
    case 1:
        changeNumbers(truss, random);
        return;
    default:
        at = at + Vec2{random.decimal(-0.5, 0.5, 20), random.decimal(-0.5, 0.5, 20)};
    }
}

void dragThrough(Truss truss, std::uint64_t seed) {
    constexpr int kFrames = 12;
    Random random(seed);
    Solver solver;
    for (int drag = 0; drag < 2; ++drag) {
        const JointId dragged{random.integer(0, static_cast<int>(truss.joints.size()) - 1)};
        const Truss before = truss;
        for (int frame = 0; frame < kFrames; ++frame) {
            INFO("seed " << seed << ", drag " << drag << ", frame " << frame);
            checkSolver(solver, truss);
            change(truss, dragged, random);
        }
        truss = random.oneIn(2) ? before : truss; // released or cancelled
    }
}

} // namespace

TEST_CASE("a kept solver gives what a fresh solve gives in random drags of determinate trusses") {
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        dragThrough(withSections(randomDeterminateTruss(seed), seed), seed);
    }
}

TEST_CASE("a kept solver gives what a fresh solve gives in random drags of indeterminate trusses") {
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        Truss truss = randomIndeterminateTruss(seed);
        addRandomStrains(truss, seed);
        dragThrough(truss, seed);
    }
}

TEST_CASE("a kept solver gives what a fresh solve gives in random drags of mechanisms") {
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        dragThrough(randomMechanism(seed), seed);
    }
}

TEST_CASE("an apex dragged through the line of its rafters is a mechanism there and nowhere else") {
    Truss truss = gable();
    Solver solver;
    Vec2& apex = truss.joints[jointAt(truss, "C")].at;
    for (int tenths = 10; tenths >= -10; --tenths) {
        apex.y = tenths / 10.0;
        CHECK((solver.solve(truss).status == Status::Mechanism) == (tenths == 0));
        checkSolver(solver, truss);
    }
}

TEST_CASE("a drag onto another joint, and beyond, is told as a fresh solve tells it") {
    for (const Web web : {Web::Pratt, Web::Double}) {
        Truss truss = stripTruss(web, 6);
        Solver solver;
        Vec2& dragged = truss.joints[jointAt(truss, "T3")].at;
        for (int step = 0; step <= 24; ++step) { // to B3, below, where members cross, and back
            dragged.y = std::abs(step - 14) * 0.3 - 1.2;
            checkSolver(solver, truss);
        }
        CHECK(solver.solve(truss).errors.empty());
    }
}

TEST_CASE("faults that come and go between two solves are told, and leave the solver sound") {
    Truss truss = gable();
    Solver solver;
    checkSolver(solver, truss);
    Truss broken = truss;
    broken.joints[0].at.x = HUGE_VAL;
    CHECK_FALSE(solver.solve(broken).errors.empty());
    checkSolver(solver, broken);
    broken = truss;
    broken.joints[1].at = broken.joints[0].at;
    CHECK_FALSE(solver.solve(broken).errors.empty());
    broken = truss;
    broken.joints[1].label = "A";
    CHECK_FALSE(solver.solve(broken).errors.empty());
    checkSolver(solver, truss);
    broken = truss;
    broken.members[0].section = "none";
    checkSolver(solver, broken);
    checkSolver(solver, gable());
}

TEST_CASE("a member drawn or removed between two solves is taken into account") {
    Truss truss = stripTruss(Web::Double, 4);
    Solver solver;
    checkSolver(solver, truss);
    while (truss.members.size() > 8) {
        truss.members.pop_back();
        checkSolver(solver, truss);
    }
    truss = gable();
    checkSolver(solver, truss, OneCase{"no such case"});
    truss.loads[0].caseId = "wind";
    checkSolver(solver, truss, OneCase{"wind"});
    checkSolver(solver, truss);
}

TEST_CASE("pivots are kept while a joint is dragged a little, and given up at a mechanism") {
    Truss truss = gable();
    Analysis analysis = analyse(truss, structureOf(truss));
    const auto drag = [&](double y) {
        truss.joints[jointAt(truss, "C")].at.y = y;
        analyseAgain(truss, structureOf(truss), analysis);
        return !analysis.plan.multiplesOf.empty();
    };
    CHECK(drag(2.9));
    CHECK(drag(2.8));
    CHECK_FALSE(drag(0));
    CHECK(analysis.status == Status::Mechanism);
    CHECK_FALSE(drag(0.5)); // what was kept of the mechanism can't be used
    CHECK(analysis.status == Status::Determinate);
    CHECK(drag(0.6));
}
