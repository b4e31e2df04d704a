#pragma once
// A truss made ready for any loads: read and factored once, answered as often as needed. Solutions,
// envelopes over cases and influence lines are built on it.

#include "statics/equilibrium/stiffness.hpp"
#include "statics/solve/displacement.hpp"
#include "statics/solve/solution.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct Analysis {
    // Special members in analysis.cpp: as inline code they would be most of each object file.
    Analysis();
    Analysis(const Analysis&);
    Analysis(Analysis&&) noexcept;
    Analysis& operator=(const Analysis&);
    Analysis& operator=(Analysis&&) noexcept;
    ~Analysis();

    Structure structure;
    Status status = Status::Mechanism;
    Equilibrium equilibrium;
    JointPattern pattern;   // these two only for an indeterminate truss that can be solved
    Stiffness stiffness;    // in doubles; of no use if its weakest pivot is not positive
    Refactoring plan;       // empty until the equilibrium is factored again
    bool solvable = false;  // there are forces for any loads
    bool displaces = false; // and displacements
    std::vector<Assumption> assumed;
    Issues faults; // why it can't be solved though it is stable
    Issues notes;
};

// Precondition: validate found no error in the truss, and the structure is its own, with or without
// strains.
[[nodiscard]] Analysis analyse(const Truss&, Structure);

// The same in place of what was analysed before, which is used where the same joints are joined and
// held: then pivots, orders and patterns are kept, as long as the new numbers allow it.
void analyseAgain(const Truss&, Structure, Analysis&);

// Answers loads, one after the other. A stiffness solution that arithmetic may have put off by more
// than kTrusted is found again with twice the digits; what was factored for that is kept.
class Responder {
public:
    explicit Responder(const Analysis& analysis) : analysis_(analysis) {}
    explicit Responder(Analysis&&) = delete; // which would be gone

    // Forces, and displacements if the analysis displaces, under loads (N, a joint each) and the
    // structure's strains. Nothing when the truss moves or can't be solved, or when fewer than
    // three figures of the forces would be right (kUsable); a mechanism that the loads happen to
    // leave at rest has forces.
    [[nodiscard]] std::optional<Response> respond(const std::vector<Vec2>& loads);
    // Likewise to 1 N down on each of these joints in turn, judged together: no answer is off by
    // more than kUsable of the largest force of all. Precondition: the analysis is of a structure
    // without strains.
    [[nodiscard]] std::optional<UnitResponses> respondToUnits(const std::vector<JointId>&);

private:
    [[nodiscard]] Judge judged() const;
    [[nodiscard]] bool doublesMayDo() const;
    [[nodiscard]] const WideStiffness* wide(); // null where that won't do either
    [[nodiscard]] std::optional<Response> byDoubles(const std::vector<Vec2>& loads) const;
    [[nodiscard]] std::optional<Response> byWide(const std::vector<Vec2>& loads);
    [[nodiscard]] std::optional<Response> byStiffness(const std::vector<Vec2>& loads);
    [[nodiscard]] std::optional<Response> byEquilibrium(const std::vector<Vec2>& loads) const;
    [[nodiscard]] std::optional<UnitResponses> unitsByStiffness(const std::vector<JointId>&);
    [[nodiscard]] std::optional<UnitResponses>
    unitsByEquilibrium(const std::vector<JointId>&) const;
    // Of displacements that equilibrium gave: sets their error, and sharpens that of the forces
    // where it counts.
    void judgeDisplacementsOf(const std::vector<double>& changes, const EquilibriumForces&,
                              const std::vector<Vec2>& displacements, Trust&) const;

    const Analysis& analysis_;
    std::optional<WideStiffness> wide_;
};
[[nodiscard]] std::optional<Response> respond(const Analysis&, const std::vector<Vec2>& loads);

} // namespace gusset
