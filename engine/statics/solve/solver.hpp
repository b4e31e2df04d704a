#pragma once
// solve() for a truss that changes little from one call to the next, as in a drag: what the last
// call learned of names, pivots, orders and patterns is used again while only numbers change.

#include "model/validate/recheck.hpp"
#include "statics/solve/analysis.hpp"

namespace gusset {

class Solver {
public:
    // What solve() gives. Of more redundants than are shown, others may be.
    [[nodiscard]] Solution solve(const Truss&, const LoadChoice& = {});

private:
    Checked checked_;
    Analysis analysis_; // of the last truss without errors
};

} // namespace gusset
