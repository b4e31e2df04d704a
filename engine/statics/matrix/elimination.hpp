#pragma once
// Rank-revealing sparse Gaussian elimination of a rectangular matrix. Pivots are chosen for little
// fill among the entries that are large enough in their row (H. M. Markowitz, Management Science 3
// (1957) 255–269; threshold and short search as in I. S. Duff, A. M. Erisman, J. K. Reid, Direct
// Methods for Sparse Matrices, 1986, ch. 9–10). In a truss that the method of joints can solve,
// there is always a pivot without fill. The scalar is double here, and a rational where answers are
// exact.
//
// Rows reduced to zero depend on the others: each gives a vector of the left null space (for the
// equilibrium matrix, a mechanism). Columns left without a pivot are free: each gives a vector of
// the right null space (a state of self-stress).

#include "core/progress.hpp"
#include "core/tolerance.hpp"
#include "statics/matrix/factors.hpp"
#include "statics/matrix/line_pool.hpp"
#include "statics/matrix/pivot_search.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <utility>
#include <vector>

namespace gusset {

// What the elimination needs to know of a scalar type; specialised for each.
template <class Scalar>
struct PivotRule;

// Precondition: the entries of the matrix are of order 1, like those of unit vectors.
template <>
struct PivotRule<double> {
    static double sizeOf(double value) { return std::abs(value); }
    static constexpr double kNothing = kRankPivot; // a row without a larger entry depends on others
    // What remains after cancellation is rounding error, and would only cause fill.
    static double difference(double a, double b) {
        const double result = a - b;
        return std::abs(result) <= kCancelled * (std::abs(a) + std::abs(b)) ? 0 : result;
    }
};

template <class Scalar>
class Elimination {
public:
    using Rule = PivotRule<Scalar>;

    explicit Elimination(SparseMatrix<Scalar> matrix)
        : rows_(sizesOf(matrix, matrix.rows, &MatrixEntry<Scalar>::row)), largest_(matrix.rows, 0),
          columns_(sizesOf(matrix, matrix.columns, &MatrixEntry<Scalar>::column)),
          search_(matrix.rows, matrix.columns) {
        factors_.rows = matrix.rows;
        factors_.columns = matrix.columns;
        factors_.steps.reserve(std::min(matrix.rows, matrix.columns));
        factors_.below.reserve(matrix.entries.size() / 2);
        factors_.beside.reserve(matrix.entries.size());
        for (MatrixEntry<Scalar>& entry : matrix.entries) {
            if (entry.value != Scalar(0)) {
                columns_.push(entry.column, {entry.row, rows_.size(entry.row)});
                rows_.push(entry.row, {entry.column, std::move(entry.value)});
            }
        }
        for (int j = 0; j < columns_.count(); ++j) {
            search_.columns.insert(j, columns_.size(j));
        }
        for (int i = 0; i < rows_.count(); ++i) {
            measure(i);
            search_.rows.insert(i, rows_.size(i));
            retireIfNothing(i);
        }
    }

    // Takes at most this many pivots; false when there are no more.
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

    [[nodiscard]] Progress progress() const {
        return {factors_.steps.size(), std::min(factors_.rows, factors_.columns)};
    }

    // Consumes the matrix. Precondition: advance() returned false.
    [[nodiscard]] Factors<Scalar> finish() {
        listFreeColumns();
        return std::move(factors_);
    }

private:
    struct Place { // of an entry of a column
        int row = 0;
        int at = 0; // in the row
    };

    static std::vector<int> sizesOf(const SparseMatrix<Scalar>& matrix, std::size_t lines,
                                    int MatrixEntry<Scalar>::*line) {
        std::vector<int> sizes(lines, 0);
        for (const MatrixEntry<Scalar>& entry : matrix.entries) {
            sizes[static_cast<std::size_t>(entry.*line)] += entry.value != Scalar(0) ? 1 : 0;
        }
        return sizes;
    }

    LineView<SparseEntry<Scalar>> row(int i) { return {rows_.begin(i), rows_.end(i)}; }
    LineView<Place> column(int j) { return {columns_.begin(j), columns_.end(j)}; }
    Scalar& value(Place place) { return rows_.begin(place.row)[place.at].value; }
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
                measure(i); // the largest may have shrunk, and one entry must be acceptable
                for (const SparseEntry<Scalar>& entry : row(i)) {
                    offer(entry.index, acceptable(entry.value, i));
                }
            });
    }

    void step(Pivot pivot) {
        PivotStep<Scalar> step;
        step.row = pivot.row;
        step.column = pivot.column;
        step.beside.begin = static_cast<int>(factors_.beside.size());
        for (SparseEntry<Scalar>& entry : row(pivot.row)) {
            forget(entry.index, pivot.row);
            if (entry.index == pivot.column) {
                step.pivot = std::move(entry.value);
            } else {
                factors_.beside.push_back(std::move(entry));
            }
        }
        step.beside.end = static_cast<int>(factors_.beside.size());
        rows_.clear(pivot.row);
        search_.rows.remove(pivot.row);
        search_.columns.remove(pivot.column);
        step.below.begin = static_cast<int>(factors_.below.size());
        // Entries pushed meanwhile go to other columns, and may relocate this one.
        for (int k = 0; k < columns_.size(pivot.column); ++k) {
            reduce(columns_.begin(pivot.column)[k], step);
        }
        step.below.end = static_cast<int>(factors_.below.size());
        columns_.clear(pivot.column);
        factors_.steps.push_back(std::move(step));
    }

    // Subtracts a multiple of the pivot row from the row that has an entry of the pivot column at
    // `place`. The cost depends on the length of the pivot row only.
    void reduce(Place place, const PivotStep<Scalar>& step) {
        const int i = place.row;
        const Scalar factor = value(place) / step.pivot;
        drop(place);
        for (int e = step.beside.begin; e < step.beside.end; ++e) {
            const SparseEntry<Scalar>& entry = factors_.beside[static_cast<std::size_t>(e)];
            subtract(i, entry.index, factor * entry.value);
        }
        factors_.below.push_back({i, factor});
        search_.rows.change(i, rows_.size(i));
        retireIfNothing(i);
    }

    void subtract(int i, int j, const Scalar& change) {
        Place* place = find(j, i);
        if (!place) {
            columns_.push(j, {i, rows_.size(i)});
            rows_.push(i, {j, -change});
            largest(i) = std::max(largest(i), Rule::sizeOf(change));
            search_.columns.change(j, columns_.size(j));
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

    // Removes an entry from its row; the caller updates the column.
    void drop(Place place) {
        SparseEntry<Scalar>* line = rows_.begin(place.row);
        const int last = rows_.size(place.row) - 1;
        if (place.at < last) {
            find(line[last].index, place.row)->at = place.at;
            line[place.at] = std::move(line[last]);
        }
        rows_.pop(place.row);
    }

    // Row i no longer has an entry in column j.
    void forget(int j, int i) {
        if (Place* place = find(j, i)) {
            *place = *(columns_.end(j) - 1);
            columns_.pop(j);
            search_.columns.change(j, columns_.size(j));
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
            if (Rule::sizeOf(entry.value) > factors_.rest) {
                factors_.rest = Rule::sizeOf(entry.value);
                factors_.restRow = i;
            }
        }
        rows_.clear(i);
        search_.rows.remove(i);
        factors_.dependentRows.push_back(i);
    }

    void listFreeColumns() {
        std::vector<char> taken(factors_.columns, 0);
        for (const PivotStep<Scalar>& step : factors_.steps) {
            taken[static_cast<std::size_t>(step.column)] = 1;
        }
        for (std::size_t j = 0; j < taken.size(); ++j) {
            if (!taken[j]) {
                factors_.freeColumns.push_back(static_cast<int>(j));
            }
        }
    }

    LinePool<SparseEntry<Scalar>> rows_; // the remaining rows
    std::vector<double> largest_;        // of each row; an upper bound
    LinePool<Place> columns_;            // positions of the entries in each column
    PivotSearch search_;
    Factors<Scalar> factors_;
};

template <class Scalar>
[[nodiscard]] Factors<Scalar> eliminate(SparseMatrix<Scalar> matrix) {
    Elimination<Scalar> elimination(std::move(matrix));
    while (elimination.advance(std::numeric_limits<int>::max())) {
    }
    return elimination.finish();
}

} // namespace gusset
