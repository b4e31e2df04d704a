// The search for ways to stop a mechanism; see mechanism.hpp.
#include "statics/stability/mechanism.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {

namespace {

constexpr std::size_t kSmall = 200;  // joints: up to here every pair is tried
constexpr std::size_t kStarts = 200; // moving joints to search from in larger trusses
constexpr int kNear = 3;             // members away
constexpr std::size_t kShortList = 24;

using Neighbours = std::vector<std::vector<int>>;

Neighbours neighboursOf(const Structure& structure) {
    Neighbours neighbours(structure.joints.size());
    for (const Bar& bar : structure.bars) {
        neighbours[static_cast<std::size_t>(bar.a)].push_back(bar.b);
        neighbours[static_cast<std::size_t>(bar.b)].push_back(bar.a);
    }
    return neighbours;
}

// Joints near a start, for one start at a time: those within kNear members of it; in a small truss,
// all.
class Surroundings {
public:
    explicit Surroundings(const Structure& structure)
        : neighbours_(neighboursOf(structure)), seenFrom_(neighbours_.size(), -1),
          joinedTo_(neighbours_.size(), -1) {}

    [[nodiscard]] std::vector<int> near(int start) {
        std::vector<int> found;
        if (neighbours_.size() <= kSmall) {
            for (std::size_t i = 0; i < neighbours_.size(); ++i) {
                found.push_back(static_cast<int>(i));
            }
            return found;
        }
        found.push_back(start);
        seenFrom_[static_cast<std::size_t>(start)] = start;
        std::size_t from = 0;
        for (int step = 0; step < kNear; ++step) {
            for (const std::size_t end = found.size(); from < end; ++from) {
                for (int next : neighbours_[static_cast<std::size_t>(found[from])]) {
                    if (std::exchange(seenFrom_[static_cast<std::size_t>(next)], start) != start) {
                        found.push_back(next);
                    }
                }
            }
        }
        return found;
    }

    // Whether a member connects it to the start; mark the start first.
    void mark(int start) {
        for (const int next : neighbours_[static_cast<std::size_t>(start)]) {
            joinedTo_[static_cast<std::size_t>(next)] = start;
        }
    }
    [[nodiscard]] bool isJoined(int start, int other) const {
        return joinedTo_[static_cast<std::size_t>(other)] == start;
    }

private:
    Neighbours neighbours_;
    std::vector<int> seenFrom_; // the start from which each joint was last found
    std::vector<int> joinedTo_; // likewise
};

struct Candidate {
    Cure cure;
    double worth = 0;
};

double meanLength(const Structure& structure) {
    double sum = 0;
    for (const Bar& bar : structure.bars) {
        sum += bar.length;
    }
    return structure.bars.empty() ? structure.extent
                                  : sum / static_cast<double>(structure.bars.size());
}

// Worth more the faster the mechanism stretches it, and less if it is longer than the usual member.
double worthOf(const Structure& structure, const Mechanism& mechanism, const Cure& cure,
               double usual) {
    const double span = length(structure.joints[cure.b.at()] - structure.joints[cure.a.at()]);
    if (span <= kSameSpot * structure.extent) {
        return 0;
    }
    const double rate = std::abs(rateOf(structure, mechanism, cure));
    return rate < kHolds ? 0 : rate / (1 + (span / usual) * (span / usual));
}

bool strictlyCross(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
    const double small = kSameSpot * length(b - a) * length(d - c);
    const double c1 = cross(b - a, c - a);
    const double c2 = cross(b - a, d - a);
    const double c3 = cross(d - c, a - c);
    const double c4 = cross(d - c, b - c);
    return std::abs(c1) > small && std::abs(c2) > small && std::abs(c3) > small &&
           std::abs(c4) > small && (c1 > 0) != (c2 > 0) && (c3 > 0) != (c4 > 0);
}

bool runsThroughJoint(const Structure& structure, Vec2 a, Vec2 b) {
    const Vec2 run = b - a;
    const double squared = dot(run, run);
    return std::any_of(structure.joints.begin(), structure.joints.end(), [&](Vec2 joint) {
        const double along = dot(joint - a, run);
        return along > kSameSpot * squared && along < (1 - kSameSpot) * squared &&
               std::abs(cross(run, joint - a)) <= kParallel * squared;
    });
}

// A member that crosses others or passes through a joint works just as well, but is not what one
// would build.
double drawback(const Structure& structure, const Cure& cure) {
    const Vec2 a = structure.joints[cure.a.at()];
    const Vec2 b = structure.joints[cure.b.at()];
    if (runsThroughJoint(structure, a, b)) {
        return 0.1;
    }
    const bool crosses =
        std::any_of(structure.bars.begin(), structure.bars.end(), [&](const Bar& bar) {
            return strictlyCross(a, b, structure.joints[static_cast<std::size_t>(bar.a)],
                                 structure.joints[static_cast<std::size_t>(bar.b)]);
        });
    return crosses ? 0.5 : 1;
}

void keepBest(std::vector<Candidate>& candidates) {
    const auto better = [](const Candidate& a, const Candidate& b) { return a.worth > b.worth; };
    std::stable_sort(candidates.begin(), candidates.end(), better);
    if (candidates.size() > kShortList) {
        candidates.resize(kShortList);
    }
}

std::optional<Cure> bestMember(const Structure& structure, const Mechanism& mechanism) {
    Surroundings surroundings(structure);
    const double usual = meanLength(structure);
    std::vector<Candidate> candidates;
    for (std::size_t i = 0; i < std::min(mechanism.moving.size(), kStarts); ++i) {
        const JointId start = mechanism.moving[i];
        surroundings.mark(start.index);
        for (int other : surroundings.near(start.index)) {
            if (other == start.index || surroundings.isJoined(start.index, other)) {
                continue;
            }
            Cure cure;
            cure.a = JointId{std::min(start.index, other)};
            cure.b = JointId{std::max(start.index, other)};
            const double worth = worthOf(structure, mechanism, cure, usual);
            if (worth > 0) {
                candidates.push_back({cure, worth});
            }
        }
        if (candidates.size() > 50 * kShortList) {
            keepBest(candidates);
        }
    }
    keepBest(candidates);
    for (Candidate& candidate : candidates) {
        candidate.worth *= drawback(structure, candidate.cure);
    }
    keepBest(candidates);
    if (candidates.empty()) {
        return std::nullopt;
    }
    return candidates.front().cure;
}

std::vector<int> restraintsOfJoints(const Structure& structure) {
    std::vector<int> count(structure.joints.size());
    for (const Restraint& restraint : structure.restraints) {
        ++count[restraint.joint.at()];
    }
    return count;
}

// A pin in place of a roller is preferred, then a roller where the truss moves most; at the lowest
// joints rather than higher up.
std::optional<Cure> bestSupport(const Structure& structure, const Mechanism& mechanism) {
    const std::vector<int> held = restraintsOfJoints(structure);
    double lowest = structure.joints.front().y;
    for (Vec2 joint : structure.joints) {
        lowest = std::min(lowest, joint.y);
    }
    Candidate best;
    best.worth = kHolds;
    for (JointId joint : mechanism.moving) {
        const Vec2 v = mechanism.velocities[joint.at()];
        const bool atFoot = structure.joints[joint.at()].y <= lowest + kSameSpot * structure.extent;
        Candidate candidate;
        candidate.cure.support = joint;
        candidate.cure.pin = held[joint.at()] == 1;
        candidate.cure.reaction = std::abs(v.y) >= std::abs(v.x) ? 90 : 0;
        candidate.worth = std::abs(rateOf(structure, mechanism, candidate.cure)) *
                          (candidate.cure.pin ? 1.5 : 1) * (atFoot ? 1.2 : 1);
        if (candidate.worth > best.worth) {
            best = candidate;
        }
    }
    if (!best.cure.support.valid()) {
        return std::nullopt;
    }
    return best.cure;
}

} // namespace

Cures curesOf(const Structure& structure, const Mechanism& mechanism) {
    if (mechanism.moving.empty()) {
        return {};
    }
    return {bestMember(structure, mechanism), bestSupport(structure, mechanism)};
}

} // namespace gusset
