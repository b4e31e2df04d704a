#include "design/member_lengths.hpp"

#include <algorithm>

namespace gusset {

namespace {

constexpr double kCosineOfTurn = 0.9396926207859084; // 20°

class ChordWalk {
public:
    ChordWalk(const Truss& truss, const Structure& structure)
        : truss_(truss), structure_(structure), members_(truss.joints.size()),
          held_(truss.joints.size(), false) {
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            members_[truss.members[i].a.at()].push_back(i);
            members_[truss.members[i].b.at()].push_back(i);
        }
        for (const JointId joint : *truss.checks.held) {
            held_[joint.at()] = true;
        }
    }

    [[nodiscard]] double lengthThrough(std::size_t member) const {
        const Member& it = truss_.members[member];
        return structure_.bars[member].length + beyond(member, it.b) + beyond(member, it.a);
    }

private:
    // The length that is added at this end of the member; once round, if a ring has no held joint.
    [[nodiscard]] double beyond(std::size_t member, JointId end) const {
        double length = 0;
        const std::size_t start = member;
        for (std::size_t steps = 0; steps < truss_.members.size() && !held_[end.at()]; ++steps) {
            const std::optional<std::size_t> next = straightOn(member, end);
            if (!next || *next == start) {
                break;
            }
            member = *next;
            length += structure_.bars[member].length;
            end = otherEnd(member, end);
        }
        return length;
    }

    [[nodiscard]] JointId otherEnd(std::size_t member, JointId end) const {
        const Member& it = truss_.members[member];
        return it.a == end ? it.b : it.a;
    }

    // From the joint to the other end, of length 1.
    [[nodiscard]] Vec2 wayFrom(std::size_t member, JointId joint) const {
        const Vec2 way =
            truss_.joints[otherEnd(member, joint).at()].at - truss_.joints[joint.at()].at;
        return (1 / length(way)) * way;
    }

    [[nodiscard]] std::optional<std::size_t> straightOn(std::size_t member, JointId joint) const {
        const Vec2 on = -wayFrom(member, joint);
        std::optional<std::size_t> best;
        double straightest = kCosineOfTurn;
        for (const std::size_t other : members_[joint.at()]) {
            const double cosine = dot(on, wayFrom(other, joint));
            if (other != member && cosine >= straightest) {
                straightest = cosine;
                best = other;
            }
        }
        return best;
    }

    const Truss& truss_;
    const Structure& structure_;
    std::vector<std::vector<std::size_t>> members_; // at each joint
    std::vector<bool> held_;
};

} // namespace

std::vector<MemberLength> lengthsOf(const Truss& truss, const Structure& structure) {
    std::optional<ChordWalk> walk;
    if (truss.checks.held) {
        walk.emplace(truss, structure);
    }
    std::vector<MemberLength> lengths;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const LengthFactors& factors = truss.members[i].factors;
        const double between = structure.bars[i].length;
        lengths.push_back({between, walk ? walk->lengthThrough(i) : between,
                           factors.in.value_or(truss.checks.effectiveLength),
                           factors.out.value_or(truss.checks.effectiveLength)});
    }
    return lengths;
}

} // namespace gusset
