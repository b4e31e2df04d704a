#include "statics/moving/influence.hpp"

#include "core/tolerance.hpp"
#include "model/truss/member_index.hpp"
#include "model/validate/findings.hpp"
#include "model/validate/path_faults.hpp"
#include "phrases/results/unsolved.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstddef>
#include <iterator>
#include <utility>

namespace gusset {

namespace {

Issues whyNoLines(const Truss& truss, const Analysis& analysis) {
    return whyUnanswered(truss, analysis, phrase::kMechanismNoLines);
}

double effectOf(const Structure& structure, const Response& response, const Effect& effect) {
    const auto component = [&](Vec2 v) { return effect.horizontal ? v.x : v.y; };
    switch (effect.kind) {
    case EffectKind::MemberForce:
        return response.found.forces[effect.member.at()];
    case EffectKind::Displacement:
        return component(response.displacements[effect.joint.at()]);
    case EffectKind::Reaction:
        break;
    }
    double sum = 0;
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        const Restraint& restraint = structure.restraints[i];
        if (restraint.joint == effect.joint) {
            sum += response.found.reactions[i] * component(restraint.along);
        }
    }
    return sum;
}

// Rounding error in place of zero is written as zero.
void tidy(std::vector<double>& ordinates) {
    double largest = 0;
    for (double ordinate : ordinates) {
        largest = std::max(largest, std::abs(ordinate));
    }
    for (double& ordinate : ordinates) {
        if (std::abs(ordinate) <= kZeroForce * largest) {
            ordinate = 0;
        }
    }
}

} // namespace

double ordinateAt(const InfluenceLine& line, double at) {
    const std::vector<double>& x = line.at;
    // A load on the last joint is on the truss, even if rounding has put it slightly beyond.
    const double slack = kSameSpot * x.back();
    if (at < -slack || at > x.back() + slack) {
        return 0;
    }
    const auto after = std::upper_bound(x.begin(), x.end(), at);
    if (after == x.begin()) {
        return line.ordinates.front();
    }
    if (after == x.end()) {
        return line.ordinates.back();
    }
    const auto k = static_cast<std::size_t>(after - x.begin());
    const double share = (at - x[k - 1]) / (x[k] - x[k - 1]);
    return line.ordinates[k - 1] + share * (line.ordinates[k] - line.ordinates[k - 1]);
}

Areas areasOf(const InfluenceLine& line) {
    Areas areas;
    const auto add = [&](double width, double from, double to) {
        const double area = width * (from + to) / 2;
        (area > 0 ? areas.positive : areas.negative) += area;
    };
    for (std::size_t i = 0; i + 1 < line.at.size(); ++i) {
        const double width = line.at[i + 1] - line.at[i];
        const double from = line.ordinates[i];
        const double to = line.ordinates[i + 1];
        if ((from < 0) == (to < 0) || from == 0 || to == 0) {
            add(width, from, to);
            continue;
        }
        const double zero = width * from / (from - to); // where the line crosses zero
        add(zero, from, 0);
        add(width - zero, 0, to);
    }
    return areas;
}

namespace {

// Joints of the path per unit of the task: several unit loads are judged together.
constexpr std::size_t kTogether = 8;

Issues faultsOf(const Truss& truss, const std::vector<JointId>& path) {
    Issues faults = errorsOf(truss);
    if (faults.empty() && path.size() < 2) {
        faults.push_back({IssueCode::OutOfRange, "path", phrase::kPathTooShort});
    }
    if (faults.empty()) {
        if (const auto fault = faultOfPath(truss, MemberIndex(truss), path, "path")) {
            faults.push_back(*fault);
        }
    }
    if (faults.empty() && path.size() * truss.members.size() > kLargestPath) {
        faults.push_back({IssueCode::TooLarge, "path", phrase::kPathTooLarge});
    }
    return faults;
}

} // namespace

// One responder for the whole path, so that each factorisation is done only once.
struct PathAnalysisTask::Solving {
    Analysis analysis;
    Responder responder;
    std::vector<Response> responses{};
    Reliance reliance;

    explicit Solving(Analysis of)
        : analysis(std::move(of)), responder(analysis), reliance(relianceOf(analysis)) {}

    // Whether there are responses for these.
    bool add(const std::vector<JointId>& joints) {
        std::optional<UnitResponses> found = responder.respondToUnits(joints);
        if (!found) {
            return false;
        }
        include(reliance, *found);
        std::move(found->each.begin(), found->each.end(), std::back_inserter(responses));
        return true;
    }
};

PathAnalysisTask::PathAnalysisTask(const Truss& truss, std::vector<JointId> path)
    : truss_(truss), path_(std::move(path)), faults_(faultsOf(truss_, path_)) {}
PathAnalysisTask::~PathAnalysisTask() = default;
PathAnalysisTask::PathAnalysisTask(PathAnalysisTask&&) noexcept = default;

bool PathAnalysisTask::advance() {
    if (!faults_.empty()) {
        return true;
    }
    if (!solving_) {
        solving_ = std::make_unique<Solving>(analyse(truss_, withoutStrains(structureOf(truss_))));
        if (!solving_->analysis.solvable) {
            faults_ = whyNoLines(truss_, solving_->analysis);
        }
        return !faults_.empty();
    }
    const std::size_t done = solving_->responses.size();
    const auto begin = path_.begin() + static_cast<std::ptrdiff_t>(done);
    const auto end = begin + static_cast<std::ptrdiff_t>(std::min(path_.size() - done, kTogether));
    if (!solving_->add({begin, end})) {
        faults_ = whyNoLines(truss_, solving_->analysis);
        return true;
    }
    return solving_->responses.size() == path_.size();
}

Progress PathAnalysisTask::progress() const {
    return {solving_ ? solving_->responses.size() : 0, path_.size()};
}

Outcome<PathAnalysis> PathAnalysisTask::take() {
    if (!faults_.empty()) {
        return std::move(faults_);
    }
    PathAnalysis result{std::move(solving_->analysis.structure), std::move(path_),
                        std::move(solving_->responses), std::move(solving_->reliance), false};
    const auto lacksMoves = [](const Response& it) { return it.displacements.empty(); };
    const std::vector<Response>& all = result.responses;
    if (solving_->analysis.displaces && std::any_of(all.begin(), all.end(), lacksMoves)) {
        result.movesDoubtful = true;
    }
    return result;
}

Outcome<PathAnalysis> analysePath(const Truss& truss, const std::vector<JointId>& path) {
    PathAnalysisTask task(truss, path);
    return runToEnd(task).take();
}

InfluenceLine influenceLine(const PathAnalysis& analysis, const Effect& effect) {
    const std::vector<Vec2>& joints = analysis.structure.joints;
    InfluenceLine line;
    line.at.reserve(analysis.path.size());
    line.ordinates.reserve(analysis.path.size());
    for (std::size_t i = 0; i < analysis.path.size(); ++i) {
        const Vec2 way = joints[analysis.path[i].at()] - joints[analysis.path.front().at()];
        line.at.push_back(std::abs(way.x));
        line.ordinates.push_back(effectOf(analysis.structure, analysis.responses[i], effect));
    }
    tidy(line.ordinates);
    return line;
}

Truss withUnitLoad(Truss truss, JointId joint) {
    truss.loads.assign(1, {});
    truss.loads.front().what = JointForce{joint, 0, -1};
    return truss;
}

Surd exactEffect(const ExactSolution& exact, const Effect& effect) {
    assert(exact.solved && effect.kind != EffectKind::Displacement);
    if (effect.kind == EffectKind::MemberForce) {
        return exact.forces[effect.member.at()];
    }
    const ExactSolution::Reaction& reaction = exact.jointReactions[effect.joint.at()];
    return effect.horizontal ? reaction.x : reaction.y;
}

bool ExactPathTask::advance() {
    if (found_.size() == path_.size()) {
        return true;
    }
    if (!task_) {
        task_.emplace(withUnitLoad(truss_, path_[found_.size()]), LoadChoice{});
    }
    if (!task_->advance()) {
        return false;
    }
    if (!task_->result().solved) { // then the next ones won't be either: it is due to the truss
        found_.clear();
        return true;
    }
    found_.push_back(task_->result());
    task_.reset();
    return found_.size() == path_.size();
}

std::vector<Surd> exactOrdinates(const Truss& truss, const std::vector<JointId>& path,
                                 const Effect& effect) {
    std::vector<Surd> ordinates;
    if (effect.kind != EffectKind::Displacement) {
        ExactPathTask task(truss, path);
        for (const ExactSolution& exact : runToEnd(task).take()) {
            ordinates.push_back(exactEffect(exact, effect));
        }
    }
    return ordinates;
}

} // namespace gusset
