#include "hand/exact_values.hpp"

namespace gusset {

ExactValues exactValuesOf(const Truss& truss, const LoadChoice& choice) {
    if (truss.classSettings.form != NumberForm::Exact ||
        truss.members.size() > kLargestExactWorking) {
        return {};
    }
    ExactSolution exact = solveExactly(truss, choice);
    if (!exact.solved) {
        return {};
    }
    return {std::move(exact.forces), std::move(exact.reactions)};
}

} // namespace gusset
