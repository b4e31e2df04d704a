#include "exchange/drawings/net.hpp"

#include "core/index.hpp"
#include "core/tolerance.hpp"

#include <algorithm>
#include <map>
#include <numeric>
#include <utility>

namespace gusset {

namespace {

struct PointGroups {
    std::vector<int> of; // the group of each point
    std::vector<std::vector<int>> points;
};

// Which points lie within a distance of each other: sorted by place, so that few pairs are tried.
class NearPoints {
public:
    explicit NearPoints(const std::vector<Vec2>& points) : points_(points), order_(points.size()) {
        std::iota(order_.begin(), order_.end(), 0);
        std::sort(order_.begin(), order_.end(), [&](int a, int b) {
            const Vec2 one = points_[at(a)];
            const Vec2 other = points_[at(b)];
            return one.x != other.x ? one.x < other.x : one.y < other.y;
        });
    }

    // Calls near(a, b) for every pair.
    template <class Near>
    void eachPair(double within, const Near& near) const {
        for (std::size_t i = 0; i < order_.size(); ++i) {
            const Vec2 here = points_[at(order_[i])];
            for (std::size_t j = i + 1; j < order_.size(); ++j) {
                const Vec2 there = points_[at(order_[j])];
                if (there.x - here.x > within) {
                    break;
                }
                if (there.x == here.x && there.y - here.y > within) {
                    j = lastAbove(j, here.x); // sorted upwards: no other of this x is near
                } else if (length(there - here) <= within) {
                    near(order_[i], order_[j]);
                }
            }
        }
    }

private:
    [[nodiscard]] std::size_t lastAbove(std::size_t from, double x) const {
        const auto next =
            std::partition_point(order_.begin() + static_cast<long>(from), order_.end(),
                                 [&](int it) { return points_[at(it)].x <= x; });
        return static_cast<std::size_t>(next - order_.begin()) - 1;
    }

    const std::vector<Vec2>& points_;
    std::vector<int> order_;
};

// The groups of points that are connected by steps within the tolerance.
PointGroups groupsWithin(const std::vector<Vec2>& points, double tolerance) {
    std::vector<int> parent(points.size());
    std::iota(parent.begin(), parent.end(), 0);
    const auto rootOf = [&](int point) {
        while (parent[at(point)] != point) {
            point = parent[at(point)] = parent[at(parent[at(point)])];
        }
        return point;
    };
    NearPoints(points).eachPair(tolerance,
                                [&](int a, int b) { parent[at(rootOf(b))] = rootOf(a); });
    PointGroups groups;
    groups.of.assign(points.size(), -1);
    std::map<int, int> numbers;
    for (int i = 0; i < toInt(points.size()); ++i) {
        const auto [found, isNew] = numbers.try_emplace(rootOf(i), toInt(groups.points.size()));
        if (isNew) {
            groups.points.emplace_back();
        }
        groups.of[at(i)] = found->second;
        groups.points[at(found->second)].push_back(i);
    }
    return groups;
}

Vec2 middleOf(const std::vector<Vec2>& points, const std::vector<int>& group) {
    Vec2 sum;
    for (const int point : group) {
        sum = sum + (points[at(point)] - points[at(group.front())]);
    }
    return points[at(group.front())] + (1.0 / static_cast<double>(group.size())) * sum;
}

// Points from `firstMark` on are marks.
NetJoint jointOf(const std::vector<Vec2>& points, const std::vector<int>& group, int firstMark) {
    const Vec2 middle = middleOf(points, group);
    const bool isMarked = group.back() >= firstMark;
    const Vec2* nearest = nullptr;
    for (const int point : group) {
        const Vec2& here = points[at(point)];
        if (isMarked == (point >= firstMark) &&
            (!nearest || length(here - middle) < length(*nearest - middle))) {
            nearest = &here;
        }
    }
    NetJoint joint;
    joint.at = *nearest;
    joint.isEnd = group.front() < firstMark;
    Vec2 low = joint.at;
    Vec2 high = joint.at;
    for (const int point : group) {
        const Vec2 here = points[at(point)];
        const double moved = length(here - joint.at);
        joint.moved += moved > 0 ? 1 : 0;
        joint.farthest = std::max(joint.farthest, moved);
        low = {std::min(low.x, here.x), std::min(low.y, here.y)};
        high = {std::max(high.x, here.x), std::max(high.y, here.y)};
    }
    joint.across = length(high - low);
    return joint;
}

// A joint strictly within a line, by how far along.
struct OnTheWay {
    double along = 0;
    int joint = 0;
};

class Dividing {
public:
    Dividing(Net& net, double tolerance) : net_(net), tolerance_(tolerance) {
        order_.resize(net.joints.size());
        std::iota(order_.begin(), order_.end(), 0);
        std::sort(order_.begin(), order_.end(),
                  [&](int a, int b) { return placeOf(a).x < placeOf(b).x; });
    }

    [[nodiscard]] std::vector<int> jointsOn(int a, int b) const {
        const Vec2 from = placeOf(a);
        const Vec2 along = placeOf(b) - from;
        const double size = length(along);
        const double low = std::min(from.x, placeOf(b).x) - tolerance_;
        const double high = std::max(from.x, placeOf(b).x) + tolerance_;
        std::vector<OnTheWay> on;
        auto it = std::partition_point(order_.begin(), order_.end(),
                                       [&](int joint) { return placeOf(joint).x < low; });
        for (; it != order_.end() && placeOf(*it).x <= high; ++it) {
            const Vec2 to = placeOf(*it) - from;
            const double reach = dot(along, to) / size;
            const bool isBetween = reach > 0 && reach < size;
            if (*it != a && *it != b && isBetween &&
                std::abs(cross(along, to)) <= std::max(tolerance_, kSameSpot * size) * size) {
                on.push_back({reach, *it});
            }
        }
        std::sort(on.begin(), on.end(), [](const OnTheWay& one, const OnTheWay& other) {
            return one.along != other.along ? one.along < other.along : one.joint < other.joint;
        });
        std::vector<int> joints;
        for (const OnTheWay& each : on) {
            joints.push_back(each.joint);
        }
        return joints;
    }

private:
    [[nodiscard]] Vec2 placeOf(int joint) const { return net_.joints[at(joint)].at; }

    const Net& net_;
    double tolerance_;
    std::vector<int> order_;
};

void addPieces(Net& net, const std::vector<std::pair<int, int>>& lines, double tolerance) {
    const Dividing dividing(net, tolerance);
    std::map<std::pair<int, int>, std::size_t> known;
    const auto add = [&](int a, int b) {
        const auto [found, isNew] = known.try_emplace(std::minmax(a, b), net.members.size());
        if (isNew) {
            net.members.push_back({a, b, 1});
        } else {
            ++net.members[found->second].times;
        }
    };
    std::size_t pieces = 0;
    for (const auto& [a, b] : lines) {
        DividedLine line{a, b, dividing.jointsOn(a, b)};
        pieces += line.at.size() + 1;
        if (pieces > kMostNetMembers) {
            net.isTooLarge = true;
            return;
        }
        int from = a;
        for (const int joint : line.at) {
            add(from, joint);
            from = joint;
        }
        add(from, b);
        if (!line.at.empty()) {
            net.divided.push_back(std::move(line));
        }
    }
}

// Joints that no member uses, as those of marks beside all lines, are taken out.
void dropUnused(Net& net) {
    std::vector<bool> isUsed(net.joints.size(), false);
    for (const NetMember& member : net.members) {
        isUsed[at(member.a)] = isUsed[at(member.b)] = true;
    }
    std::vector<int> now(net.joints.size(), -1);
    std::vector<NetJoint> joints;
    for (std::size_t i = 0; i < isUsed.size(); ++i) {
        if (isUsed[i]) {
            now[i] = toInt(joints.size());
            joints.push_back(net.joints[i]);
        } else if (!net.joints[i].isEnd) {
            net.looseMarks.push_back(net.joints[i].at);
        }
    }
    net.joints = std::move(joints);
    for (NetMember& member : net.members) {
        member = {now[at(member.a)], now[at(member.b)], member.times};
    }
    for (DividedLine& line : net.divided) {
        line.a = now[at(line.a)];
        line.b = now[at(line.b)];
        for (int& joint : line.at) {
            joint = now[at(joint)];
        }
    }
}

} // namespace

double chosenTolerance(const std::vector<DrawnLine>& lines) {
    Vec2 low = lines.empty() ? Vec2{} : lines.front().from;
    Vec2 high = low;
    std::vector<double> lengths;
    for (const DrawnLine& line : lines) {
        for (const Vec2 end : {line.from, line.to}) {
            low = {std::min(low.x, end.x), std::min(low.y, end.y)};
            high = {std::max(high.x, end.x), std::max(high.y, end.y)};
        }
        if (line.from != line.to) {
            lengths.push_back(length(line.to - line.from));
        }
    }
    if (lengths.empty()) {
        return 0;
    }
    const auto middle = lengths.begin() + static_cast<long>(lengths.size() / 2);
    std::nth_element(lengths.begin(), middle, lengths.end());
    return std::min(kDrawnSpotOfSide * std::max(high.x - low.x, high.y - low.y),
                    kDrawnSpotOfLine * *middle);
}

Net netOf(const LinesFound& found, double tolerance) {
    std::vector<Vec2> points;
    for (const DrawnLine& line : found.lines) {
        points.push_back(line.from);
        points.push_back(line.to);
    }
    const int firstMark = toInt(points.size());
    points.insert(points.end(), found.marks.begin(), found.marks.end());
    const PointGroups groups = groupsWithin(points, tolerance);
    Net net;
    for (const std::vector<int>& group : groups.points) {
        net.joints.push_back(jointOf(points, group, firstMark));
    }
    std::vector<std::pair<int, int>> lines;
    for (std::size_t i = 0; i < found.lines.size(); ++i) {
        const int a = groups.of[2 * i];
        const int b = groups.of[2 * i + 1];
        if (a == b) {
            net.tooShort.push_back(found.lines[i]);
        } else {
            lines.emplace_back(a, b);
        }
    }
    addPieces(net, lines, tolerance);
    if (!net.isTooLarge) {
        dropUnused(net);
    }
    return net;
}

} // namespace gusset
