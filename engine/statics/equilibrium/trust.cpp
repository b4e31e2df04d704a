#include "statics/equilibrium/trust.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

int figuresOf(double error) {
    constexpr int kMost = 15; // all that a double has
    if (!(error < 1)) {
        return 0;
    }
    return error > 0 ? std::min(kMost, static_cast<int>(std::floor(-std::log10(error)))) : kMost;
}

bool isCloseToMechanism(const Trust& trust) { return trust.amplification > kAmplified; }

bool isRounding(double error) { return error >= 1 / kSurelyRounding; }

bool isTrusted(const Trust& trust, double residual) {
    return trust.lost <= kTrusted && residual <= kResidual;
}

bool isUsable(const Trust& trust, double residual) {
    return trust.error <= kUsable && residual <= kResidual;
}

double zeroShareOf(const Trust& trust) { return std::max(workingZeroOf(trust), trust.error); }

double workingZeroOf(const Trust& trust) {
    // Close to a mechanism, the largest force is no measure of a small one: a load may be small
    // beside it.
    return isCloseToMechanism(trust) ? std::min(kZeroForce, kSurelyRounding * trust.error)
                                     : kZeroForce;
}

} // namespace gusset
