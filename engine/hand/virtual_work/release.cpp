#include "hand/virtual_work/release.hpp"

#include "statics/equilibrium/equilibrium.hpp"

#include <algorithm>
#include <tuple>

namespace gusset {
namespace {

using State = std::vector<double>; // of self-stress: a force per member, then per restraint

// With more members and reactions than this, not all combinations are tried.
constexpr std::size_t kManyColumns = 200;
// Forces under a unit redundant above this make long numbers and lose digits.
constexpr double kLongNumber = 10;

double largestOf(const State& state) {
    double largest = 0;
    for (const double force : state) {
        largest = std::max(largest, std::fabs(force));
    }
    return largest;
}

// Every state, scaled to a largest force of 1, with negligible forces set to zero.
std::vector<State> statesOf(const Structure& structure) {
    const Equilibrium equilibrium = factorEquilibrium(structure);
    std::vector<State> states;
    for (const int column : equilibrium.factors.freeColumns) {
        State state = rightNullVector(equilibrium.factors, column);
        const double largest = largestOf(state);
        for (double& force : state) {
            force = std::fabs(force) <= kZeroForce * largest ? 0 : force / largest;
        }
        states.push_back(std::move(state));
    }
    return states;
}

bool cross(const Truss& truss, const Member& one, const Member& other) {
    const bool share = one.a == other.a || one.a == other.b || one.b == other.a || one.b == other.b;
    const auto at = [&](JointId joint) { return truss.joints[joint.at()].at; };
    const auto divides = [&](const Member& line, const Member& ends) {
        const Vec2 along = at(line.b) - at(line.a);
        return cross(along, at(ends.a) - at(line.a)) * cross(along, at(ends.b) - at(line.a)) < 0;
    };
    return !share && divides(one, other) && divides(other, one);
}

// A member that crosses this one, if there is one.
MemberId crossingOf(const Truss& truss, MemberId member) {
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        if (cross(truss, truss.members[member.at()], truss.members[i])) {
            return {static_cast<int>(i)};
        }
    }
    return {};
}

// Whether there are other supports on both sides of this one.
bool standsBetween(const Truss& truss, const Structure& structure, JointId joint) {
    bool left = false;
    bool right = false;
    for (const Restraint& restraint : structure.restraints) {
        const double away = truss.joints[restraint.joint.at()].at.x - truss.joints[joint.at()].at.x;
        left = left || away < 0;
        right = right || away > 0;
    }
    return left && right;
}

int membersAt(const Truss& truss, JointId joint) {
    return static_cast<int>(
        std::count_if(truss.members.begin(), truss.members.end(), [&](const Member& member) {
            return member.a == joint || member.b == joint;
        }));
}

struct Candidate {
    std::size_t column = 0;
    Release release{};
    int strangeness = 0; // 0: the first thing that one would think of
};

Candidate memberCandidate(const Truss& truss, MemberId member) {
    const MemberId other = crossingOf(truss, member);
    if (other.valid()) {
        return {member.at(), {member, ReleaseReason::Crossing, other}, 1};
    }
    return {member.at(), {member, ReleaseReason::SparesMember, {}}, 3};
}

Candidate restraintCandidate(const Truss& truss, const Structure& structure,
                             RestraintId restraint) {
    const Restraint& held = structure.restraints[restraint.at()];
    Candidate candidate{
        truss.members.size() + restraint.at(), {restraint, ReleaseReason::SparesRoller, {}}, 0};
    if (truss.supports[held.support.at()].kind == SupportKind::Roller) {
        candidate.strangeness = standsBetween(truss, structure, held.joint) ? 0 : 1;
        return candidate;
    }
    candidate.release.reason = ReleaseReason::PinSlides;
    candidate.strangeness = held.along.y == 0 ? 2 : 4;
    if (membersAt(truss, held.joint) < 2) {
        candidate.strangeness = 5; // better to cut the only member that it holds
    }
    return candidate;
}

std::vector<Candidate> candidatesOf(const Truss& truss, const Structure& structure,
                                    const std::vector<State>& states) {
    std::vector<Candidate> candidates;
    const std::size_t members = truss.members.size();
    for (std::size_t column = 0; column < states.front().size(); ++column) {
        const bool stressed = std::any_of(states.begin(), states.end(),
                                          [&](const State& state) { return state[column] != 0; });
        if (stressed) {
            candidates.push_back(
                column < members
                    ? memberCandidate(truss, {static_cast<int>(column)})
                    : restraintCandidate(truss, structure, {static_cast<int>(column - members)}));
        }
    }
    std::stable_sort(
        candidates.begin(), candidates.end(),
        [](const Candidate& a, const Candidate& b) { return a.strangeness < b.strangeness; });
    candidates.resize(std::min(candidates.size(), kManyColumns));
    return candidates;
}

struct Choice {
    std::vector<Candidate> candidates;
    std::vector<State> unit; // forces under each redundant of size 1
};

// The states of self-stress in which one of the candidates is 1 and the other 0; false when the
// truss without them would be a mechanism.
bool findUnitStates(const std::vector<State>& states, Choice& choice) {
    if (states.size() == 1) {
        const double own = states[0][choice.candidates[0].column];
        choice.unit = {states[0]};
        for (double& force : choice.unit[0]) {
            force /= own;
        }
        return own != 0;
    }
    const std::size_t one = choice.candidates[0].column;
    const std::size_t other = choice.candidates[1].column;
    const double determinant =
        states[0][one] * states[1][other] - states[0][other] * states[1][one];
    if (std::fabs(determinant) <= kZeroForce) {
        return false;
    }
    choice.unit.assign(2, State(states[0].size()));
    for (std::size_t i = 0; i < states[0].size(); ++i) {
        const double a = states[0][i];
        const double b = states[1][i];
        choice.unit[0][i] = (a * states[1][other] - b * states[0][other]) / determinant;
        choice.unit[1][i] = (b * states[0][one] - a * states[1][one]) / determinant;
    }
    return true;
}

// Smaller is better.
auto scoreOf(const Choice& choice) {
    constexpr double kSteps = 1e6; // smaller differences are ignored
    int strangeness = 0;
    for (const Candidate& candidate : choice.candidates) {
        strangeness += candidate.strangeness;
    }
    long entries = 0;
    double largest = 0;
    for (const State& state : choice.unit) {
        const double size = largestOf(state);
        largest = std::max(largest, size);
        entries += std::count_if(state.begin(), state.end(), [&](double force) {
            return std::fabs(force) > kZeroForce * size;
        });
    }
    // Of two that are equal, the one that was drawn later is taken as redundant.
    return std::tuple(largest > kLongNumber, strangeness, entries, std::round(largest * kSteps),
                      -static_cast<long>(choice.candidates.back().column),
                      -static_cast<long>(choice.candidates.front().column));
}

std::vector<Release> releasesIn(const Choice& choice) {
    std::vector<Release> releases;
    for (const Candidate& candidate : choice.candidates) {
        releases.push_back(candidate.release);
    }
    return releases;
}

// The best choices, up to the requested number, in order; no others are stored.
struct Ranking {
    std::size_t most;
    using Entry = std::pair<decltype(scoreOf(Choice{})), std::vector<Release>>;
    std::vector<Entry> entries{};

    void add(const Choice& choice) {
        const auto score = scoreOf(choice);
        const auto place =
            std::upper_bound(entries.begin(), entries.end(), score,
                             [](const auto& s, const Entry& entry) { return s < entry.first; });
        entries.insert(place, {score, releasesIn(choice)});
        entries.resize(std::min(entries.size(), most));
    }
};

} // namespace

std::vector<std::vector<Release>> releasesOf(const Truss& truss, const Structure& structure,
                                             std::size_t most) {
    const std::vector<State> states = statesOf(structure);
    const std::vector<Candidate> candidates = candidatesOf(truss, structure, states);
    Ranking ranking{most};
    const auto consider = [&](std::vector<Candidate> set) {
        std::sort(set.begin(), set.end(),
                  [](const Candidate& a, const Candidate& b) { return a.column < b.column; });
        Choice choice{std::move(set), {}};
        if (findUnitStates(states, choice)) {
            ranking.add(choice);
        }
    };
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        if (states.size() == 1) {
            consider({candidates[i]});
        }
        for (std::size_t k = i + 1; states.size() == 2 && k < candidates.size(); ++k) {
            consider({candidates[i], candidates[k]});
        }
    }
    std::vector<std::vector<Release>> sets;
    for (auto& [score, releases] : ranking.entries) {
        sets.push_back(std::move(releases));
    }
    return sets;
}

namespace {

// Adds what is left of a support when some of its restraints, numbered from `first`, are released.
void addSupport(const Support& support, RestraintId first, const std::vector<Release>& releases,
                std::vector<Support>& left) {
    Support one = support;
    if (support.kind == SupportKind::Roller) {
        if (!isReleased(releases, first)) {
            left.push_back(one);
        }
        return;
    }
    const bool level = !isReleased(releases, first);
    const bool upright = !isReleased(releases, RestraintId{first.index + 1});
    if (level != upright) {
        one.kind = SupportKind::Roller;
        one.reaction = upright ? 90 : 0;
    }
    if (level || upright) {
        left.push_back(one);
    }
}

} // namespace

Truss releasedTruss(const Truss& truss, const Structure& structure,
                    const std::vector<Release>& releases) {
    Truss released = underForces(truss, {});
    const std::vector<Support> supports = std::move(released.supports);
    released.supports.clear();
    SupportId last;
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        const SupportId support = structure.restraints[i].support;
        if (support != last) {
            addSupport(supports[support.at()], {static_cast<int>(i)}, releases, released.supports);
        }
        last = support;
    }
    std::vector<Member> members;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        if (!isReleased(releases, MemberId{static_cast<int>(i)})) {
            members.push_back(released.members[i]);
        }
    }
    released.members = std::move(members);
    // Rounding the input of a table would put its error into every sum.
    released.classSettings.carry = CarriedValues::Full;
    return released;
}

FoundForces forcesOfWhole(const Structure& whole, const std::vector<Release>& releases,
                          const FoundForces& released, const Release* own) {
    FoundForces forces;
    std::size_t next = 0;
    const auto spread = [&](const std::vector<double>& from, std::vector<double>& to, auto idAt) {
        for (std::size_t i = 0; i < to.size(); ++i) {
            const MemberOrRestraint it = idAt(static_cast<int>(i));
            to[i] = isReleased(releases, it) ? (own && own->of == it ? 1 : 0) : from[next++];
        }
        next = 0;
    };
    forces.members.resize(whole.bars.size());
    forces.restraints.resize(whole.restraints.size());
    spread(released.members, forces.members, [](int i) { return MemberId{i}; });
    spread(released.restraints, forces.restraints, [](int i) { return RestraintId{i}; });
    return forces;
}

} // namespace gusset
