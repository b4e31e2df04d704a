#pragma once
// A working written in small steps, so that no frame waits for the whole of it.

#include "core/progress.hpp"
#include "hand/paper/working.hpp"

#include <memory>

namespace gusset {

struct Shape; // hand/paper/shape.hpp

class WorkingTask {
public:
    // Preconditions as for workOut. The truss must stay in place and unchanged while the task
    // lives. The shape may be shared with a working that has the same joints and members.
    WorkingTask(const Truss&, const LoadChoice&, const Solution&, std::shared_ptr<Shape> = {});
    ~WorkingTask();
    WorkingTask(WorkingTask&&) noexcept;
    WorkingTask& operator=(WorkingTask&&) noexcept;

    bool advance();
    [[nodiscard]] Progress progress() const; // members and reactions found, of all
    [[nodiscard]] Working take();            // once only. Precondition: advance() returned true

    void takeFirst(std::vector<JointId>); // as in workOutInOrder. Precondition: not advanced yet
    [[nodiscard]] std::optional<OutOfTurn> outOfTurn() const;

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace gusset
