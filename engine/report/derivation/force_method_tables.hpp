#pragma once
// Names, products and tables of the force method. Private to report/.

#include "hand/virtual_work/force_method.hpp"
#include "report/derivation/virtual_work_table.hpp"

namespace gusset {

struct ForceMethodNotes {
    const ForceMethod& method;
    Notation notation; // of the whole truss
};

// X_1, n_1, N_0, δ_10; i and k count from 0, except in a displacement's cause, where 0 is the given
// loading.
[[nodiscard]] Token redundantToken(std::size_t i);
[[nodiscard]] Token unitToken(std::size_t i);
[[nodiscard]] Token givenToken();
[[nodiscard]] Token displacementToken(std::size_t place, std::size_t cause);
// The member force or reaction that is the redundant.
[[nodiscard]] Symbol redundantSymbol(const ForceMethodNotes&, std::size_t i);

[[nodiscard]] bool anyThermal(const ForceMethod&);
[[nodiscard]] bool anyMisfit(const ForceMethod&);
[[nodiscard]] bool anySettlement(const ForceMethod&); // of a support kept in the released truss

// n_1·N_0·L/EA, or n_1·N_0·L.
[[nodiscard]] Formula elasticProduct(const ForceMethodNotes&, const Token&, const Token&);
[[nodiscard]] Formula thermalProduct(std::size_t i);
[[nodiscard]] Formula misfitProduct(std::size_t i);
[[nodiscard]] Formula settlementProduct(std::size_t i);
[[nodiscard]] std::string givenUnit(const ForceMethodNotes&);        // of δ_10
[[nodiscard]] std::string perRedundantUnit(const ForceMethodNotes&); // of δ_11

[[nodiscard]] TextTable releasedForcesTable(const ForceMethodNotes&);
[[nodiscard]] TextTable sumsTable(const ForceMethodNotes&);
[[nodiscard]] TextTable strainsTable(const ForceMethodNotes&);
[[nodiscard]] TextTable settlementsTable(const ForceMethodNotes&, std::size_t i);
[[nodiscard]] TextTable superposedForcesTable(const ForceMethodNotes&);
[[nodiscard]] TextTable superposedReactionsTable(const ForceMethodNotes&);
// Whether the parts of a row of these carry more decimals than its sum.
[[nodiscard]] bool superpositionCarriesMore(const ForceMethodNotes&);

} // namespace gusset
