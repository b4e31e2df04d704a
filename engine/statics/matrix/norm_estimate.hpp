#pragma once
// The 1-norm of a matrix known only by its products, such as an inverse given by factors. W. W.
// Hager, Condition estimates, SIAM J. Sci. Stat. Comput. 5 (1984) 311–316, with the safeguards of
// N. J. Higham, FORTRAN codes for estimating the one-norm of a real or complex matrix, ACM Trans.
// Math. Software 14 (1988) 381–396. The estimate is a lower bound, and in practice within a factor
// of three.

#include <cmath>
#include <cstddef>
#include <vector>

namespace gusset {

struct NormEstimate {
    double norm = 0;
    std::size_t column = 0; // that attains it, if one does
};

namespace norm_estimate {

[[nodiscard]] inline double sumOf(const std::vector<double>& v) {
    double sum = 0;
    for (const double value : v) {
        sum += std::abs(value);
    }
    return sum;
}
[[nodiscard]] inline std::size_t largestAt(const std::vector<double>& v) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < v.size(); ++i) {
        best = std::abs(v[i]) > std::abs(v[best]) ? i : best;
    }
    return best;
}
// Higham's last probe, for matrices that defeat the iteration.
[[nodiscard]] inline std::vector<double> alternating(std::size_t count) {
    std::vector<double> x(count);
    for (std::size_t i = 0; i < count; ++i) {
        const double grows = 1 + static_cast<double>(i) / static_cast<double>(count - 1);
        x[i] = i % 2 == 0 ? grows : -grows;
    }
    return x;
}

} // namespace norm_estimate

// times(x) gives B·x and transposed(y) gives Bᵀ·y, each as a new vector; B has `columns` columns.
// The search starts with the mean of all columns; starting with one that is likely to be the
// largest takes fewer steps.
inline constexpr std::size_t kAllColumns = static_cast<std::size_t>(-1);
template <class Times, class Transposed>
[[nodiscard]] NormEstimate estimateNorm(std::size_t columns, Times times, Transposed transposed,
                                        std::size_t start = kAllColumns) {
    constexpr int kRounds = 4; // Higham: more than two are rare
    namespace ne = norm_estimate;
    NormEstimate best;
    if (columns == 0) {
        return best;
    }
    const bool fromAll = start >= columns;
    std::vector<double> x(columns, fromAll ? 1 / static_cast<double>(columns) : 0);
    std::size_t column = fromAll ? 0 : start;
    if (!fromAll) {
        x[start] = 1;
    }
    for (int round = 0; round < kRounds; ++round) {
        std::vector<double> y = times(x);
        const double norm = ne::sumOf(y);
        if (round > 0 && !(norm > best.norm)) {
            break;
        }
        best = {norm, column};
        for (double& value : y) {
            value = value < 0 ? -1 : 1;
        }
        const std::vector<double> z = transposed(y);
        const std::size_t next = ne::largestAt(z);
        double here = 0;
        for (std::size_t i = 0; i < columns; ++i) {
            here += z[i] * x[i];
        }
        if (round == 0 && fromAll) {
            best.column = next;
        } else if (std::abs(z[next]) <= here) {
            break;
        }
        column = next;
        x.assign(columns, 0);
        x[column] = 1;
    }
    if (columns > 1) {
        const double other =
            2 * ne::sumOf(times(ne::alternating(columns))) / (3 * static_cast<double>(columns));
        best.norm = other > best.norm ? other : best.norm;
    }
    return best;
}

} // namespace gusset
