#pragma once
// Influence lines: the effect of a downward unit load, moving along a path of joints, on one force,
// reaction or displacement. Between joints the load reaches them through stringers, as simple
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
    JointId joint;   // the others: positive along +x or +y; a reaction is the force on the truss
    bool horizontal = false; // along x
};

struct InfluenceLine {
    std::vector<double> at; // m, horizontal distance of each joint of the path from the first
    std::vector<double> ordinates; // N per N, m per N for a displacement
};

// The value of a line at a place: linear between ordinates, zero beyond the ends.
[[nodiscard]] double ordinateAt(const InfluenceLine&, double at);

struct Areas { // m times the unit of the ordinates
    double positive = 0;
    double negative = 0; // ≤ 0
};
[[nodiscard]] Areas areasOf(const InfluenceLine&);

// The responses to a unit load (1 N down) on each joint of a path in turn.
struct PathAnalysis {
    Structure structure;
    std::vector<JointId> path;
    std::vector<Response> responses; // one per joint of the path
    Reliance reliance;               // over all of them
    bool movesDoubtful = false;      // displacements are not accurate enough to be given
};
// A path with more joints times members than this is refused.
inline constexpr std::size_t kLargestPath = 20'000'000;

// Issues when the path has a fault or the truss can't be solved. The structure's strains are left
// out: an influence line is due to the load alone.
[[nodiscard]] Outcome<PathAnalysis> analysePath(const Truss&, const std::vector<JointId>& path);
// The same in slices (core/progress). The truss must stay in place and unchanged while the task
// lives.
class PathAnalysisTask {
public:
    PathAnalysisTask(const Truss&, std::vector<JointId> path);

    ~PathAnalysisTask();
    PathAnalysisTask(PathAnalysisTask&&) noexcept;

    bool advance();
    [[nodiscard]] Progress progress() const;    // joints of the path
    [[nodiscard]] Outcome<PathAnalysis> take(); // once only

private:
    const Truss& truss_;
    std::vector<JointId> path_;
    Issues faults_{};
    struct Solving;
    std::unique_ptr<Solving> solving_; // set once the truss is analysed
};

// Precondition: for a displacement, the responses have displacements.
[[nodiscard]] InfluenceLine influenceLine(const PathAnalysis&, const Effect&);

// The truss under a unit load on one joint, in its own force unit, and nothing else.
[[nodiscard]] Truss withUnitLoad(Truss, JointId);
// Exact forces under a unit load on each joint of a path in turn, in slices (core/progress); empty
// if any one of them has no exact forces. The truss must stay in place while the task lives.
class ExactPathTask {
public:
    ExactPathTask(const Truss& truss, std::vector<JointId> path)
        : truss_(truss), path_(std::move(path)) {}

    bool advance();
    [[nodiscard]] Progress progress() const { return {found_.size(), path_.size()}; }
    [[nodiscard]] std::vector<ExactSolution> take() { return std::move(found_); } // once only

private:
    const Truss& truss_;
    std::vector<JointId> path_;
    std::vector<ExactSolution> found_{};
    std::optional<ExactTask> task_{}; // for the next joint
};
// The value of an effect in a solution. Precondition: solved, and not a displacement.
[[nodiscard]] Surd exactEffect(const ExactSolution&, const Effect&);
// The ordinates as exact numbers; empty where there are no exact forces, and for displacements.
[[nodiscard]] std::vector<Surd> exactOrdinates(const Truss&, const std::vector<JointId>& path,
                                               const Effect&);

} // namespace gusset
