#include "hand/paper/exact_values.hpp"

namespace gusset {

ExactValuesTask::ExactValuesTask(const Truss& truss, const LoadChoice& choice) {
    if (truss.classSettings.form == NumberForm::Exact &&
        truss.members.size() <= kLargestExactWorking) {
        task_.emplace(truss, choice);
    }
}

bool ExactValuesTask::advance() { return !task_ || task_->advance(); }

ExactValues ExactValuesTask::take() {
    if (!task_ || !task_->result().solved) {
        return {};
    }
    return {task_->result().forces, task_->result().reactions};
}

ExactValues exactValuesOf(const Truss& truss, const LoadChoice& choice) {
    ExactValuesTask task(truss, choice);
    return runToEnd(task).take();
}

} // namespace gusset
