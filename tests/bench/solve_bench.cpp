// Prints one line per size: members, and the shortest time of one solve in microseconds.

#include "bench/shortest.hpp"
#include "statics/solve/solution.hpp"
#include "support/trusses/strip_truss.hpp"

#include <cstdio>

using namespace gusset;

int main() {
    for (const int members : {20, 200, 2'000, 20'000}) {
        const Truss truss = support::stripTruss(support::Web::Pratt,
                                                support::panelsFor(support::Web::Pratt, members));
        bool solved = true;
        const double shortest = bench::shortest([&] { solved &= solve(truss).solved; });
        if (!solved) {
            std::fprintf(stderr, "A strip of %zu members was not solved.\n", truss.members.size());
            return 1;
        }
        std::printf("%zu %.1f\n", truss.members.size(), shortest);
        std::fflush(stdout);
    }
}
