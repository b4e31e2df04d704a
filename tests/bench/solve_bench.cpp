// Prints one line a size: members, and the shortest time of one solve in microseconds.

#include "statics/solution.hpp"
#include "support/strip_truss.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>

using namespace gusset;
using Clock = std::chrono::steady_clock;

namespace {

double solveOnce(const Truss& truss) {
    const auto start = Clock::now();
    const Solution solution = solve(truss);
    const std::chrono::duration<double, std::micro> taken = Clock::now() - start;
    return solution.solved ? taken.count() : -1;
}

// The shortest of many runs: what else the machine does can only add to it.
double shortestSolve(const Truss& truss) {
    constexpr int kLeastRuns = 5;
    constexpr auto kLeastTime = std::chrono::milliseconds(500);
    const auto start = Clock::now();
    double shortest = solveOnce(truss);
    for (int run = 1; run < kLeastRuns || Clock::now() - start < kLeastTime; ++run) {
        shortest = std::min(shortest, solveOnce(truss));
    }
    return shortest;
}

} // namespace

int main() {
    for (const int members : {20, 200, 2'000, 20'000}) {
        const Truss truss = support::stripTruss(support::Web::Pratt,
                                                support::panelsFor(support::Web::Pratt, members));
        const double shortest = shortestSolve(truss);
        if (shortest < 0) {
            std::fprintf(stderr, "A strip of %zu members was not solved.\n", truss.members.size());
            return 1;
        }
        std::printf("%zu %.1f\n", truss.members.size(), shortest);
        std::fflush(stdout);
    }
}
