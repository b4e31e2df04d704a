// Damages links and files for as long as asked:  fuzz COUNT [SEED].  Says what broke, and counts.
#include "support/mutation.hpp"

#include <cstdio>
#include <cstdlib>

int main(int count, char** words) {
    if (count < 2 || std::atol(words[1]) <= 0) {
        std::fputs("usage: fuzz COUNT [SEED]\n", stderr);
        return 3;
    }
    const long rounds = std::atol(words[1]);
    const auto seed = static_cast<std::uint64_t>(count > 2 ? std::atoll(words[2]) : 1);
    gusset::support::Random random(seed);
    gusset::support::FuzzTally tally;
    for (long i = 0; i < rounds; ++i) {
        gusset::support::fuzzOnce(random, tally);
    }
    for (const std::string& broken : tally.broken) {
        std::printf("BROKEN %s\n", broken.c_str());
    }
    std::printf("seed %llu: %ld opened, %ld refused, %zu broken\n",
                static_cast<unsigned long long>(seed), tally.opened, tally.refused,
                tally.broken.size());
    return tally.broken.empty() ? 0 : 1;
}
