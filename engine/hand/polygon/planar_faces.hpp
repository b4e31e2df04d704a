#pragma once
// The spaces into which the members of a truss divide the plane. Private to hand/.

#include "model/truss/truss.hpp"

#include <optional>
#include <utility>
#include <vector>

namespace gusset {

// One direction along a member from joint to joint; its space lies on the left.
struct HalfEdge {
    JointId from;
    JointId to;
    MemberId member;
    int next = -1; // the next half-edge around the same space
    int face = -1;
};

struct PlanarFaces {
    std::vector<HalfEdge> edges; // 2i and 2i + 1 are the two directions of member i
    int count = 0;
    int outer = -1; // the space around the truss
};

[[nodiscard]] std::optional<std::pair<MemberId, MemberId>> crossingMembers(const Truss&);
// A joint that no chain of members connects to the first one.
[[nodiscard]] std::optional<JointId> looseJoint(const Truss&);
// Precondition: no members cross, and all joints are connected.
[[nodiscard]] PlanarFaces planarFaces(const Truss&);

} // namespace gusset
