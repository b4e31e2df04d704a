#pragma once
// Sparse Gaussian elimination of a rectangular matrix that tells its rank. Pivots are chosen for
// little fill among the entries that are large enough in their row (H. M. Markowitz, Management
// Science 3 (1957) 255–269; threshold and short search as in I. S. Duff, A. M. Erisman, J. K. Reid,
// Direct Methods for Sparse Matrices, 1986, ch. 9–10). In a truss that the method of joints can
// solve, a pivot without fill is always at hand. The scalar is double here and a rational where
// answers are exact.
//
// Rows that come to nothing depend on the others: each gives a vector of the left null space (of
// the equilibrium matrix: a mechanism). Columns left without a pivot are free: each gives a vector
// of the right null space (a state of self-stress).

#include "core/tolerance.hpp"
#include "statics/pivot_search.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <utility>
#include <vector>

namespace gusset {

template <class Scalar>
struct SparseEntry {
    int index = 0; // of the column in a row, of the row in a column
    Scalar value{};
};
template <class Scalar>
using SparseLine = std::vector<SparseEntry<Scalar>>;

// How a scalar type decides what counts as zero and what may be a pivot; specialised for each type.
template <class Scalar>
struct PivotRule;

// Precondition: the entries of the matrix are of the order of 1, as those of unit vectors are.
template <>
struct PivotRule<double> {
    static double largest(const SparseLine<double>& line) {
        double result = 0;
        for (const SparseEntry<double>& entry : line) {
            result = std::max(result, std::abs(entry.value));
        }
        return result;
    }
    static bool negligible(const SparseLine<double>& row) { return largest(row) <= kRankPivot; }
    // The smallest size that a pivot of this row may have.
    static double threshold(const SparseLine<double>& row) { return kPivotShare * largest(row); }
    static bool acceptable(double value, double threshold) { return std::abs(value) >= threshold; }
    // What is left of a cancellation is rounding, and would only fill the matrix.
    static double difference(double a, double b) {
        const double result = a - b;
        return std::abs(result) <= kCancelled * (std::abs(a) + std::abs(b)) ? 0 : result;
    }
};

template <class Scalar>
struct PivotStep {
    int row = 0;
    int column = 0;
    Scalar pivot{};
    SparseLine<Scalar> below;  // multiples of the pivot row that other rows lost
    SparseLine<Scalar> beside; // the rest of the pivot row
};

template <class Scalar>
struct Factors {
    std::size_t rows = 0;
    std::size_t columns = 0;
    std::vector<PivotStep<Scalar>> steps; // as many as the rank
    std::vector<int> dependentRows;
    std::vector<int> freeColumns;
};

template <class Scalar>
class Elimination {
public:
    Elimination(std::vector<SparseLine<Scalar>> rows, std::size_t columns)
        : rows_(std::move(rows)), columns_(columns), place_(columns, -1),
          search_(rows_.size(), columns) {
        for (std::size_t i = 0; i < rows_.size(); ++i) {
            for (const SparseEntry<Scalar>& entry : rows_[i]) {
                columns_[static_cast<std::size_t>(entry.index)].push_back(static_cast<int>(i));
            }
        }
        factors_.rows = rows_.size();
        factors_.columns = columns_.size();
        for (std::size_t j = 0; j < columns_.size(); ++j) {
            search_.columns.insert(toInt(j), columns_[j].size());
        }
        for (std::size_t i = 0; i < rows_.size(); ++i) {
            search_.rows.insert(toInt(i), rows_[i].size());
            retireIfNothing(toInt(i));
        }
    }

    // Takes at most so many pivots; false when there are no more.
    bool advance(int pivots) {
        for (; pivots > 0; --pivots) {
            const Pivot pivot = next();
            if (pivot.row < 0) {
                return false;
            }
            step(pivot);
        }
        return true;
    }

    // Consumes the matrix. Precondition: advance() gave false.
    [[nodiscard]] Factors<Scalar> finish() {
        listFreeColumns();
        return std::move(factors_);
    }

private:
    static int toInt(std::size_t i) { return static_cast<int>(i); }
    SparseLine<Scalar>& row(int i) { return rows_[static_cast<std::size_t>(i)]; }
    std::vector<int>& column(int j) { return columns_[static_cast<std::size_t>(j)]; }
    int& place(int j) { return place_[static_cast<std::size_t>(j)]; }

    Pivot next() {
        return search_.next(
            [this](int j, auto&& offer) {
                for (int i : column(j)) {
                    offer(i, acceptable(i, j));
                }
            },
            [this](int i, auto&& offer) {
                const auto threshold = PivotRule<Scalar>::threshold(row(i));
                for (const SparseEntry<Scalar>& entry : row(i)) {
                    offer(entry.index, PivotRule<Scalar>::acceptable(entry.value, threshold));
                }
            });
    }

    bool acceptable(int i, int j) {
        for (const SparseEntry<Scalar>& entry : row(i)) {
            if (entry.index == j) {
                return PivotRule<Scalar>::acceptable(entry.value,
                                                     PivotRule<Scalar>::threshold(row(i)));
            }
        }
        return false;
    }

    void step(Pivot pivot) {
        PivotStep<Scalar> step;
        step.row = pivot.row;
        step.column = pivot.column;
        for (SparseEntry<Scalar>& entry : row(pivot.row)) {
            forget(entry.index, pivot.row);
            if (entry.index == pivot.column) {
                step.pivot = std::move(entry.value);
            } else {
                step.beside.push_back(std::move(entry));
            }
        }
        row(pivot.row).clear();
        search_.rows.remove(pivot.row);
        search_.columns.remove(pivot.column);
        const std::vector<int> below = std::move(column(pivot.column));
        column(pivot.column).clear();
        for (int i : below) {
            reduce(i, step);
        }
        factors_.steps.push_back(std::move(step));
    }

    // Takes the pivot row out of row i.
    void reduce(int i, PivotStep<Scalar>& step) {
        SparseLine<Scalar>& target = row(i);
        for (std::size_t k = 0; k < target.size(); ++k) {
            place(target[k].index) = toInt(k);
        }
        const Scalar factor =
            target[static_cast<std::size_t>(place(step.column))].value / step.pivot;
        for (const SparseEntry<Scalar>& entry : step.beside) {
            const int at = place(entry.index);
            if (at >= 0) {
                Scalar& value = target[static_cast<std::size_t>(at)].value;
                value = PivotRule<Scalar>::difference(value, factor * entry.value);
            } else {
                target.push_back({entry.index, -(factor * entry.value)});
                column(entry.index).push_back(i);
                search_.columns.change(entry.index, column(entry.index).size());
            }
        }
        for (const SparseEntry<Scalar>& entry : target) {
            place(entry.index) = -1;
        }
        std::erase_if(target, [&](const SparseEntry<Scalar>& entry) {
            if (entry.index == step.column) {
                return true;
            }
            if (entry.value != Scalar(0)) {
                return false;
            }
            forget(entry.index, i);
            return true;
        });
        step.below.push_back({i, factor});
        search_.rows.change(i, target.size());
        retireIfNothing(i);
    }

    // Row i no longer has an entry in column j.
    void forget(int j, int i) {
        std::vector<int>& rows = column(j);
        for (int& candidate : rows) {
            if (candidate != i) {
                continue;
            }
            candidate = rows.back();
            rows.pop_back();
            break;
        }
        search_.columns.change(j, rows.size());
    }

    void retireIfNothing(int i) {
        if (!PivotRule<Scalar>::negligible(row(i))) {
            return;
        }
        for (const SparseEntry<Scalar>& entry : row(i)) {
            forget(entry.index, i);
        }
        row(i).clear();
        search_.rows.remove(i);
        factors_.dependentRows.push_back(i);
    }

    void listFreeColumns() {
        std::vector<char> taken(columns_.size(), 0);
        for (const PivotStep<Scalar>& step : factors_.steps) {
            taken[static_cast<std::size_t>(step.column)] = 1;
        }
        for (std::size_t j = 0; j < taken.size(); ++j) {
            if (!taken[j]) {
                factors_.freeColumns.push_back(toInt(j));
            }
        }
    }

    std::vector<SparseLine<Scalar>> rows_;  // what is left of them
    std::vector<std::vector<int>> columns_; // the rows that have an entry there
    std::vector<int> place_;                // of a column's entry in the row being reduced, or −1
    PivotSearch search_;
    Factors<Scalar> factors_;
};

template <class Scalar>
[[nodiscard]] Factors<Scalar> eliminate(std::vector<SparseLine<Scalar>> rows, std::size_t columns) {
    Elimination<Scalar> elimination(std::move(rows), columns);
    while (elimination.advance(std::numeric_limits<int>::max())) {
    }
    return elimination.finish();
}

// The solution of A·x = right with free unknowns at zero. `right` keeps, at the dependent rows,
// what no x can balance: zero when there is a solution.
template <class Scalar>
[[nodiscard]] std::vector<Scalar> solveReduced(const Factors<Scalar>& factors,
                                               std::vector<Scalar>& right) {
    for (const PivotStep<Scalar>& step : factors.steps) {
        const Scalar known = right[static_cast<std::size_t>(step.row)];
        if (known == Scalar(0)) {
            continue;
        }
        for (const SparseEntry<Scalar>& entry : step.below) {
            right[static_cast<std::size_t>(entry.index)] -= entry.value * known;
        }
    }
    std::vector<Scalar> solution(factors.columns, Scalar(0));
    for (auto step = factors.steps.rbegin(); step != factors.steps.rend(); ++step) {
        Scalar sum = right[static_cast<std::size_t>(step->row)];
        for (const SparseEntry<Scalar>& entry : step->beside) {
            sum -= entry.value * solution[static_cast<std::size_t>(entry.index)];
        }
        solution[static_cast<std::size_t>(step->column)] = sum / step->pivot;
    }
    return solution;
}

// v with vᵀ·A = right, of a matrix whose columns are all independent; 0 at the dependent rows.
template <class Scalar>
[[nodiscard]] std::vector<Scalar> solveTransposed(const Factors<Scalar>& factors,
                                                  std::vector<Scalar> right) {
    std::vector<Scalar> vector(factors.rows, Scalar(0));
    for (const PivotStep<Scalar>& step : factors.steps) {
        const Scalar value = right[static_cast<std::size_t>(step.column)] / step.pivot;
        vector[static_cast<std::size_t>(step.row)] = value;
        for (const SparseEntry<Scalar>& entry : step.beside) {
            right[static_cast<std::size_t>(entry.index)] -= entry.value * value;
        }
    }
    for (auto step = factors.steps.rbegin(); step != factors.steps.rend(); ++step) {
        for (const SparseEntry<Scalar>& entry : step->below) {
            vector[static_cast<std::size_t>(step->row)] -=
                entry.value * vector[static_cast<std::size_t>(entry.index)];
        }
    }
    return vector;
}

// v with vᵀ·A = 0, 1 at the given dependent row and 0 at the others.
template <class Scalar>
[[nodiscard]] std::vector<Scalar> leftNullVector(const Factors<Scalar>& factors, int dependentRow) {
    std::vector<Scalar> vector(factors.rows, Scalar(0));
    vector[static_cast<std::size_t>(dependentRow)] = Scalar(1);
    for (auto step = factors.steps.rbegin(); step != factors.steps.rend(); ++step) {
        Scalar sum(0);
        for (const SparseEntry<Scalar>& entry : step->below) {
            sum -= entry.value * vector[static_cast<std::size_t>(entry.index)];
        }
        vector[static_cast<std::size_t>(step->row)] = sum;
    }
    return vector;
}

// x with A·x = 0, 1 at the given free column and 0 at the others.
template <class Scalar>
[[nodiscard]] std::vector<Scalar> rightNullVector(const Factors<Scalar>& factors, int freeColumn) {
    std::vector<Scalar> vector(factors.columns, Scalar(0));
    vector[static_cast<std::size_t>(freeColumn)] = Scalar(1);
    for (auto step = factors.steps.rbegin(); step != factors.steps.rend(); ++step) {
        Scalar sum(0);
        for (const SparseEntry<Scalar>& entry : step->beside) {
            sum -= entry.value * vector[static_cast<std::size_t>(entry.index)];
        }
        vector[static_cast<std::size_t>(step->column)] = sum / step->pivot;
    }
    return vector;
}

} // namespace gusset
