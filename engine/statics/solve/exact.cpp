#include "statics/solve/exact.hpp"

#include "statics/solve/rational.hpp"

#include <algorithm>
#include <utility>

namespace gusset {

namespace {

// The equations of a truss in rational numbers: the columns are force densities, then reactions
// divided by the length of their direction vectors.
struct ExactEquations {
    std::vector<RationalVec> joints;
    std::vector<RationalVec> directions; // of each column
    std::vector<RationalVec> loads;
    std::vector<JointId> reactionJoints; // of the columns after the members
    WhyInexact whyNot;
};

void readJoints(const Truss& truss, ExactEquations& equations) {
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        const std::optional<Rational> x = decimalOf(truss.joints[i].at.x);
        const std::optional<Rational> y = decimalOf(truss.joints[i].at.y);
        if (!x || !y) {
            equations.whyNot = {.reason = InexactReason::Coordinates,
                                .joint = JointId{static_cast<int>(i)}};
            return;
        }
        equations.joints.push_back({*x, *y});
    }
}

void readColumns(const Truss& truss, ExactEquations& equations) {
    for (const Member& member : truss.members) {
        const RationalVec& a = equations.joints[member.a.at()];
        const RationalVec& b = equations.joints[member.b.at()];
        equations.directions.push_back({b.x - a.x, b.y - a.y});
    }
    for (const Support& support : truss.supports) {
        if (support.kind == SupportKind::Pin) {
            equations.directions.push_back({1, 0});
            equations.directions.push_back({0, 1});
            equations.reactionJoints.insert(equations.reactionJoints.end(), 2, support.joint);
            continue;
        }
        const std::optional<RationalVec> slope = slopeOf(support.reaction);
        if (!slope) {
            equations.whyNot = {.reason = InexactReason::Slope, .joint = support.joint};
            return;
        }
        equations.directions.push_back(*slope);
        equations.reactionJoints.push_back(support.joint);
    }
}

// The components of a joint force, if they are rational.
std::optional<RationalVec> exactForce(const Load& load) {
    if (const auto* force = std::get_if<JointForce>(&load.what)) {
        const std::optional<Rational> x = decimalOf(force->fx);
        const std::optional<Rational> y = decimalOf(force->fy);
        if (!x || !y) {
            return std::nullopt;
        }
        return RationalVec{*x, *y};
    }
    const auto& force = std::get<AngledForce>(load.what);
    const std::optional<Rational> size = decimalOf(force.size);
    const std::optional<RationalVec> slope = slopeOf(force.angle);
    if (!size || !slope) {
        return std::nullopt;
    }
    const std::optional<Rational> length = exactRoot(slope->x * slope->x + slope->y * slope->y);
    if (!length) {
        return std::nullopt;
    }
    return RationalVec{*size * slope->x / *length, *size * slope->y / *length};
}

void addChord(const ChordLoad& load, const Rational& perLength, ExactEquations& equations) {
    for (std::size_t i = 0; i + 1 < load.chord.size(); ++i) {
        const std::size_t a = load.chord[i].at();
        const std::size_t b = load.chord[i + 1].at();
        const Rational run = equations.joints[b].x - equations.joints[a].x;
        const Rational half = perLength * (run < 0 ? Rational(-run) : run) / 2;
        equations.loads[a].y += half;
        equations.loads[b].y += half;
    }
}

// Distributes the load to the ends of a member by the law of the lever. False when the load, or
// the member's length, is not rational.
bool addBetween(const MemberForce& load, const Rational& factor, ExactEquations& equations) {
    const RationalVec& from = equations.joints[load.from.at()];
    const RationalVec& to = equations.joints[load.to.at()];
    const Rational dx = to.x - from.x;
    const Rational dy = to.y - from.y;
    const std::optional<Rational> length = exactRoot(dx * dx + dy * dy);
    const std::optional<Rational> at = decimalOf(load.at);
    const std::optional<Rational> fx = decimalOf(load.fx);
    const std::optional<Rational> fy = decimalOf(load.fy);
    if (!length || !at || !fx || !fy) {
        return false;
    }
    const auto add = [&](JointId joint, const Rational& share) {
        RationalVec& sum = equations.loads[joint.at()];
        sum = {sum.x + share * *fx, sum.y + share * *fy};
    };
    const Rational share = *at / *length * factor;
    add(load.from, factor - share);
    add(load.to, share);
    return true;
}

// False when the load is not rational.
bool addLoad(const Load& load, const Rational& factor, ExactEquations& equations) {
    if (std::holds_alternative<SelfWeight>(load.what)) {
        return false;
    }
    if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
        const std::optional<Rational> perLength = decimalOf(chord->perLength);
        if (perLength) {
            addChord(*chord, *perLength * factor, equations);
        }
        return perLength.has_value();
    }
    if (const auto* between = std::get_if<MemberForce>(&load.what)) {
        return addBetween(*between, factor, equations);
    }
    const std::optional<RationalVec> force = exactForce(load);
    if (!force) {
        return false;
    }
    RationalVec& sum = equations.loads[jointOf(load).at()];
    sum = {sum.x + factor * force->x, sum.y + factor * force->y};
    return true;
}

void readLoads(const Truss& truss, const LoadChoice& choice, ExactEquations& equations) {
    equations.loads.resize(truss.joints.size());
    for (std::size_t i = 0; i < truss.loads.size(); ++i) {
        const double factor = caseFactor(truss, choice, truss.loads[i]);
        if (factor == 0) {
            continue;
        }
        const std::optional<Rational> exact = decimalOf(factor);
        if (exact && addLoad(truss.loads[i], *exact, equations)) {
            continue;
        }
        equations.whyNot = {.reason = InexactReason::Components,
                            .load = LoadId{static_cast<int>(i)}};
        return;
    }
}

bool isClear(const ExactEquations& equations) {
    return equations.whyNot.reason == InexactReason::None;
}

ExactEquations equationsOf(const Truss& truss, const LoadChoice& choice) {
    ExactEquations equations;
    if (truss.members.size() > kLargestExact) {
        equations.whyNot = {.reason = InexactReason::TooLarge};
        return equations;
    }
    readJoints(truss, equations);
    if (isClear(equations)) {
        readColumns(truss, equations);
    }
    if (isClear(equations)) {
        readLoads(truss, choice, equations);
    }
    return equations;
}

SparseMatrix<Rational> matrixOf(const Truss& truss, const ExactEquations& equations) {
    SparseMatrix<Rational> matrix;
    matrix.rows = 2 * truss.joints.size();
    matrix.columns = equations.directions.size();
    const auto put = [&](JointId joint, std::size_t column, const Rational& x, const Rational& y) {
        const int row = 2 * joint.index;
        matrix.entries.push_back({row, static_cast<int>(column), x});
        matrix.entries.push_back({row + 1, static_cast<int>(column), y});
    };
    for (std::size_t i = 0; i < equations.directions.size(); ++i) {
        const RationalVec& d = equations.directions[i];
        if (i >= truss.members.size()) {
            put(equations.reactionJoints[i - truss.members.size()], i, d.x, d.y);
            continue;
        }
        put(truss.members[i].a, i, d.x, d.y);
        put(truss.members[i].b, i, -d.x, -d.y);
    }
    return matrix;
}

Counting countingOf(const Truss& truss, std::size_t columns, std::size_t rank) {
    Counting counting;
    counting.joints = static_cast<int>(truss.joints.size());
    counting.members = static_cast<int>(truss.members.size());
    counting.reactions = static_cast<int>(columns) - counting.members;
    counting.rank = static_cast<int>(rank);
    counting.mechanisms = 2 * counting.joints - counting.rank;
    counting.redundants = static_cast<int>(columns) - counting.rank;
    return counting;
}

void readForces(const Truss& truss, const ExactEquations& equations,
                const std::vector<Rational>& found, ExactSolution& result) {
    const std::size_t members = truss.members.size();
    for (std::size_t i = 0; i < members; ++i) {
        const RationalVec& d = equations.directions[i];
        result.forces.push_back(surdOf(found[i], d.x * d.x + d.y * d.y));
    }
    std::vector<RationalVec> sums(truss.joints.size());
    for (std::size_t i = members; i < found.size(); ++i) {
        const RationalVec& d = equations.directions[i];
        RationalVec& sum = sums[equations.reactionJoints[i - members].at()];
        sum = {sum.x + found[i] * d.x, sum.y + found[i] * d.y};
        result.reactions.push_back(surdOf(found[i], d.x * d.x + d.y * d.y));
    }
    for (const RationalVec& sum : sums) {
        result.jointReactions.push_back({surdOf(sum.x, 1), surdOf(sum.y, 1)});
    }
}

} // namespace

struct ExactTask::State {
    Truss truss;
    ExactEquations equations;
    std::optional<Elimination<Rational>> elimination;
    ExactSolution result;
    bool done = false;

    void finish() {
        done = true;
        const Factors<Rational> factors = elimination->finish();
        result.read = true;
        result.counting = countingOf(truss, factors.columns, factors.steps.size());
        const Counting& counting = result.counting;
        result.critical =
            counting.mechanisms > 0 && counting.members + counting.reactions == 2 * counting.joints;
        if (counting.redundants > 0) {
            result.whyNot = {.reason = InexactReason::Redundant};
            return;
        }
        std::vector<Rational> right;
        for (const RationalVec& load : equations.loads) {
            right.push_back(-load.x);
            right.push_back(-load.y);
        }
        const std::vector<Rational> found = solveReduced(factors, right);
        const bool balanced =
            std::all_of(factors.dependentRows.begin(), factors.dependentRows.end(),
                        [&](int row) { return right[static_cast<std::size_t>(row)] == 0; });
        result.solved = balanced;
        if (balanced) {
            readForces(truss, equations, found, result);
        } else {
            result.whyNot = {.reason = InexactReason::SetInMotion};
        }
    }
};

ExactTask::ExactTask(const Truss& truss, const LoadChoice& choice)
    : state_(std::make_unique<State>()) {
    state_->truss = truss;
    state_->equations = equationsOf(truss, choice);
    state_->result.whyNot = state_->equations.whyNot;
    state_->done = !isClear(state_->equations);
    if (state_->done) {
        return;
    }
    state_->elimination.emplace(matrixOf(truss, state_->equations));
}

ExactTask::~ExactTask() = default;
ExactTask::ExactTask(ExactTask&&) noexcept = default;
ExactTask& ExactTask::operator=(ExactTask&&) noexcept = default;

bool ExactTask::advance(int steps) {
    if (!state_->done && !state_->elimination->advance(steps)) {
        state_->finish();
    }
    return state_->done;
}

Progress ExactTask::progress() const {
    if (!state_->elimination) {
        return {};
    }
    const Progress progress = state_->elimination->progress();
    return state_->done ? Progress{progress.all, progress.all} : progress;
}

const ExactSolution& ExactTask::result() const { return state_->result; }

ExactSolution solveExactly(const Truss& truss, const LoadChoice& choice) {
    ExactTask task(truss, choice);
    while (!task.advance(1000)) {
    }
    return task.result();
}

} // namespace gusset
