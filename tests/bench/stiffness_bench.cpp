// Prints one line per truss: its members, the shortest times in microseconds that Gusset and a
// general sparse Cholesky library take to assemble, order, factor and solve its stiffness
// equations, and the time of a further solve with the same pattern.

#include "bench/shortest.hpp"
#include "statics/equilibrium/stiffness.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <suitesparse/cholmod.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

using namespace gusset;
using bench::shortest;

namespace {

// A square lattice with one diagonal in each cell and a second in half of them, on two pins.
Truss lattice(int side) {
    Truss truss;
    const auto at = [&](int i, int k) { return JointId{i * (side + 1) + k}; };
    const auto join = [&](JointId a, JointId b) {
        Member member;
        member.a = a;
        member.b = b;
        truss.members.push_back(member);
    };
    for (int i = 0; i <= side; ++i) {
        for (int k = 0; k <= side; ++k) {
            truss.joints.push_back(
                {std::to_string(i) + "," + std::to_string(k), {2.0 * i, 2.0 * k}, {}});
        }
    }
    for (int i = 0; i <= side; ++i) {
        for (int k = 0; k <= side; ++k) {
            if (i < side) {
                join(at(i, k), at(i + 1, k));
            }
            if (k < side) {
                join(at(i, k), at(i, k + 1));
            }
            if (i < side && k < side) {
                join(at(i, k), at(i + 1, k + 1));
            }
            if (i < side && k < side && (i + k) % 2) {
                join(at(i + 1, k), at(i, k + 1));
            }
        }
    }
    for (const JointId corner : {at(0, 0), at(side, 0)}) {
        Support pin;
        pin.joint = corner;
        truss.supports.push_back(pin);
    }
    Load load;
    load.what = JointForce{at(side / 2, side), 3, -10};
    truss.loads.push_back(load);
    return truss;
}

// Numbers the freedoms that the supports leave; −1 where held. All supports here act along the
// axes.
std::vector<int> freedomsOf(const std::vector<HeldJoint>& holds, int& count) {
    std::vector<int> freedom;
    for (const HeldJoint& hold : holds) {
        const bool upright = hold.firstHeld && !hold.secondHeld && std::abs(hold.first.y) == 1;
        const bool heldX = hold.firstHeld && !upright;
        const bool heldY = hold.secondHeld || upright;
        freedom.push_back(heldX ? -1 : count++);
        freedom.push_back(heldY ? -1 : count++);
    }
    return freedom;
}

// The upper triangle of the stiffness matrix, as triplets that the library sums.
cholmod_sparse* assemble(const Structure& structure, const std::vector<int>& freedom, int count,
                         cholmod_common* common) {
    cholmod_triplet* triplets =
        cholmod_allocate_triplet(static_cast<std::size_t>(count), static_cast<std::size_t>(count),
                                 10 * structure.bars.size(), 1, CHOLMOD_REAL, common);
    auto* rows = static_cast<int*>(triplets->i);
    auto* columns = static_cast<int*>(triplets->j);
    auto* values = static_cast<double*>(triplets->x);
    std::size_t& used = triplets->nnz;
    for (const Bar& bar : structure.bars) {
        const double k = bar.stiffness / bar.length;
        const double e[4] = {-bar.along.x, -bar.along.y, bar.along.x, bar.along.y};
        const int f[4] = {freedom[2 * static_cast<std::size_t>(bar.a)],
                          freedom[2 * static_cast<std::size_t>(bar.a) + 1],
                          freedom[2 * static_cast<std::size_t>(bar.b)],
                          freedom[2 * static_cast<std::size_t>(bar.b) + 1]};
        for (int p = 0; p < 4; ++p) {
            for (int q = 0; q < 4; ++q) {
                if (f[p] < 0 || f[q] < 0 || f[p] > f[q]) {
                    continue;
                }
                rows[used] = f[p];
                columns[used] = f[q];
                values[used++] = k * e[p] * e[q];
            }
        }
    }
    cholmod_sparse* matrix = cholmod_triplet_to_sparse(triplets, 0, common);
    cholmod_free_triplet(&triplets, common);
    return matrix;
}

// Returns the largest displacement.
double byCholmod(const Structure& structure, const std::vector<HeldJoint>& holds,
                 const std::vector<Vec2>& loads, cholmod_common* common) {
    int count = 0;
    const std::vector<int> freedom = freedomsOf(holds, count);
    cholmod_sparse* matrix = assemble(structure, freedom, count, common);
    cholmod_factor* factor = cholmod_analyze(matrix, common);
    cholmod_factorize(matrix, factor, common);
    cholmod_dense* right = cholmod_zeros(static_cast<std::size_t>(count), 1, CHOLMOD_REAL, common);
    for (std::size_t i = 0; i < loads.size(); ++i) {
        if (freedom[2 * i] >= 0) {
            static_cast<double*>(right->x)[freedom[2 * i]] = loads[i].x;
        }
        if (freedom[2 * i + 1] >= 0) {
            static_cast<double*>(right->x)[freedom[2 * i + 1]] = loads[i].y;
        }
    }
    cholmod_dense* found = cholmod_solve(CHOLMOD_A, factor, right, common);
    double largest = 0;
    for (int i = 0; i < count; ++i) {
        largest = std::max(largest, std::abs(static_cast<double*>(found->x)[i]));
    }
    cholmod_free_dense(&found, common);
    cholmod_free_dense(&right, common);
    cholmod_free_factor(&factor, common);
    cholmod_free_sparse(&matrix, common);
    return largest;
}

double largestComponent(const std::vector<Vec2>& moves) {
    double largest = 0;
    for (Vec2 move : moves) {
        largest = std::max({largest, std::abs(move.x), std::abs(move.y)});
    }
    return largest;
}

// False if the two disagree: their times then mean nothing.
bool compare(const char* name, const Truss& truss, cholmod_common* common) {
    const Structure structure = structureOf(truss);
    const std::vector<HeldJoint> holds = heldJointsOf(truss, structure).value();
    const std::vector<Vec2> loads = jointLoads(truss, {});
    const JointPattern kept = analysePattern(structure.joints.size(), structure.bars);
    std::vector<Vec2> moves;
    const auto ours = [&](const JointPattern& pattern) {
        const Stiffness stiffness = factorStiffness(structure, pattern, holds);
        moves = loads;
        solveDisplacements(pattern, stiffness, moves);
    };
    const double first =
        shortest([&] { ours(analysePattern(structure.joints.size(), structure.bars)); });
    const double again = shortest([&] { ours(kept); });
    double theirs = 0;
    const double library = shortest([&] { theirs = byCholmod(structure, holds, loads, common); });
    const double difference = std::abs(largestComponent(moves) - theirs) / theirs;
    std::printf("%-8s %7zu %10.1f %10.1f %6.2f %6.2f  %.0e\n", name, truss.members.size(), first,
                library, first / library, again / first, difference);
    std::fflush(stdout);
    // A strip of thousands of panels is so flexible that both are left with few digits.
    return difference < (truss.members.size() > 5'000 ? 0.1 : 1e-6);
}

} // namespace

int main() {
    cholmod_common common;
    cholmod_start(&common);
    std::printf("%-8s %7s %10s %10s %6s %6s  %s\n", "truss", "members", "gusset us", "cholmod us",
                "ratio", "again", "difference");
    bool agree = true;
    for (const int members : {200, 2'000, 20'000, 100'000}) {
        const int panels = support::panelsFor(support::Web::Double, members);
        agree &= compare(
            "strip", support::withSections(support::stripTruss(support::Web::Double, panels), 1),
            &common);
        const int side = static_cast<int>(std::sqrt(members / 3.5));
        agree &= compare("lattice", support::withSections(lattice(side), 1), &common);
    }
    cholmod_finish(&common);
    return agree ? 0 : 1;
}
