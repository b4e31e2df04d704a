#pragma once
// Influence lines: what a downward unit load that moves along a path of joints does to one force,
// reaction or displacement. Between the joints the load goes to them through stringers, as simple
// beams, so that the line is straight between its ordinates. Method: e.g. Timoshenko & Young,
// Theory of Structures, 2nd ed., 1965, ch. 3. All ordinates come from one factorisation.

#include "core/outcome.hpp"
#include "core/progress.hpp"
#include "statics/solve/exact.hpp"
#include "statics/solve/reliance.hpp"

#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace gusset {

enum class EffectKind { MemberForce, Reaction, Displacement };
struct Effect {
    EffectKind kind = EffectKind::MemberForce;
    MemberId member; // MemberForce: tension positive
    JointId joint;   // the others: positive along +x or +y; of a reaction the force on the truss
    bool horizontal = false; // along x
};

struct InfluenceLine {
    std::vector<double> at;        // m, horizontal, of each joint of the path from the first
    std::vector<double> ordinates; // N per N, m per N for a displacement
};

// Where a line is evaluated: linear between ordinates, zero beyond the ends.
[[nodiscard]] double ordinateAt(const InfluenceLine&, double at);

struct Areas { // m times the ordinates' unit
    double positive = 0;
    double negative = 0; // ≤ 0
};
[[nodiscard]] Areas areasOf(const InfluenceLine&);

// A unit load (1 N down) on each joint of a path in turn, and what it does.
struct PathAnalysis {
    Structure structure;
    std::vector<JointId> path;
    std::vector<Response> responses; // a joint of the path each
    Reliance reliance;               // of all of them
    bool movesDoubtful = false;      // displacements would be off by too much, and are not given
};
// More of path joints times members than this is refused.
inline constexpr std::size_t kLargestPath = 20'000'000;

// Issues when the path has a fault or the truss can't be solved. The structure's strains are left
// out: an influence line is of the load alone.
[[nodiscard]] Outcome<PathAnalysis> analysePath(const Truss&, const std::vector<JointId>& path);
// The same in slices (core/progress). The truss stays where it is and as it is while the task
// lives.
class PathAnalysisTask {
public:
    PathAnalysisTask(const Truss&, std::vector<JointId> path);

    ~PathAnalysisTask();
    PathAnalysisTask(PathAnalysisTask&&) noexcept;

    bool advance();
    [[nodiscard]] Progress progress() const;    // joints of the path
    [[nodiscard]] Outcome<PathAnalysis> take(); // once

private:
    const Truss& truss_;
    std::vector<JointId> path_;
    Issues faults_{};
    struct Solving;
    std::unique_ptr<Solving> solving_; // once the truss is analysed
};

// Precondition: the responses have displacements if the effect is one.
[[nodiscard]] InfluenceLine influenceLine(const PathAnalysis&, const Effect&);

// The truss under a unit load that stands on one joint, in its own unit of force, and nothing else.
[[nodiscard]] Truss withUnitLoad(Truss, JointId);
// Exact forces under a unit load on each joint of a path in turn, in slices (core/progress); none
// where there are none under one of them. The truss stays where it is while the task lives.
class ExactPathTask {
public:
    ExactPathTask(const Truss& truss, std::vector<JointId> path)
        : truss_(truss), path_(std::move(path)) {}

    bool advance();
    [[nodiscard]] Progress progress() const { return {found_.size(), path_.size()}; }
    [[nodiscard]] std::vector<ExactSolution> take() { return std::move(found_); } // once

private:
    const Truss& truss_;
    std::vector<JointId> path_;
    std::vector<ExactSolution> found_{};
    std::optional<ExactTask> task_{}; // at work on the next one
};
// What the solved truss says of an effect. Precondition: solved, and no displacement.
[[nodiscard]] Surd exactEffect(const ExactSolution&, const Effect&);
// The ordinates as exact numbers; empty where exact forces are not to be had, and for
// displacements.
[[nodiscard]] std::vector<Surd> exactOrdinates(const Truss&, const std::vector<JointId>& path,
                                               const Effect&);

} // namespace gusset
