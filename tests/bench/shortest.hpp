#pragma once
// The shortest time of many runs, in microseconds: what else the machine does can only add to it.

#include <algorithm>
#include <chrono>

namespace gusset::bench {

struct Patience {
    int leastRuns = 5;
    int leastMilliseconds = 300;
};

template <class Run>
[[nodiscard]] double shortest(Run run, Patience patience = {}) {
    using Clock = std::chrono::steady_clock;
    const auto least = std::chrono::milliseconds(patience.leastMilliseconds);
    double best = 1e300;
    const auto start = Clock::now();
    for (int i = 0; i < patience.leastRuns || Clock::now() - start < least; ++i) {
        const auto begin = Clock::now();
        run();
        best =
            std::min(best, std::chrono::duration<double, std::micro>(Clock::now() - begin).count());
    }
    return best;
}

} // namespace gusset::bench
