#include "classroom/marking/solving.hpp"

#include "classroom/marking/free_bodies.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {

bool eliminate(Rows& rows) {
    for (std::size_t c = 0; c < rows.size(); ++c) {
        std::size_t pivot = c;
        for (std::size_t r = c; r < rows.size(); ++r) {
            pivot = std::abs(rows[r][c]) > std::abs(rows[pivot][c]) ? r : pivot;
        }
        std::swap(rows[c], rows[pivot]);
        if (std::abs(rows[c][c]) < kNoShare) {
            return false;
        }
        const double by = rows[c][c];
        for (double& entry : rows[c]) {
            entry /= by;
        }
        for (std::size_t r = 0; r < rows.size(); ++r) {
            const double times = r == c ? 0 : rows[r][c];
            for (std::size_t k = 0; times != 0 && k < rows[r].size(); ++k) {
                rows[r][k] -= times * rows[c][k];
            }
        }
    }
    return true;
}

std::size_t rankOf(Rows rows) {
    std::size_t rank = 0;
    for (std::size_t c = 0; !rows.empty() && c < rows[0].size() && rank < rows.size(); ++c) {
        const auto pivot = std::max_element(
            rows.begin() + static_cast<std::ptrdiff_t>(rank), rows.end(),
            [&](const auto& a, const auto& b) { return std::abs(a[c]) < std::abs(b[c]); });
        if (std::abs((*pivot)[c]) < kNoShare) {
            continue;
        }
        std::swap(rows[rank], *pivot);
        for (std::size_t r = rank + 1; r < rows.size(); ++r) {
            const double times = rows[r][c] / rows[rank][c];
            for (std::size_t k = c; k < rows[r].size(); ++k) {
                rows[r][k] -= times * rows[rank][k];
            }
        }
        ++rank;
    }
    return rank;
}

} // namespace gusset
