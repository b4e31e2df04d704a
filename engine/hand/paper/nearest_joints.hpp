#pragma once
// The nearest joint of a kind, while joints change kind: a k-d tree that counts each kind in every
// half, so that a query or a change takes about log n steps (J. L. Bentley, Comm. ACM 18 (1975)
// 509–517). Private to hand/.

#include "core/ids.hpp"
#include "core/vec2.hpp"

#include <array>
#include <vector>

namespace gusset {

class NearestJoints {
public:
    static constexpr int kKinds = 8;
    static constexpr int kNone = -1; // for a joint that is never searched for

    explicit NearestJoints(std::vector<Vec2> at); // length units; all joints start without a kind

    void put(JointId, int kind); // sets the joint's kind
    [[nodiscard]] int kindOf(JointId joint) const { return kinds_[joint.at()]; }
    [[nodiscard]] bool has(int kind) const;
    // The first of equally near joints; none if there is none of the kind.
    [[nodiscard]] JointId nearest(Vec2 from, int kind) const;

private:
    struct Node { // joints from begin to end, in tree order
        std::size_t begin = 0;
        std::size_t end = 0;
        int halves = -1; // the first of its two halves; -1: a leaf
        Vec2 low{};
        Vec2 high{};
        std::array<int, kKinds> counts{};
    };
    struct Search {
        Vec2 from;
        int kind;
        JointId best{};
        double distance = 0;
    };

    void halve(std::size_t node, bool byX);
    void look(std::size_t node, Search&) const;

    std::vector<Vec2> at_;
    std::vector<int> kinds_;         // of each joint
    std::vector<JointId> order_;     // in tree order: the joints of a half are contiguous
    std::vector<std::size_t> place_; // of each joint in that order
    std::vector<Node> nodes_;
};

} // namespace gusset
