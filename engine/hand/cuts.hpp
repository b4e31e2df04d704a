#pragma once
// Parts into which a truss can be cut: sets of joints, each the joints on one side. Private to
// hand/.

#include "hand/sheet.hpp"

#include <vector>

namespace gusset {

using Part = std::vector<JointId>; // in the order of the joints; neither empty nor the whole truss

// What hangs together by one joint only: the part without that joint.
struct HingedPart {
    Part part;
    JointId hinge;
};
[[nodiscard]] std::vector<HingedPart> hingedParts(const Sheet&);

// Both sides of every straight cut, hinged parts, and stiff groups of triangles with and without
// the joints that they share. Each part once. Large trusses are cut upright and level only.
[[nodiscard]] std::vector<Part> straightParts(const Sheet&);

// Parts by straight cuts that bend around one joint; none for large trusses.
[[nodiscard]] std::vector<Part> bentParts(const Sheet&);

} // namespace gusset
