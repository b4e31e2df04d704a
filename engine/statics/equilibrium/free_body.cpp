#include "statics/equilibrium/free_body.hpp"

#include "core/index.hpp"
#include "core/tolerance.hpp"
#include "statics/equilibrium/equilibrium.hpp"
#include "statics/matrix/elimination.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {

namespace {

constexpr std::size_t kFewSupports = 16; // up to here, one solution for each is faster

using Row = std::vector<double>;

// The restraints whose columns have a pivot.
std::vector<std::size_t> neededRestraints(const Structure& structure,
                                          const Factors<double>& factors) {
    std::vector<std::size_t> needed;
    for (const PivotStep<double>& step : factors.steps) {
        const auto column = static_cast<std::size_t>(step.column);
        if (column >= structure.bars.size()) {
            needed.push_back(column);
        }
    }
    return needed;
}

// Moves the truss by 1 at one needed restraint, with all other needed restraints and the members
// with a pivot kept rigid, and returns how much the members without a pivot change length, relative
// to the fastest joint.
Row stretchesOf(const Structure& structure, const Factors<double>& factors, std::size_t restraint) {
    Row right(factors.columns, 0);
    right[restraint] = 1;
    const Row velocities = solveTransposed(factors, right);
    double fastest = 0;
    for (double velocity : velocities) {
        fastest = std::max(fastest, std::abs(velocity));
    }
    Row stretches;
    for (int column : factors.freeColumns) {
        if (static_cast<std::size_t>(column) < structure.bars.size()) {
            stretches.push_back(right[static_cast<std::size_t>(column)] / fastest);
        }
    }
    return stretches;
}

std::size_t placeOfLargest(const Row& row) {
    const auto smaller = [](double a, double b) { return std::abs(a) < std::abs(b); };
    return static_cast<std::size_t>(std::max_element(row.begin(), row.end(), smaller) -
                                    row.begin());
}

// The rank, by elimination with full pivoting.
int rankOf(std::vector<Row> rows) {
    int rank = 0;
    while (!rows.empty() && !rows.front().empty()) {
        std::size_t best = 0;
        for (std::size_t i = 1; i < rows.size(); ++i) {
            const double size = std::abs(rows[i][placeOfLargest(rows[i])]);
            best = size > std::abs(rows[best][placeOfLargest(rows[best])]) ? i : best;
        }
        std::swap(rows[best], rows.back());
        const Row pivotRow = std::move(rows.back());
        rows.pop_back();
        const std::size_t column = placeOfLargest(pivotRow);
        if (std::abs(pivotRow[column]) <= kRankPivot) {
            break;
        }
        for (Row& row : rows) {
            const double factor = row[column] / pivotRow[column];
            for (std::size_t j = 0; factor != 0 && j < row.size(); ++j) {
                row[j] -= factor * pivotRow[j];
            }
        }
        ++rank;
    }
    return rank;
}

int motionsByElimination(Structure structure) {
    structure.restraints.clear();
    const std::size_t rank = eliminate(equilibriumMatrix(structure)).steps.size();
    return toInt(2 * structure.joints.size() - rank);
}

} // namespace

// A motion without supports is a combination of those of the whole truss and those from moving a
// needed restraint, in which no member changes length.
int motionsWithoutSupports(const Structure& structure, const Factors<double>& factors) {
    const std::vector<std::size_t> needed = neededRestraints(structure, factors);
    const int motions = toInt(factors.dependentRows.size() + needed.size());
    if (motions == 3) { // no body has fewer
        return motions;
    }
    if (needed.size() > kFewSupports) {
        return motionsByElimination(structure);
    }
    std::vector<Row> rows;
    for (std::size_t restraint : needed) {
        rows.push_back(stretchesOf(structure, factors, restraint));
    }
    return motions - rankOf(std::move(rows));
}

} // namespace gusset
