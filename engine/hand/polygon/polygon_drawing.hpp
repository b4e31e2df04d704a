#pragma once
// A force polygon while it is drawn. Private to hand/.

#include "hand/polygon/force_polygon.hpp"
#include "hand/polygon/planar_faces.hpp"

#include <vector>

namespace gusset {

struct PolygonInHand {
    const Truss& truss;
    PlanarFaces faces;
    std::vector<int> spaceOfEdge;     // for each half-edge, the space on its left
    std::vector<bool> placed;         // for each space: its point is known
    std::vector<std::size_t> round{}; // the half-edges of the outer space, clockwise
    ForcePolygon polygon{};

    [[nodiscard]] std::size_t leftOf(std::size_t edge) const {
        return static_cast<std::size_t>(spaceOfEdge[edge]);
    }
    [[nodiscard]] std::size_t rightOf(std::size_t edge) const { return leftOf(edge ^ 1u); }
    [[nodiscard]] Vec2 runOf(std::size_t edge) const { // length units
        return truss.joints[faces.edges[edge].to.at()].at -
               truss.joints[faces.edges[edge].from.at()].at;
    }
};

// The members' lines, space by space: next is a space that two known points determine, by members
// that are not parallel, and of several the one with most known points beside it, named first.
void drawMembers(PolygonInHand&, const std::vector<double>& forces);

// Where the name of each space stands: inside, in the middle of its area; outside, beside the
// middle of its stretch of the truss; a space that no member borders, at its joint between the two
// forces.
void seatNames(PolygonInHand&);

} // namespace gusset
