#pragma once
// Everything reported for one influence line: its ordinates, exact where possible, and the effect
// of the model's moving loads.

#include "core/progress.hpp"
#include "statics/moving/moving.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace gusset {

// The effect of one of the model's moving loads on one line.
struct MovingResult {
    std::string id;
    TrainExtremes train;
    std::optional<UniformExtremes> uniform;
    double error = 0; // rounding error bound of each of these values, in their unit
};
struct InfluenceReport {
    std::string of; // as requested: "member:B-C"
    Effect effect;
    std::vector<JointId> path;
    InfluenceLine line;
    std::vector<Surd> exact; // the ordinates, or empty
    std::vector<MovingResult> moving;
    Reliance reliance; // over the forces and displacements under all the unit loads
    double error = 0;  // rounding error bound of any ordinate, in its unit
};

// How far the ordinates can be trusted: `error` is relative to the largest of them.
[[nodiscard]] Trust trustOf(const InfluenceReport&);

// Factor from an ordinate in SI to the model's unit of the effect per unit of force.
[[nodiscard]] double ordinateScale(const Truss&, EffectKind);

// With the moving loads that have exactly this path. Issues when the path has a fault, the truss
// can't be solved, or the effect is not available: no support there, or a displacement without E
// and A. Precondition: the effect's joint or member belongs to the truss. `of` is left to the
// caller.
[[nodiscard]] Outcome<InfluenceReport>
influenceReport(const Truss&, const std::vector<JointId>& path, const Effect&);
// The same from an existing analysis of the path, without the exact ordinates, which take far
// longer than everything else.
[[nodiscard]] Outcome<InfluenceReport> influenceReport(const Truss&, const PathAnalysis&,
                                                       const Effect&);

// The effect of one moving load on every member's force, one per member.
[[nodiscard]] std::vector<MovingResult> membersUnder(const Truss&, const PathAnalysis&,
                                                     const MovingLoad&);
// The same in slices (core/progress). Truss, analysis and load must stay in place and unchanged
// while the task lives.
class MembersUnderTask {
public:
    MembersUnderTask(const Truss& truss, const PathAnalysis& analysis, const MovingLoad& load)
        : truss_(truss), analysis_(analysis), load_(load) {}

    bool advance();
    [[nodiscard]] Progress progress() const;                                       // members
    [[nodiscard]] std::vector<MovingResult> take() { return std::move(results_); } // once only

private:
    const Truss& truss_;
    const PathAnalysis& analysis_;
    const MovingLoad& load_;
    std::vector<MovingResult> results_{};
};

} // namespace gusset
