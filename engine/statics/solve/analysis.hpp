#pragma once
// A truss prepared for any loads: read and factored once, solved as often as needed. Solutions,
// envelopes over cases and influence lines are built on it.

#include "statics/equilibrium/stiffness.hpp"
#include "statics/solve/displacement.hpp"
#include "statics/solve/solution.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct Analysis {
    // Special members are defined in analysis.cpp: inline, they would be most of each object file.
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
    Stiffness stiffness;    // in doubles; not usable if its weakest pivot is not positive
    Refactoring plan;       // empty until the equilibrium is factored again
    bool solvable = false;  // there are forces for any loads
    bool displaces = false; // and displacements
    std::vector<Assumption> assumed;
    Issues faults; // why it can't be solved although it is stable
    Issues notes;
};

// Preconditions: validate found no error in the truss, and the structure is the truss's, with or
// without strains.
[[nodiscard]] Analysis analyse(const Truss&, Structure);

// The same in place of an earlier analysis, which is reused where the same joints are connected and
// supported: pivots, orders and patterns are then kept, as long as the new numbers allow it.
void analyseAgain(const Truss&, Structure, Analysis&);

// Solves for loads, one set after another. A stiffness solution that arithmetic may have put off by
// more than kTrusted is repeated with twice the digits; the factors for that are kept.
class Responder {
public:
    explicit Responder(const Analysis& analysis) : analysis_(analysis) {}
    explicit Responder(Analysis&&) = delete; // a temporary would dangle

    // Forces, and displacements if the analysis displaces, under loads (N, one per joint) and the
    // structure's strains. Nothing when the truss moves or can't be solved, or when fewer than
    // three figures of the forces would be right (kUsable). A mechanism that the loads happen to
    // leave at rest has forces.
    [[nodiscard]] std::optional<Response> respond(const std::vector<Vec2>& loads);
    // The same for 1 N down on each of these joints in turn, judged together: no response is off by
    // more than kUsable of the largest force of all. Precondition: the analysis is of a structure
    // without strains.
    [[nodiscard]] std::optional<UnitResponses> respondToUnits(const std::vector<JointId>&);

private:
    [[nodiscard]] Judge judged() const;
    [[nodiscard]] bool doublesMayDo() const;
    [[nodiscard]] const WideStiffness* wide(); // null where this is not enough either
    [[nodiscard]] std::optional<Response> byDoubles(const std::vector<Vec2>& loads) const;
    [[nodiscard]] std::optional<Response> byWide(const std::vector<Vec2>& loads);
    [[nodiscard]] std::optional<Response> byStiffness(const std::vector<Vec2>& loads);
    [[nodiscard]] std::optional<Response> byEquilibrium(const std::vector<Vec2>& loads) const;
    [[nodiscard]] std::optional<UnitResponses> unitsByStiffness(const std::vector<JointId>&);
    [[nodiscard]] std::optional<UnitResponses>
    unitsByEquilibrium(const std::vector<JointId>&) const;
    // For displacements from equilibrium: sets their error, and tightens that of the forces where
    // it matters.
    void judgeDisplacementsOf(const std::vector<double>& changes, const EquilibriumForces&,
                              const std::vector<Vec2>& displacements, Trust&) const;

    const Analysis& analysis_;
    std::optional<WideStiffness> wide_;
};
[[nodiscard]] std::optional<Response> respond(const Analysis&, const std::vector<Vec2>& loads);

} // namespace gusset
