#include "design/column.hpp"

#include <cmath>
#include <numbers>

namespace gusset {

namespace {

constexpr double kPlateau = 0.2; // λ̄ up to which buckling is ignored

// By its series, as the standard libraries of the browser and of native builds differ in the last
// bit of pow. The exponent is between 0 and 2.25.
double powerOf0658(double exponent) {
    constexpr double kLogarithm = -0.4185503476568198; // ln 0.658
    const double x = kLogarithm * exponent;
    double sum = 1;
    double term = 1;
    for (int n = 1; n <= 24; ++n) {
        term *= x / n;
        sum += term;
    }
    return sum;
}

} // namespace

double elasticStress(double modulus, double slenderness) {
    return std::numbers::pi * std::numbers::pi * modulus / (slenderness * slenderness);
}

double imperfectionOf(BucklingCurve curve) {
    switch (curve) {
    case BucklingCurve::A0:
        return 0.13;
    case BucklingCurve::A:
        return 0.21;
    case BucklingCurve::B:
        return 0.34;
    case BucklingCurve::C:
        return 0.49;
    case BucklingCurve::D:
        break;
    }
    return 0.76;
}

BucklingReduction bucklingReduction(BucklingCurve curve, double relative) {
    const double alpha = imperfectionOf(curve);
    const double phi = 0.5 * (1 + alpha * (relative - kPlateau) + relative * relative);
    BucklingReduction reduction{relative, alpha, phi};
    if (relative > kPlateau) {
        reduction.chi = 1 / (phi + std::sqrt(phi * phi - relative * relative));
    }
    return reduction;
}

TimberReduction timberReduction(double betaC, double relative) {
    constexpr double kShort = 0.3; // λ_rel up to which buckling is ignored
    TimberReduction reduction{relative,
                              0.5 * (1 + betaC * (relative - kShort) + relative * relative), 1};
    if (relative > kShort) {
        const double k = reduction.k;
        reduction.kc = 1 / (k + std::sqrt(k * k - relative * relative));
    }
    return reduction;
}

double slendernessOfPair(double slenderness, double spacing, double single) {
    constexpr double kClose = 40; // a/r_i up to which the two act as one
    constexpr double kAnglesBackToBack = 0.5;
    const double between = spacing / single;
    if (between <= kClose) {
        return slenderness;
    }
    const double own = kAnglesBackToBack * between;
    return std::sqrt(slenderness * slenderness + own * own);
}

CriticalStress criticalStress(double yield, double elastic) {
    constexpr double kLimit = 2.25; // (4.71/π)², rounded as in the standard
    const double ratio = yield / elastic;
    if (ratio > kLimit) {
        return {true, 0.877 * elastic};
    }
    return {false, powerOf0658(ratio) * yield};
}

} // namespace gusset
