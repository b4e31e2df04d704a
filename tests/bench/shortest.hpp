#pragma once
// The shortest time of many runs, in microseconds: what else the machine does can only add to it.

#include <algorithm>
#include <chrono>

namespace gusset::bench {

template <class Run>
[[nodiscard]] double shortest(Run run) {
    using Clock = std::chrono::steady_clock;
    constexpr int kLeastRuns = 5;
    constexpr auto kLeastTime = std::chrono::milliseconds(300);
    double best = 1e300;
    const auto start = Clock::now();
    for (int i = 0; i < kLeastRuns || Clock::now() - start < kLeastTime; ++i) {
        const auto begin = Clock::now();
        run();
        best =
            std::min(best, std::chrono::duration<double, std::micro>(Clock::now() - begin).count());
    }
    return best;
}

} // namespace gusset::bench
