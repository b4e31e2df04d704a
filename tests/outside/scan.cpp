// Compares forces, reactions and displacements of 10,000 numerically difficult trusses with exact
// fractions, and prints how many were right, given with a warning, or refused with a reason.

#include "support/trusses/extreme_truss.hpp"

#include <cstdio>
#include <cstdlib>

int main(int argc, char** argv) {
    const int count = argc > 1 ? std::atoi(argv[1]) : 10000;
    const gusset::support::ScanCounts counts = gusset::support::scanExtremes(0, count);
    std::printf("%sright %d, flagged in words %d (needlessly %d), refused in words %d "
                "(needlessly %d), mechanisms %d; displacements kept back of %d\n",
                counts.wrong.c_str(), counts.right, counts.flagged, counts.flaggedNeedlessly,
                counts.refused, counts.refusedNeedlessly, counts.unstable, counts.withoutMoves);
    const bool isWell = counts.wrong.empty() && counts.right > 0;
    std::printf("%d passed, %d failed\n", isWell ? 1 : 0, isWell ? 0 : 1);
    return isWell ? 0 : 1;
}
