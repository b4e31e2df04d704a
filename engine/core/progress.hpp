#pragma once
// Long calculations are tasks: `bool advance()` does one unit, small enough for a frame, and
// returns true once there is a result; `Progress progress() const` says how far it has got.
// Destroying a task abandons it.

#include <cstddef>

namespace gusset {

struct Progress {
    std::size_t done = 0; // in the task's own units; never decreases
    std::size_t all = 0;  // 0: nothing to count

    friend bool operator==(const Progress&, const Progress&) = default;
};

[[nodiscard]] constexpr double shareOf(const Progress& progress) {
    return progress.all == 0
               ? 0
               : static_cast<double>(progress.done) / static_cast<double>(progress.all);
}

template <class Task>
[[nodiscard]] Task& runToEnd(Task& task) {
    while (!task.advance()) {
    }
    return task;
}

} // namespace gusset
