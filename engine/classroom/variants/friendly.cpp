#include "classroom/variants/friendly.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>

namespace gusset {

namespace {

constexpr std::int64_t kLargestMultiple = 1'000'000;

bool include(const Surd& answer, std::int64_t parts, std::int64_t& multiple) {
    if (answer.numerator == "0") {
        return true;
    }
    if (answer.radicand != "1" || answer.denominator.size() > 7) {
        return false;
    }
    const std::int64_t denominator = std::stoll(answer.denominator);
    const std::int64_t left = denominator / std::gcd(denominator, parts);
    multiple = std::lcm(multiple, left);
    return multiple <= kLargestMultiple;
}

} // namespace

std::optional<std::int64_t> friendlyMultiple(const ExactSolution& exact,
                                             const std::vector<MemberId>& asked, int decimals) {
    const std::int64_t parts = decimals == 0 ? 1 : 10;
    std::int64_t multiple = 1;
    bool fits = true;
    for (const Surd& reaction : exact.reactions) {
        fits = fits && include(reaction, parts, multiple);
    }
    for (std::size_t i = 0; i < exact.forces.size(); ++i) {
        const MemberId member{static_cast<int>(i)};
        const bool counts =
            asked.empty() || std::find(asked.begin(), asked.end(), member) != asked.end();
        fits = fits && (!counts || include(exact.forces[i], parts, multiple));
    }
    return fits ? std::optional(multiple) : std::nullopt;
}

bool areFriendly(const ExactSolution& exact, const std::vector<MemberId>& asked, int decimals) {
    return exact.solved && friendlyMultiple(exact, asked, decimals) == 1;
}

bool isMultiple(double number, double step) {
    constexpr double kRounding = 1e-6; // of a step: far above that of a few operations
    const double times = number / step;
    return std::fabs(times - std::round(times)) < kRounding;
}

bool sharesEqually(const Truss& truss, const ExactSolution& exact) {
    if (truss.supports.size() != 2) {
        return false;
    }
    const Surd& a = exact.jointReactions[truss.supports[0].joint.at()].y;
    const Surd& b = exact.jointReactions[truss.supports[1].joint.at()].y;
    return a.numerator == b.numerator && a.denominator == b.denominator && a.numerator != "0";
}

} // namespace gusset
