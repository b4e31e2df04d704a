#pragma once
// The factors of a sparse matrix from elimination, and solves with them. The right-hand sides may
// have another type than the matrix: several numbers can be solved for at once.

#include <cstddef>
#include <vector>

namespace gusset {

template <class Scalar>
struct MatrixEntry {
    int row = 0;
    int column = 0;
    Scalar value{};
};
// No two entries at the same position; zeros count as absent.
template <class Scalar>
struct SparseMatrix {
    std::size_t rows = 0;
    std::size_t columns = 0;
    std::vector<MatrixEntry<Scalar>> entries;
};

template <class Scalar>
struct SparseEntry {
    int index = 0; // of the column in a row, of the row in a column
    Scalar value{};
};

struct Range { // of indices into a vector
    int begin = 0;
    int end = 0;
};

template <class Scalar>
struct PivotStep {
    int row = 0;
    int column = 0;
    Scalar pivot{};
    Range below;  // in Factors::below: multiples of the pivot row subtracted from other rows
    Range beside; // in Factors::beside: the rest of the pivot row
};

template <class Scalar>
struct Factors {
    std::size_t rows = 0;
    std::size_t columns = 0;
    std::vector<PivotStep<Scalar>> steps; // as many as the rank
    std::vector<SparseEntry<Scalar>> below;
    std::vector<SparseEntry<Scalar>> beside;
    std::vector<int> dependentRows;
    std::vector<int> freeColumns;
    // The largest number treated as zero in a dependent row, and that row.
    double rest = 0;
    int restRow = -1;
};

// from −= Σ entries · known, each at its index.
template <class Scalar, class Right>
void spread(const std::vector<SparseEntry<Scalar>>& entries, Range range, const Right& known,
            std::vector<Right>& from) {
    for (int e = range.begin; e < range.end; ++e) {
        const SparseEntry<Scalar>& entry = entries[static_cast<std::size_t>(e)];
        from[static_cast<std::size_t>(entry.index)] -= entry.value * known;
    }
}

// sum − Σ entries · values, each from its index.
template <class Scalar, class Right>
[[nodiscard]] Right gather(const std::vector<SparseEntry<Scalar>>& entries, Range range, Right sum,
                           const std::vector<Right>& values) {
    for (int e = range.begin; e < range.end; ++e) {
        const SparseEntry<Scalar>& entry = entries[static_cast<std::size_t>(e)];
        sum -= entry.value * values[static_cast<std::size_t>(entry.index)];
    }
    return sum;
}

// The solution of A·x = right with free unknowns at zero. At the dependent rows, `right` keeps what
// no x can balance: zero when there is a solution.
template <class Scalar, class Right>
[[nodiscard]] std::vector<Right> solveReduced(const Factors<Scalar>& factors,
                                              std::vector<Right>& right) {
    for (const PivotStep<Scalar>& step : factors.steps) {
        const Right known = right[static_cast<std::size_t>(step.row)];
        if (!(known == Right(0))) {
            spread(factors.below, step.below, known, right);
        }
    }
    std::vector<Right> solution(factors.columns, Right(0));
    for (auto step = factors.steps.rbegin(); step != factors.steps.rend(); ++step) {
        const Right sum = gather(factors.beside, step->beside,
                                 right[static_cast<std::size_t>(step->row)], solution);
        solution[static_cast<std::size_t>(step->column)] = sum / step->pivot;
    }
    return solution;
}

// v with vᵀ·A = right at all columns with a pivot; 0 at the dependent rows. At the free columns,
// `right` keeps the difference: zero when the columns are independent.
template <class Scalar, class Right>
[[nodiscard]] std::vector<Right> solveTransposed(const Factors<Scalar>& factors,
                                                 std::vector<Right>& right) {
    std::vector<Right> vector(factors.rows, Right(0));
    for (const PivotStep<Scalar>& step : factors.steps) {
        const Right value = right[static_cast<std::size_t>(step.column)] / step.pivot;
        vector[static_cast<std::size_t>(step.row)] = value;
        if (!(value == Right(0))) {
            spread(factors.beside, step.beside, value, right);
        }
    }
    for (auto step = factors.steps.rbegin(); step != factors.steps.rend(); ++step) {
        Right& value = vector[static_cast<std::size_t>(step->row)];
        value = gather(factors.below, step->below, value, vector);
    }
    return vector;
}

// v with vᵀ·A = 0, 1 at the given dependent row and 0 at the others.
template <class Scalar>
[[nodiscard]] std::vector<Scalar> leftNullVector(const Factors<Scalar>& factors, int dependentRow) {
    std::vector<Scalar> vector(factors.rows, Scalar(0));
    vector[static_cast<std::size_t>(dependentRow)] = Scalar(1);
    for (auto step = factors.steps.rbegin(); step != factors.steps.rend(); ++step) {
        vector[static_cast<std::size_t>(step->row)] =
            gather(factors.below, step->below, Scalar(0), vector);
    }
    return vector;
}

// Fills in x so that A·x = 0. Precondition: x is given at the free columns and 0 at the others.
template <class Scalar, class Right>
void completeNullVector(const Factors<Scalar>& factors, std::vector<Right>& x) {
    for (auto step = factors.steps.rbegin(); step != factors.steps.rend(); ++step) {
        const Right sum = gather(factors.beside, step->beside, Right(0), x);
        x[static_cast<std::size_t>(step->column)] = sum / step->pivot;
    }
}

// x with A·x = 0, 1 at the given free column and 0 at the others.
template <class Scalar>
[[nodiscard]] std::vector<Scalar> rightNullVector(const Factors<Scalar>& factors, int freeColumn) {
    std::vector<Scalar> x(factors.columns, Scalar(0));
    x[static_cast<std::size_t>(freeColumn)] = Scalar(1);
    completeNullVector(factors, x);
    return x;
}

} // namespace gusset
