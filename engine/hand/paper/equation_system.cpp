#include "hand/paper/equation_system.hpp"

#include "core/tolerance.hpp"
#include "hand/paper/body.hpp"
#include "statics/matrix/elimination.hpp"

#include <Eigen/Dense>

#include <algorithm>
#include <tuple>

namespace gusset {
namespace {

using Matrix = Eigen::MatrixXd;
using Vector = Eigen::VectorXd;

// Largest number of unknowns for dense elimination: beyond this it takes longer than a frame.
constexpr std::size_t kLargestDense = 128;

bool isLarge(const SparseMatrix<double>& matrix) { return matrix.columns > kLargestDense; }

Eigen::FullPivLU<Matrix> eliminateDensely(const SparseMatrix<double>& sparse) {
    Matrix matrix = Matrix::Zero(static_cast<Eigen::Index>(sparse.rows),
                                 static_cast<Eigen::Index>(sparse.columns));
    for (const MatrixEntry<double>& entry : sparse.entries) {
        matrix(entry.row, entry.column) = entry.value;
    }
    Eigen::FullPivLU<Matrix> elimination;
    elimination.setThreshold(kSettled);
    elimination.compute(matrix);
    return elimination;
}

bool isSettled(const Eigen::FullPivLU<Matrix>& elimination) {
    return elimination.rank() == elimination.cols();
}

bool isSettled(const Factors<double>& factors) { return factors.freeColumns.empty(); }

auto orderOf(const Symbol& symbol) {
    return std::tuple(symbol.kind, symbol.member.index, symbol.restraint);
}

} // namespace

EquationSystem::EquationSystem(const std::vector<Equation>& equations,
                               const std::vector<Symbol>& unknowns) {
    for (std::size_t i = 0; i < unknowns.size(); ++i) {
        columns_.push_back({unknowns[i], static_cast<int>(i)});
    }
    std::sort(columns_.begin(), columns_.end(), [](const Numbered& a, const Numbered& b) {
        return orderOf(a.symbol) < orderOf(b.symbol);
    });
    matrix_.rows = equations.size();
    matrix_.columns = unknowns.size();
    for (std::size_t row = 0; row < equations.size(); ++row) {
        for (const Symbol& symbol : unknownsOf(equations[row])) {
            if (const int column = columnOf(symbol); column >= 0) {
                matrix_.entries.push_back(
                    {static_cast<int>(row), column, coefficientOf(equations[row], symbol)});
            }
        }
        right_.push_back(-constantOf(equations[row]));
    }
}

int EquationSystem::columnOf(const Symbol& symbol) const {
    const auto place = std::lower_bound(columns_.begin(), columns_.end(), symbol,
                                        [](const Numbered& one, const Symbol& other) {
                                            return orderOf(one.symbol) < orderOf(other);
                                        });
    return place != columns_.end() && orderOf(place->symbol) == orderOf(symbol) ? place->column
                                                                                : -1;
}

bool EquationSystem::settled() const {
    return isLarge(matrix_) ? isSettled(eliminate(matrix_)) : isSettled(eliminateDensely(matrix_));
}

std::vector<std::size_t> EquationSystem::independent() const {
    std::vector<std::size_t> rows;
    if (isLarge(matrix_)) {
        for (const PivotStep<double>& step : eliminate(matrix_).steps) {
            rows.push_back(static_cast<std::size_t>(step.row));
        }
    } else {
        // permutationP moves row i of the matrix to row P(i): the first rows hold the pivots.
        const auto elimination = eliminateDensely(matrix_);
        const auto& to = elimination.permutationP().indices();
        for (Eigen::Index i = 0; i < to.size(); ++i) {
            if (to(i) < elimination.cols()) {
                rows.push_back(static_cast<std::size_t>(i));
            }
        }
    }
    std::sort(rows.begin(), rows.end());
    return rows;
}

std::optional<std::vector<double>> EquationSystem::solution() const {
    if (isLarge(matrix_)) {
        const Factors<double> factors = eliminate(matrix_);
        std::vector<double> right = right_;
        return isSettled(factors) ? std::optional(solveReduced(factors, right)) : std::nullopt;
    }
    const auto elimination = eliminateDensely(matrix_);
    if (!isSettled(elimination)) {
        return std::nullopt;
    }
    const Vector values =
        elimination.solve(Eigen::Map<const Vector>(right_.data(), std::ssize(right_)));
    return std::vector<double>(values.begin(), values.end());
}

} // namespace gusset
