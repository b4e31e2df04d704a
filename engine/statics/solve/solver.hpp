#pragma once
// solve() for a truss that changes little between calls, as in a drag: what the last call found out
// about names, pivots, orders and patterns is reused while only numbers change.

#include "model/validate/recheck.hpp"
#include "statics/solve/analysis.hpp"

namespace gusset {

class Solver {
public:
    // The result of solve(). If there are more redundants than are shown, others may be shown.
    [[nodiscard]] Solution solve(const Truss&, const LoadChoice& = {});

private:
    Checked checked_;
    Analysis analysis_; // of the last truss without errors
};

} // namespace gusset
