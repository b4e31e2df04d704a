#include "hand/virtual_work/force_method.hpp"

#include "hand/virtual_work/release_trial.hpp"
#include "hand/virtual_work/virtual_work.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace gusset {

bool isReleased(const std::vector<Release>& releases, const MemberOrRestraint& it) {
    return std::any_of(releases.begin(), releases.end(),
                       [&it](const Release& release) { return release.of == it; });
}

namespace {

// The number of releases worked out to see which leaves the simplest truss.
constexpr std::size_t kReleasesTried = 6;

// Whether all members have the same EA, or none has one, and there are only loads: EA then cancels.
bool stiffnessCancels(const ReleasedFrom& given) {
    const std::vector<Bar>& bars = given.structure.bars;
    const double first = bars.front().stiffness;
    return !hasStrains(given.structure) &&
           std::all_of(bars.begin(), bars.end(), [&](const Bar& bar) {
               return std::fabs(bar.stiffness - first) <= kZeroForce * first;
           });
}

ForceMethodRow rowOf(const ReleasedFrom& given, MemberId member, bool timesStiffness) {
    const MemberGrowth growth = growthOf(given.truss, given.structure, member);
    ForceMethodRow row;
    row.member = member;
    row.length = growth.length;
    row.stiffness = growth.stiffness;
    row.weight = timesStiffness ? growth.length : growth.flexibility;
    row.thermal = growth.thermal;
    row.misfit = growth.misfit;
    return row;
}

void addRows(const ReleasedFrom& given, const Trial& trial, ForceMethod& method) {
    for (std::size_t i = 0; i < given.structure.bars.size(); ++i) {
        method.rows.push_back(rowOf(given, {static_cast<int>(i)}, method.timesStiffness));
    }
    for (std::size_t i = 0; i < given.structure.restraints.size(); ++i) {
        const double metre = toMetre(given.truss.units.displacement);
        ForceMethodReaction row;
        row.restraint = RestraintId{static_cast<int>(i)};
        row.settle = given.structure.restraints[i].settle / metre;
        method.reactions.push_back(row);
    }
    const auto put = [&](const FoundForces& forces, auto&& place) {
        for (std::size_t i = 0; i < method.rows.size(); ++i) {
            place(method.rows[i]) = forces.members[i];
        }
        for (std::size_t i = 0; i < method.reactions.size(); ++i) {
            place(method.reactions[i]) = forces.restraints[i];
        }
    };
    put(forcesOfWhole(given.structure, trial.releases, forcesOf(trial.givenWorking), nullptr),
        [](auto& row) -> double& { return row.given; });
    for (std::size_t k = 0; k < trial.releases.size(); ++k) {
        put(forcesOfWhole(given.structure, trial.releases, forcesOf(trial.unitWorkings[k]),
                          &trial.releases[k]),
            [k](auto& row) -> double& { return row.unit[k]; });
    }
}

void addDisplacements(ForceMethod& method) {
    for (std::size_t i = 0; i < method.releases.size(); ++i) {
        using Row = ForceMethodRow;
        GivenDisplacement& given = method.given[i];
        given.elastic = totalOf(
            method.rows, [&](const Row& row) { return row.unit[i] * row.given * row.weight; });
        given.thermal =
            totalOf(method.rows, [&](const Row& row) { return row.unit[i] * row.thermal; });
        given.misfit =
            totalOf(method.rows, [&](const Row& row) { return row.unit[i] * row.misfit; });
        given.settlement = totalOf(method.reactions, [&](const ForceMethodReaction& row) {
            return isReleased(method.releases, row.restraint) ? 0 : -row.unit[i] * row.settle;
        });
        const std::array<double, 4> parts{given.elastic, given.thermal, given.misfit,
                                          given.settlement};
        given.total =
            totalOf(std::vector<double>(parts.begin(), parts.end()), [](double p) { return p; });
        for (std::size_t k = 0; k < method.releases.size(); ++k) {
            method.unit[i][k] = totalOf(method.rows, [&](const Row& row) {
                return row.unit[i] * row.unit[k] * row.weight;
            });
        }
        if (const auto* restraint = std::get_if<RestraintId>(&method.releases[i].of)) {
            method.allowed[i] = method.reactions[restraint->at()].settle;
        }
    }
}

// Solves δi0 + X1·δi1 + X2·δi2 = Δi. False when the equations don't determine the redundants, as
// for one that strains no member: one of two supports that hold a joint in the same direction.
bool solveRedundants(ForceMethod& method) {
    const auto& unit = method.unit;
    const auto right = [&](std::size_t i) { return method.allowed[i] - method.given[i].total; };
    if (method.counting.redundants == 1) {
        method.redundants[0] = right(0) / unit[0][0];
        return unit[0][0] > 0;
    }
    const double determinant = unit[0][0] * unit[1][1] - unit[0][1] * unit[1][0];
    method.redundants[0] = (right(0) * unit[1][1] - right(1) * unit[0][1]) / determinant;
    method.redundants[1] = (right(1) * unit[0][0] - right(0) * unit[1][0]) / determinant;
    return determinant > kZeroForce * unit[0][0] * unit[1][1];
}

void superpose(ForceMethod& method) {
    const auto sum = [&](const auto& row) {
        const std::vector<double> parts{row.given, method.redundants[0] * row.unit[0],
                                        method.redundants[1] * row.unit[1]};
        return totalOf(parts, [](double part) { return part; });
    };
    for (ForceMethodRow& row : method.rows) {
        row.force = sum(row);
    }
    for (ForceMethodReaction& row : method.reactions) {
        row.force = sum(row);
    }
    // Where a redundant is nothing but rounding error, so are the forces that it alone causes.
    double largest = 0;
    const auto measure = [&](const auto& row) {
        largest = std::max({largest, std::fabs(row.given), std::fabs(row.force)});
    };
    const auto clean = [&](auto& row) {
        row.force = std::fabs(row.force) <= kZeroForce * largest ? 0 : row.force;
    };
    std::for_each(method.rows.begin(), method.rows.end(), measure);
    std::for_each(method.reactions.begin(), method.reactions.end(), measure);
    std::for_each(method.rows.begin(), method.rows.end(), clean);
    std::for_each(method.reactions.begin(), method.reactions.end(), clean);
}

void compare(const Truss& truss, const Solution& solution, ForceMethod& method) {
    if (solution.largest == 0) {
        return;
    }
    const double newton = toNewton(truss.units.force);
    const auto miss = [&](double force, double solved) {
        method.missed =
            std::max(method.missed, std::fabs(force * newton - solved) / solution.largest);
    };
    for (std::size_t i = 0; i < method.rows.size(); ++i) {
        miss(method.rows[i].force, solution.forces[i]);
    }
    for (std::size_t i = 0; i < method.reactions.size(); ++i) {
        miss(method.reactions[i].force, solution.reactions[i]);
    }
}

ForceMethodEnd beginningOf(const Solution& solution) {
    const Counting& count = solution.counting;
    if (count.mechanisms > 0 || solution.status == Status::Invalid) {
        return ForceMethodEnd::Moves;
    }
    if (count.redundants == 0) {
        return ForceMethodEnd::Determinate;
    }
    return count.redundants > kMostRedundants ? ForceMethodEnd::TooMany : ForceMethodEnd::Complete;
}

// Members whose EA is needed but not known.
std::vector<MemberId> membersWithoutStiffness(const Structure& structure) {
    std::vector<MemberId> members;
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        if (structure.bars[i].stiffness <= 0) {
            members.push_back({static_cast<int>(i)});
        }
    }
    return members;
}

// False when it does not determine the redundants.
bool writeMethod(const ReleasedFrom& given, Trial trial, ForceMethod& method) {
    method.releases = trial.releases;
    method.difficulty = trial.difficulty;
    addRows(given, trial, method);
    addDisplacements(method);
    if (!solveRedundants(method)) {
        return false;
    }
    superpose(method);
    method.givenTruss = std::move(trial.givenTruss);
    method.givenWorking = std::move(trial.givenWorking);
    method.unitTrusses = std::move(trial.unitTrusses);
    method.unitWorkings = std::move(trial.unitWorkings);
    return true;
}

// Of the released reactions, a joint whose support only shares a reaction with others.
JointId jointHeldTwice(const ReleasedFrom& given, const ForceMethod& method) {
    JointId joint;
    for (std::size_t i = 0; i < method.releases.size(); ++i) {
        const auto* restraint = std::get_if<RestraintId>(&method.releases[i].of);
        if (restraint && (!joint.valid() || method.unit[i][i] == 0)) {
            joint = given.structure.restraints[restraint->at()].joint;
        }
    }
    return joint;
}

} // namespace

struct ForceMethodTask::State {
    const Truss& truss;
    const Solution& solution;
    LoadChoice choice;
    Truss strained{};
    std::optional<ReleasedFrom> given{};
    ForceMethod method{};
    std::vector<std::vector<Release>> tried{};
    std::size_t next = 0; // index among these
    std::optional<TrialTask> atWork{};
    std::optional<Trial> best{};

    // False when there is nothing more to do.
    bool begin() {
        method.counting = solution.counting;
        method.end = beginningOf(solution);
        if (method.end != ForceMethodEnd::Complete) {
            return false;
        }
        if (truss.members.empty()) { // joints with supports only
            method.end = ForceMethodEnd::Unstrained;
            method.shared = truss.supports.front().joint;
            return false;
        }
        strained = strainedAs(truss, choice);
        given.emplace(releasedFrom(strained, choice));
        method.timesStiffness = stiffnessCancels(*given);
        method.assumed = method.timesStiffness && given->structure.bars.front().stiffness <= 0;
        if (!method.timesStiffness) {
            method.missing = membersWithoutStiffness(given->structure);
        }
        if (!method.missing.empty()) {
            method.end = ForceMethodEnd::NoStiffness;
            return false;
        }
        if (solution.solved) {
            tried = releasesOf(strained, given->structure, kReleasesTried);
        }
        return true;
    }
    void beginTrial() {
        const std::vector<Release>& releases = tried[next++];
        atWork.emplace(TrialTask{*given, releasedTruss(strained, given->structure, releases)});
        atWork->begin(releases);
    }
    void keepPlainer() {
        if (atWork->complete && (!best || atWork->trial.difficulty < best->difficulty)) {
            best = std::move(atWork->trial);
        }
        atWork.reset();
    }
    void finish() {
        if (!best) {
            method.end = ForceMethodEnd::NotWorkedOut;
        } else if (!writeMethod(*given, *std::move(best), method)) {
            method.end = ForceMethodEnd::Unstrained;
            method.shared = jointHeldTwice(*given, method);
        } else {
            compare(truss, solution, method);
        }
    }
    bool advance() {
        if (next == 0 && !begin()) {
            return true;
        }
        if (atWork) {
            if (!atWork->advance()) {
                return false;
            }
            keepPlainer();
        }
        const bool plain = best && best->difficulty == Difficulty::Joints;
        if (!plain && next < tried.size()) {
            beginTrial();
            return false;
        }
        finish();
        return true;
    }
};

ForceMethodTask::ForceMethodTask(const Truss& truss, const LoadChoice& choice,
                                 const Solution& solution)
    : state_(new State{truss, solution, choice}) {}

ForceMethodTask::~ForceMethodTask() = default;
ForceMethodTask::ForceMethodTask(ForceMethodTask&&) noexcept = default;
ForceMethodTask& ForceMethodTask::operator=(ForceMethodTask&&) noexcept = default;

bool ForceMethodTask::advance() { return state_->advance(); }

Progress ForceMethodTask::progress() const {
    const State& state = *state_;
    const std::size_t each = 1 + static_cast<std::size_t>(state.method.counting.redundants);
    const std::size_t before =
        state.atWork ? each * (state.next - 1) + state.atWork->unit : each * state.next;
    return {before, each * state.tried.size()};
}

ForceMethod ForceMethodTask::take() { return std::move(state_->method); }

ForceMethod forceMethod(const Truss& truss, const LoadChoice& choice, const Solution& solution) {
    ForceMethodTask task(truss, choice, solution);
    return runToEnd(task).take();
}

} // namespace gusset
