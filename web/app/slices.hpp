#pragma once
// Long calculations go on in slices of a frame.

#include "statics/exact.hpp"

#include <chrono>

namespace gusset {

using Deadline = std::chrono::steady_clock::time_point;

[[nodiscard]] inline Deadline after(std::chrono::microseconds budget) {
    return std::chrono::steady_clock::now() + budget;
}
[[nodiscard]] inline bool isOver(Deadline deadline) {
    return std::chrono::steady_clock::now() >= deadline;
}

// Goes on with the task. True when it is done, false when the time was over before.
[[nodiscard]] inline bool advanceUntil(Deadline deadline, ExactTask& task) {
    constexpr int kSlice = 8; // steps of elimination: a clock is looked at in between
    while (!task.advance(kSlice)) {
        if (isOver(deadline)) {
            return false;
        }
    }
    return true;
}

} // namespace gusset
