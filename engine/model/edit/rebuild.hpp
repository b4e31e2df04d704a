#pragma once
// Edits that change how the joints of a model are connected: splitting, merging, copying.
// Precondition for each: its ids exist.

#include "model/edit/edit.hpp"

namespace gusset {

// The joint at this position, to within the working accuracy of coordinates; none if there is none.
[[nodiscard]] JointId jointAt(const Truss&, Vec2);
[[nodiscard]] JointId addJoint(Truss&, Vec2);

// Inserts the joint into the member: the half from `a` keeps the member's id, misfit and unknown
// keys, the other half is added at the end. Chords and paths along the member go through the joint.
// A half that would duplicate another member is dropped.
void splitMember(Truss&, MemberId, JointId);

// Drops members between the two joints, members that would be duplicates, and a support of the same
// kind and direction as one that `into` has.
void mergeJoints(Truss&, JointId gone, JointId into);

void copyThings(Truss&, const CopyThings&);

} // namespace gusset
