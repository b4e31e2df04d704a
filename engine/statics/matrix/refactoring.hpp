#pragma once
// Repeats an elimination for a matrix with the same sparsity pattern: the pivots and the positions
// of all entries of the factors are known, and only numbers are computed. It works row by row,
// subtracting multiples of the pivot rows before it (e.g. I. S. Duff, A. M. Erisman, J. K. Reid,
// Direct Methods for Sparse Matrices, 1986, ch. 10).

#include "statics/matrix/factors.hpp"

#include <vector>

namespace gusset {

struct Refactoring {
    struct Entry {
        int at = 0; // in SparseMatrix::entries
        int column = 0;
    };
    struct Multiple {
        int step = 0;  // whose pivot row is subtracted
        int below = 0; // position of the multiple in Factors::below
    };
    // For each step, one after the other:
    std::vector<Entry> entries;
    std::vector<Range> entriesOf;
    std::vector<Multiple> multiples;
    std::vector<Range> multiplesOf;
    std::vector<int> absent; // entries of the matrix that are zero, and must stay so
};

// Lists the places, from the matrix and its factors, and makes room in the factors: entries that
// cancelled may not do so again. The factors' values are lost. Precondition: all rows have a pivot.
[[nodiscard]] Refactoring planRefactoring(const SparseMatrix<double>&, Factors<double>&);

// False when a pivot is no longer good enough, or there is an entry where there was none: the
// factors are then invalid, and a full elimination is needed.
[[nodiscard]] bool refactor(const Refactoring&, const SparseMatrix<double>&, Factors<double>&);

} // namespace gusset
