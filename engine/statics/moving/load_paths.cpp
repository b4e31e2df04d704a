#include "statics/moving/load_paths.hpp"

#include "core/tolerance.hpp"
#include "model/truss/member_index.hpp"
#include "model/validate/path_faults.hpp"
#include "phrases/results/unsolved.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>

namespace gusset {

namespace {

constexpr double kFar = std::numeric_limits<double>::infinity();

double leastAdvance(const Truss& truss) {
    const Extent box = extent(truss);
    return kSameSpot * std::max(box.high.x - box.low.x, box.high.y - box.low.y);
}

// For each joint, the joints to the right that a member connects it to.
std::vector<std::vector<JointId>> onwards(const Truss& truss) {
    const double least = leastAdvance(truss);
    std::vector<std::vector<JointId>> next(truss.joints.size());
    for (const Member& member : truss.members) {
        const double advance = truss.joints[member.b.at()].at.x - truss.joints[member.a.at()].at.x;
        if (advance > least) {
            next[member.a.at()].push_back(member.b);
        } else if (advance < -least) {
            next[member.b.at()].push_back(member.a);
        }
    }
    return next;
}

std::vector<std::size_t> fromTheLeft(const Truss& truss) {
    std::vector<std::size_t> order(truss.joints.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        order[i] = i;
    }
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return truss.joints[a].at.x < truss.joints[b].at.x;
    });
    return order;
}

double areaUnder(const Truss& truss, std::size_t from, std::size_t to) {
    const Vec2 a = truss.joints[from].at;
    const Vec2 b = truss.joints[to].at;
    return (b.x - a.x) * (a.y + b.y) / 2;
}

// Empty when nothing leads to the end.
std::vector<JointId> chainTo(JointId end, const std::vector<JointId>& before) {
    std::vector<JointId> path;
    for (JointId at = end; at.valid(); at = before[at.at()]) {
        path.push_back(at);
    }
    std::reverse(path.begin(), path.end());
    return path.size() < 2 ? std::vector<JointId>{} : path;
}

// The path with the least `sign` times area, joint by joint from the left.
std::vector<JointId> extremePath(const Truss& truss, double sign) {
    if (truss.members.empty()) {
        return {};
    }
    const Extent box = extent(truss);
    const double least = leastAdvance(truss);
    const std::vector<std::vector<JointId>> next = onwards(truss);
    std::vector<double> best(truss.joints.size(), kFar);
    std::vector<JointId> before(truss.joints.size());
    JointId end;
    for (const std::size_t i : fromTheLeft(truss)) {
        const double x = truss.joints[i].at.x;
        if (x <= box.low.x + least) {
            best[i] = 0;
        }
        if (best[i] == kFar) {
            continue;
        }
        if (x >= box.high.x - least && (!end.valid() || best[i] < best[end.at()])) {
            end = JointId{static_cast<int>(i)};
        }
        for (const JointId to : next[i]) {
            const double sum = best[i] + sign * areaUnder(truss, i, to.at());
            if (sum < best[to.at()]) {
                best[to.at()] = sum;
                before[to.at()] = JointId{static_cast<int>(i)};
            }
        }
    }
    return chainTo(end, before);
}

// The next connected joint on the straight line from one joint to another; none.
JointId straightOn(const Truss& truss, const std::vector<JointId>& next, JointId from, JointId to) {
    const Vec2 start = truss.joints[from.at()].at;
    const Vec2 whole = truss.joints[to.at()].at - start;
    JointId nearest;
    for (const JointId joint : next) {
        const Vec2 way = truss.joints[joint.at()].at - start;
        const double aside = std::abs(cross(whole, way)) / (length(whole) * length(way));
        const bool between = aside <= kParallel && way.x <= whole.x * (1 + kSameSpot);
        if (between && (!nearest.valid() || way.x < (truss.joints[nearest.at()].at - start).x)) {
            nearest = joint;
        }
    }
    return nearest;
}

} // namespace

std::vector<JointId> lowestPath(const Truss& truss) { return extremePath(truss, 1); }

std::vector<JointId> highestPath(const Truss& truss) { return extremePath(truss, -1); }

std::vector<JointId> fromLeft(const Truss& truss, std::vector<JointId> joints) {
    std::stable_sort(joints.begin(), joints.end(), [&](JointId a, JointId b) {
        const Vec2 one = truss.joints[a.at()].at;
        const Vec2 other = truss.joints[b.at()].at;
        return one.x != other.x ? one.x < other.x : one.y < other.y;
    });
    return joints;
}

Outcome<std::vector<JointId>> pathThrough(const Truss& truss, std::vector<JointId> picked) {
    if (picked.size() < 2) {
        return Issue{IssueCode::Missing, "path", phrase::kPathNeedsPicked};
    }
    picked = fromLeft(truss, std::move(picked));
    const MemberIndex members(truss);
    const std::vector<std::vector<JointId>> next = onwards(truss);
    std::vector<JointId> path{picked.front()};
    for (std::size_t i = 1; i < picked.size(); ++i) {
        while (path.back() != picked[i] && !members.find(path.back(), picked[i]).valid()) {
            const JointId on = straightOn(truss, next[path.back().at()], path.back(), picked[i]);
            if (!on.valid()) {
                break;
            }
            path.push_back(on);
        }
        if (path.back() != picked[i]) {
            path.push_back(picked[i]);
        }
    }
    if (const auto fault = faultOfPath(truss, members, path, "path")) {
        return *fault;
    }
    return path;
}

} // namespace gusset
