#pragma once
// How far numbers can be trusted: bounds on the rounding error, after M. Arioli, J. W. Demmel, I.
// S. Duff, Solving sparse linear systems with sparse backward error, SIAM J. Matrix Anal. Appl. 10
// (1989) 165–190: ‖ |A⁻¹|·(|residual| + what rounding may have changed) ‖, estimated by a few
// solves (statics/matrix/norm_estimate). The changes are counted entry by entry, so that forces are
// not reported as doubtful merely because members differ in stiffness.

#include "core/ids.hpp"

namespace gusset {

struct Trust {
    double condition = 0; // factor by which a relative change in the last place of the input
                          // (loads, coordinates, stiffnesses) is amplified in the forces
    double error = 0;     // bound on the error of any force or reaction relative to the largest
    double displacementError = 0; // of any displacement relative to the largest; 0 if not judged
    double lost = 0; // the part of the larger of both that wider arithmetic would avoid; for a
                     // stiffness solution whose errors are above kTrusted, else 0
    // The largest force found that a load of 1 at one joint causes, with that joint and the member
    // (not valid: it is a reaction), whatever the loads are. Computed only where it may reveal a
    // nearby mechanism, else 0.
    double amplification = 0;
    JointId joint;
    MemberId member;
    bool wide = false; // solved with 106 bits
};

// Significant figures of the largest number when any may be this far off relative to it: 0 … 15.
[[nodiscard]] int figuresOf(double error);

// Whether small changes of the shape of the truss change its forces without bound.
[[nodiscard]] bool isCloseToMechanism(const Trust&);

// A number with this relative error is nothing but rounding.
[[nodiscard]] bool isRounding(double error);

// Accurate enough in the precision used (wider arithmetic would make no difference that matters),
// and accurate enough to be reported, with this residual.
[[nodiscard]] bool isTrusted(const Trust&, double residual);
[[nodiscard]] bool isUsable(const Trust&, double residual);

// A force smaller than this fraction of the largest is zero: to working accuracy, or because it is
// within its rounding error.
[[nodiscard]] double zeroShareOf(const Trust&);
[[nodiscard]] double workingZeroOf(const Trust&); // for the first of these reasons

} // namespace gusset
