#pragma once
// A working that is written a step or so at a time, so that no frame waits for the whole of it.

#include "core/progress.hpp"
#include "hand/paper/working.hpp"

#include <memory>

namespace gusset {

struct Shape; // hand/paper/shape.hpp

class WorkingTask {
public:
    // Preconditions as of workOut. The truss stays where it is and as it is while the task lives.
    // What follows from joints and members alone may come from a working of the same.
    WorkingTask(const Truss&, const LoadChoice&, const Solution&, std::shared_ptr<Shape> = {});
    ~WorkingTask();
    WorkingTask(WorkingTask&&) noexcept;
    WorkingTask& operator=(WorkingTask&&) noexcept;

    bool advance();
    [[nodiscard]] Progress progress() const; // members and reactions found, of all
    [[nodiscard]] Working take();            // once. Precondition: advance() gave true

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace gusset
