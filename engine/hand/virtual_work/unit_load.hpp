#pragma once
// A displacement by the unit load method, as the table written by hand: 1·δ + Σ r·Δ = Σ n·e
// (virtual work; e.g. Timoshenko & Young, Theory of Structures, 2nd ed., 1965, ch. 6), where n and
// r are member forces and reactions under a unit load, e each member's elongation from force,
// temperature and misfit, and Δ the settlements. Both columns of forces come from a working by
// equilibrium. In a statically indeterminate truss N comes from the force method, and the unit load
// stands on its released truss: any n in equilibrium with it will do, as the elongations e fit
// together (the reduction theorem; ibid., ch. 7).

#include "core/progress.hpp"
#include "hand/paper/working.hpp"
#include "hand/virtual_work/force_method.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace gusset {

enum class DisplacementAxis { X, Y }; // positive to the right; positive up

struct UnitLoadRow {
    MemberId member{};
    double force = 0;     // N, force units, tension positive
    double unit = 0;      // n, for a unit load: no unit
    double length = 0;    // L, length units
    double stiffness = 0; // EA, force units; 0 if the model does not give it
    double alpha = 0;     // α, per K
    double warming = 0;   // ΔT, K
    double elastic = 0;   // N·L/EA, displacement units, like the rest
    double thermal = 0;   // α·ΔT·L
    double misfit = 0;    // ΔL, made too long
    double growth = 0;    // e, their sum
    double work = 0;      // n·e
};

struct SettlementRow {
    RestraintId restraint{};
    double unit = 0;         // r, the reaction under the unit load
    double settle = 0;       // Δ along it, displacement units
    double contribution = 0; // −r·Δ
};

struct UnitLoadTable {
    bool complete = false; // else missing says what the model lacks, or there is no working at all
    JointId joint{};
    DisplacementAxis axis = DisplacementAxis::Y;
    std::vector<UnitLoadRow> rows;          // one per member, in the order of the model
    std::vector<SettlementRow> settlements; // of the supports that move and have a reaction r
    double members = 0;                     // Σ n·e, displacement units
    double settlement = 0;                  // −Σ r·Δ
    double total = 0;
    std::vector<MemberId> missing;     // members with both forces nonzero but EA unknown
    std::optional<ForceMethod> method; // of an indeterminate truss: how N was found
    Truss unitTruss;     // the truss under its unit load, without what the method releases
    Working unitWorking; // how n was found
};

// Precondition: the solution is solve(truss, choice)'s, and the joint belongs to the truss.
[[nodiscard]] UnitLoadTable unitLoadTable(const Truss&, const LoadChoice&, const Solution&, JointId,
                                          DisplacementAxis);

// The same in slices (core/progress). The truss and the solution must stay in place and unchanged
// while the task lives.
class UnitLoadTask {
public:
    UnitLoadTask(const Truss&, const LoadChoice&, const Solution&, JointId, DisplacementAxis);
    ~UnitLoadTask();
    UnitLoadTask(UnitLoadTask&&) noexcept;
    UnitLoadTask& operator=(UnitLoadTask&&) noexcept;

    bool advance();
    [[nodiscard]] Progress progress() const; // forces found for both columns
    [[nodiscard]] UnitLoadTable take();      // once only

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace gusset
