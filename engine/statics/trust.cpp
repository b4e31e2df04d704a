#include "statics/trust.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

int figuresOf(double error) {
    constexpr int kMost = 15; // that a double has
    if (!(error < 1)) {
        return 0;
    }
    return error > 0 ? std::min(kMost, static_cast<int>(std::floor(-std::log10(error)))) : kMost;
}

bool isCloseToMechanism(const Trust& trust) { return trust.amplification > kAmplified; }

} // namespace gusset
