#pragma once
// The spaces into which the members of a truss divide the plane. Private to hand/.

#include "model/truss/truss.hpp"

#include <optional>
#include <utility>
#include <vector>

namespace gusset {

// Walking along a member from one joint to the other; the space it belongs to lies on the left.
struct HalfEdge {
    JointId from;
    JointId to;
    MemberId member;
    int next = -1; // the half-edge that goes on around the same space
    int face = -1;
};

struct PlanarFaces {
    std::vector<HalfEdge> edges; // 2i and 2i + 1 are the two directions of member i
    int count = 0;
    int outer = -1; // the space around the truss
};

[[nodiscard]] std::optional<std::pair<MemberId, MemberId>> crossingMembers(const Truss&);
// A joint that no chain of members ties to the first one.
[[nodiscard]] std::optional<JointId> looseJoint(const Truss&);
// Precondition: no members cross, all joints hang together.
[[nodiscard]] PlanarFaces planarFaces(const Truss&);

} // namespace gusset
