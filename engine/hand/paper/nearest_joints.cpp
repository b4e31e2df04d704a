#include "hand/paper/nearest_joints.hpp"

#include <algorithm>
#include <utility>

namespace gusset {
namespace {

constexpr std::size_t kFew = 8; // joints in a leaf, searched one by one

// A lower bound on the distance to the joints between the corners: rounding preserves the order of
// differences, squares and sums.
double leastDistance(Vec2 from, Vec2 low, Vec2 high) {
    return length(Vec2{std::max({low.x - from.x, from.x - high.x, 0.0}),
                       std::max({low.y - from.y, from.y - high.y, 0.0})});
}

} // namespace

NearestJoints::NearestJoints(std::vector<Vec2> at)
    : at_(std::move(at)), kinds_(at_.size(), kNone), place_(at_.size()) {
    for (std::size_t i = 0; i < at_.size(); ++i) {
        order_.push_back({static_cast<int>(i)});
    }
    nodes_.push_back({0, at_.size()});
    halve(0, true);
    for (std::size_t i = 0; i < order_.size(); ++i) {
        place_[order_[i].at()] = i;
    }
}

void NearestJoints::halve(std::size_t node, bool byX) {
    const std::size_t begin = nodes_[node].begin;
    const std::size_t end = nodes_[node].end;
    if (begin == end) {
        return;
    }
    Vec2 low = at_[order_[begin].at()];
    Vec2 high = low;
    for (std::size_t i = begin; i < end; ++i) {
        const Vec2 at = at_[order_[i].at()];
        low = {std::min(low.x, at.x), std::min(low.y, at.y)};
        high = {std::max(high.x, at.x), std::max(high.y, at.y)};
    }
    nodes_[node].low = low;
    nodes_[node].high = high;
    if (end - begin <= kFew) {
        return;
    }
    const auto place = [&](std::size_t i) {
        return order_.begin() + static_cast<std::ptrdiff_t>(i);
    };
    const std::size_t middle = begin + (end - begin) / 2;
    std::nth_element(place(begin), place(middle), place(end), [&](JointId a, JointId b) {
        return byX ? at_[a.at()].x < at_[b.at()].x : at_[a.at()].y < at_[b.at()].y;
    });
    const std::size_t halves = nodes_.size();
    nodes_[node].halves = static_cast<int>(halves);
    nodes_.push_back({begin, middle});
    nodes_.push_back({middle, end});
    halve(halves, !byX);
    halve(halves + 1, !byX);
}

void NearestJoints::put(JointId joint, int kind) {
    const int before = std::exchange(kinds_[joint.at()], kind);
    const std::size_t place = place_[joint.at()];
    for (std::size_t node = 0;;) {
        Node& here = nodes_[node];
        if (before != kNone) {
            --here.counts[static_cast<std::size_t>(before)];
        }
        if (kind != kNone) {
            ++here.counts[static_cast<std::size_t>(kind)];
        }
        if (here.halves < 0) {
            return;
        }
        const auto first = static_cast<std::size_t>(here.halves);
        node = place < nodes_[first].end ? first : first + 1;
    }
}

bool NearestJoints::has(int kind) const {
    return nodes_.front().counts[static_cast<std::size_t>(kind)] > 0;
}

JointId NearestJoints::nearest(Vec2 from, int kind) const {
    Search search{from, kind};
    look(0, search);
    return search.best;
}

void NearestJoints::look(std::size_t node, Search& search) const {
    const Node& here = nodes_[node];
    if (here.counts[static_cast<std::size_t>(search.kind)] == 0 ||
        (search.best.valid() &&
         leastDistance(search.from, here.low, here.high) > search.distance)) {
        return;
    }
    if (here.halves < 0) {
        for (std::size_t i = here.begin; i < here.end; ++i) {
            const JointId joint = order_[i];
            const double distance = length(at_[joint.at()] - search.from);
            const bool nearer = !search.best.valid() || distance < search.distance ||
                                (distance == search.distance && joint < search.best);
            if (kinds_[joint.at()] == search.kind && nearer) {
                search.best = joint;
                search.distance = distance;
            }
        }
        return;
    }
    const auto first = static_cast<std::size_t>(here.halves);
    const auto away = [&](std::size_t half) {
        return leastDistance(search.from, nodes_[half].low, nodes_[half].high);
    };
    const std::size_t nearHalf = away(first) <= away(first + 1) ? first : first + 1;
    look(nearHalf, search);
    look(nearHalf == first ? first + 1 : first, search);
}

} // namespace gusset
