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

// What the elimination must know of a scalar type; specialised for each.
template <class Scalar>
struct PivotRule;

// Precondition: the entries of the matrix are of the order of 1, as those of unit vectors are.
template <>
struct PivotRule<double> {
    static double sizeOf(double value) { return std::abs(value); }
    static constexpr double kNothing = kRankPivot; // a row without a larger entry depends on others
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
    using Rule = PivotRule<Scalar>;

    Elimination(std::vector<SparseLine<Scalar>> rows, std::size_t columns)
        : rows_(std::move(rows)), largest_(rows_.size(), 0), columns_(columns),
          search_(rows_.size(), columns) {
        for (std::size_t i = 0; i < rows_.size(); ++i) {
            for (std::size_t k = 0; k < rows_[i].size(); ++k) {
                column(rows_[i][k].index).push_back({toInt(i), toInt(k)});
            }
        }
        factors_.rows = rows_.size();
        factors_.columns = columns_.size();
        for (std::size_t j = 0; j < columns_.size(); ++j) {
            search_.columns.insert(toInt(j), columns_[j].size());
        }
        for (std::size_t i = 0; i < rows_.size(); ++i) {
            measure(toInt(i));
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
    struct Place { // of an entry of a column
        int row = 0;
        int at = 0; // in the row
    };

    static int toInt(std::size_t i) { return static_cast<int>(i); }
    SparseLine<Scalar>& row(int i) { return rows_[static_cast<std::size_t>(i)]; }
    Scalar& value(Place place) { return row(place.row)[static_cast<std::size_t>(place.at)].value; }
    std::vector<Place>& column(int j) { return columns_[static_cast<std::size_t>(j)]; }
    double& largest(int i) { return largest_[static_cast<std::size_t>(i)]; }

    void measure(int i) {
        largest(i) = 0;
        for (const SparseEntry<Scalar>& entry : row(i)) {
            largest(i) = std::max(largest(i), Rule::sizeOf(entry.value));
        }
    }

    bool acceptable(const Scalar& value, int i) {
        return Rule::sizeOf(value) >= kPivotShare * largest(i);
    }

    Pivot next() {
        return search_.next(
            [this](int j, auto&& offer) {
                for (const Place place : column(j)) {
                    offer(place.row, acceptable(value(place), place.row));
                }
            },
            [this](int i, auto&& offer) {
                measure(i); // what was largest may have shrunk, and one entry must be acceptable
                for (const SparseEntry<Scalar>& entry : row(i)) {
                    offer(entry.index, acceptable(entry.value, i));
                }
            });
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
        const std::vector<Place> below = std::move(column(pivot.column));
        column(pivot.column).clear();
        for (const Place place : below) {
            reduce(place, step);
        }
        factors_.steps.push_back(std::move(step));
    }

    // Takes the pivot row out of the row that has an entry of the pivot column at `place`. Costs as
    // much as the pivot row is long, however long the other is.
    void reduce(Place place, PivotStep<Scalar>& step) {
        const int i = place.row;
        const Scalar factor = value(place) / step.pivot;
        drop(place);
        for (const SparseEntry<Scalar>& entry : step.beside) {
            subtract(i, entry.index, factor * entry.value);
        }
        step.below.push_back({i, factor});
        search_.rows.change(i, row(i).size());
        retireIfNothing(i);
    }

    void subtract(int i, int j, const Scalar& change) {
        Place* place = find(j, i);
        if (!place) {
            column(j).push_back({i, toInt(row(i).size())});
            row(i).push_back({j, -change});
            largest(i) = std::max(largest(i), Rule::sizeOf(change));
            search_.columns.change(j, column(j).size());
            return;
        }
        Scalar& old = value(*place);
        old = Rule::difference(old, change);
        largest(i) = std::max(largest(i), Rule::sizeOf(old));
        if (old == Scalar(0)) {
            drop(*place);
            forget(j, i);
        }
    }

    Place* find(int j, int i) {
        for (Place& place : column(j)) {
            if (place.row == i) {
                return &place;
            }
        }
        return nullptr;
    }

    // Takes an entry out of its row; its column is left to the caller.
    void drop(Place place) {
        SparseLine<Scalar>& line = row(place.row);
        if (place.at + 1 < toInt(line.size())) {
            find(line.back().index, place.row)->at = place.at;
            line[static_cast<std::size_t>(place.at)] = std::move(line.back());
        }
        line.pop_back();
    }

    // Row i no longer has an entry in column j.
    void forget(int j, int i) {
        std::vector<Place>& places = column(j);
        if (Place* place = find(j, i)) {
            *place = places.back();
            places.pop_back();
            search_.columns.change(j, places.size());
        }
    }

    void retireIfNothing(int i) {
        for (const SparseEntry<Scalar>& entry : row(i)) {
            if (Rule::sizeOf(entry.value) > Rule::kNothing) {
                return;
            }
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

    std::vector<SparseLine<Scalar>> rows_;    // what is left of them
    std::vector<double> largest_;             // of each row; may be too large, never too small
    std::vector<std::vector<Place>> columns_; // where they have entries
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
