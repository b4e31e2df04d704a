#pragma once
// How far numbers can be trusted. Bounds of the error by rounding, in the manner of M. Arioli,
// J. W. Demmel, I. S. Duff, Solving sparse linear systems with sparse backward error, SIAM J.
// Matrix Anal. Appl. 10 (1989) 165–190: ‖ |A⁻¹|·(|residual| + what rounding may have changed) ‖,
// estimated by a few solves (statics/matrix/norm_estimate). What rounding changes is counted entry
// by entry, so that forces are not called doubtful because members differ in stiffness, where they
// are not.

#include "core/ids.hpp"

namespace gusset {

struct Trust {
    double condition = 0; // how many times a relative change in the last place of what is given
                          // (loads, coordinates, stiffnesses) comes back in the forces
    double error = 0;     // bound of the error of any force or reaction over the largest
    double displacementError = 0; // of any displacement over the largest; 0 where not judged
    double lost = 0; // the part of the larger of both that wider arithmetic would win back; of a
                     // stiffness solution whose errors are above kTrusted, else 0
    // The largest force that a load of 1 at one joint was found to cause, where, and in which
    // member (not valid: in a reaction), whatever the loads are. Sought only where there may be one
    // that tells of a mechanism nearby, else 0.
    double amplification = 0;
    JointId joint;
    MemberId member;
    bool wide = false; // solved with 106 bits
};

// Significant figures that the largest number keeps when any may be this far off it: 0 … 15.
[[nodiscard]] int figuresOf(double error);

// Whether small changes of the shape of the truss change its forces without bounds.
[[nodiscard]] bool isCloseToMechanism(const Trust&);

// What is off by such a share of itself is nothing but rounding.
[[nodiscard]] bool isRounding(double error);

// Good enough in the width that it was solved in (wider arithmetic would win nothing back that
// counts), and good enough to be given, with such a lack of equilibrium.
[[nodiscard]] bool isTrusted(const Trust&, double residual);
[[nodiscard]] bool isUsable(const Trust&, double residual);

// A force that is smaller than this share of the largest is zero: to working accuracy, or because
// rounding may have put it off by as much.
[[nodiscard]] double zeroShareOf(const Trust&);
[[nodiscard]] double workingZeroOf(const Trust&); // for the first of these reasons

} // namespace gusset
