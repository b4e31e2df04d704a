#pragma once
// All that is told of one influence line: its ordinates, also exact where they can be, and what the
// model's moving loads make of it.

#include "core/progress.hpp"
#include "statics/moving/moving.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace gusset {

// What a moving load of the model makes of one line.
struct MovingResult {
    std::string id;
    TrainExtremes train;
    std::optional<UniformExtremes> uniform;
    double error = 0; // by how much rounding may put any of these values off, in their unit
};
struct InfluenceReport {
    std::string of; // as it was asked for: "member:B-C"
    Effect effect;
    std::vector<JointId> path;
    InfluenceLine line;
    std::vector<Surd> exact; // of the ordinates, or empty
    std::vector<MovingResult> moving;
    Reliance reliance; // of the forces and displacements under all the unit loads
    double error = 0;  // by how much rounding may put any ordinate off, in its unit
};

// How far the ordinates can be trusted: `error` is over the largest of them.
[[nodiscard]] Trust trustOf(const InfluenceReport&);

// How many of the model's units of the effect, per unit of force, one SI unit of an ordinate is.
[[nodiscard]] double ordinateScale(const Truss&, EffectKind);

// With the moving loads that have this very path. Issues when the path has a fault, the truss can't
// be solved, or the effect is not to be had: no support there, or a displacement without E and A.
// The effect's joint or member is of the truss. `of` is left to the caller.
[[nodiscard]] Outcome<InfluenceReport>
influenceReport(const Truss&, const std::vector<JointId>& path, const Effect&);
// The same from an analysis of the path that is there, without the exact ordinates, which take far
// longer than all the rest.
[[nodiscard]] Outcome<InfluenceReport> influenceReport(const Truss&, const PathAnalysis&,
                                                       const Effect&);

// What one moving load makes of every member's force, a member each.
[[nodiscard]] std::vector<MovingResult> membersUnder(const Truss&, const PathAnalysis&,
                                                     const MovingLoad&);
// The same in slices (core/progress). Truss, analysis and load stay where they are and as they are
// while the task lives.
class MembersUnderTask {
public:
    MembersUnderTask(const Truss& truss, const PathAnalysis& analysis, const MovingLoad& load)
        : truss_(truss), analysis_(analysis), load_(load) {}

    bool advance();
    [[nodiscard]] Progress progress() const;                                       // members
    [[nodiscard]] std::vector<MovingResult> take() { return std::move(results_); } // once

private:
    const Truss& truss_;
    const PathAnalysis& analysis_;
    const MovingLoad& load_;
    std::vector<MovingResult> results_{};
};

} // namespace gusset
