#pragma once
// The parts into which a truss can be cut: sets of joints, each the joints on one side. Private to
// hand/.

#include "hand/paper/divisions.hpp"
#include "hand/paper/sheet.hpp"

#include <vector>

namespace gusset {

// A part connected to the rest by one joint only, without that joint.
struct HingedPart {
    TrussPart part;
    JointId hinge;
};
[[nodiscard]] const std::vector<HingedPart>& hingedParts(const Sheet&);

// Every straight cut, hinged parts, and stiff groups of triangles with and without the joints that
// they share. Large trusses are cut along vertical and horizontal lines only.
[[nodiscard]] const Divisions& straightCuts(const Sheet&);

// Straight cuts bent around one joint; none for large trusses.
[[nodiscard]] const Divisions& bentCuts(const Sheet&);

// All joints that may lie on the line of a member, including its ends, in joint order: some lie
// slightly further off than `spot`.
[[nodiscard]] const std::vector<JointId>& jointsOnLine(const Sheet&, MemberId);

} // namespace gusset
