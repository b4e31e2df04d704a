#pragma once
// The shortest time of many runs, in microseconds: other load on the machine can only add to it.

#include <algorithm>
#include <chrono>
#include <ctime>

namespace gusset::bench {

struct Patience {
    int leastRuns = 5;
    int leastMilliseconds = 300;
};

// The processor time of this process: coarser, but independent of other load on the machine.
struct ProcessorClock {
    using duration = std::chrono::duration<double, std::micro>;
    using time_point = std::chrono::time_point<ProcessorClock, duration>;
    static constexpr bool is_steady = true;
    [[nodiscard]] static time_point now() {
        return time_point(duration(1e6 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC));
    }
};

template <class Clock = std::chrono::steady_clock, class Run>
[[nodiscard]] double shortest(Run run, Patience patience = {}) {
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
