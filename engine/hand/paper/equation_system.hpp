#pragma once
// Equations of equilibrium that are solved together, as a linear system of their unknowns. Small
// systems are eliminated densely with full pivoting; large ones, where most equations hold few
// unknowns, sparsely (statics/matrix/elimination). Private to hand/.

#include "hand/paper/working.hpp"
#include "statics/matrix/factors.hpp"

#include <optional>
#include <vector>

namespace gusset {

class EquationSystem {
public:
    EquationSystem(const std::vector<Equation>&, const std::vector<Symbol>& unknowns);

    [[nodiscard]] bool settled() const; // each unknown, if any, has exactly one value
    // Indices of as many independent equations as there are unknowns. Precondition: settled.
    [[nodiscard]] std::vector<std::size_t> independent() const;
    // The value of each unknown, in column order; nothing when they are not determined.
    [[nodiscard]] std::optional<std::vector<double>> solution() const;
    // The column of an unknown; −1 if it is not in the system.
    [[nodiscard]] int columnOf(const Symbol&) const;

private:
    struct Numbered {
        Symbol symbol;
        int column;
    };
    std::vector<Numbered> columns_; // sorted by symbol
    SparseMatrix<double> matrix_;   // one row per equation
    std::vector<double> right_;     // of each equation
};

} // namespace gusset
