#pragma once
// Equations of equilibrium that are solved together, as a linear system of their unknowns. Small
// ones are eliminated with exchange of rows and columns, as one would by hand; large ones sparsely
// (statics/matrix/elimination), where most equations hold few unknowns. Private to hand/.

#include "hand/paper/working.hpp"
#include "statics/matrix/factors.hpp"

#include <optional>
#include <vector>

namespace gusset {

class EquationSystem {
public:
    EquationSystem(const std::vector<Equation>&, const std::vector<Symbol>& unknowns);

    [[nodiscard]] bool settled() const; // all unknowns have one value each, if any
    // Places of as many independent equations as there are unknowns. Precondition: settled.
    [[nodiscard]] std::vector<std::size_t> independent() const;
    // The value of each unknown, in their order; nothing when they are not settled.
    [[nodiscard]] std::optional<std::vector<double>> solution() const;
    // The place of an unknown in their order; −1 if it is none of them.
    [[nodiscard]] int columnOf(const Symbol&) const;

private:
    struct Numbered {
        Symbol symbol;
        int column;
    };
    std::vector<Numbered> columns_; // sorted by symbol
    SparseMatrix<double> matrix_;   // a row for each equation
    std::vector<double> right_;     // of each equation
};

} // namespace gusset
