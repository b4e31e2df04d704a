#include "report/results/added_up.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr int kMostAddedDecimals = 15;

NumberStyle decimalStyle(int decimals, char sign = '.') {
    return {.form = NumberForm::Decimals, .digits = decimals, .decimalSign = sign};
}

// The place of the first figure: 2 for 123.4, −3 for 0.001234.
int placeOf(double value) { return static_cast<int>(std::floor(std::log10(std::fabs(value)))); }

// As a reader rounds: half a unit away from zero.
std::string roundedByHand(double sum, int decimals) {
    constexpr double kCrumb = 1e-6; // of a unit: more than the error of binary addition
    const double crumb = std::copysign(kCrumb * std::pow(10.0, -decimals), sum);
    return formatNumber(sum + crumb, decimalStyle(decimals));
}

} // namespace

int decimalsOf(double value, const NumberStyle& style, int fewest) {
    if (value == 0 || !std::isfinite(value)) {
        return style.form == NumberForm::Significant ? 0 : style.digits;
    }
    const int figures = style.form == NumberForm::Significant ? style.digits : fewest;
    const int needed = std::clamp(figures - 1 - placeOf(value), 0, kMostAddedDecimals);
    return style.form == NumberForm::Significant ? needed : std::max(style.digits, needed);
}

std::string withDecimals(double value, int decimals, const NumberStyle& style) {
    return formatNumber(value, decimalStyle(decimals, style.decimalSign));
}

double sumOfPrinted(const std::vector<double>& parts, int decimals) {
    double sum = 0;
    for (const double part : parts) {
        sum += roundedTo(part, decimalStyle(decimals));
    }
    return roundedTo(sum, decimalStyle(decimals)); // without the crumbs of binary addition
}

int decimalsThatAddUp(const std::vector<double>& parts, double sum, int decimals) {
    constexpr int kMostMore = 4;
    const std::string wanted = formatNumber(sum, decimalStyle(decimals));
    int more = 0;
    while (more < kMostMore &&
           roundedByHand(sumOfPrinted(parts, decimals + more), decimals) != wanted) {
        ++more;
    }
    return decimals + more;
}

bool areWrittenInFull(const std::vector<double>& parts, int decimals) {
    return std::all_of(parts.begin(), parts.end(),
                       [&](double part) { return isWrittenInFull(part, decimalStyle(decimals)); });
}

} // namespace gusset
