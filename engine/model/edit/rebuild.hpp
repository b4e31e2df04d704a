#pragma once
// Edits that change how the joints of a model hang together: splitting, merging, copying. Each
// takes ids that are there.

#include "model/edit/edit.hpp"

namespace gusset {

// The joint at this place, to within the working accuracy of coordinates; none if there is none.
[[nodiscard]] JointId jointAt(const Truss&, Vec2);
[[nodiscard]] JointId addJoint(Truss&, Vec2);

// Puts the joint into the member: the half from `a` keeps the member's id, misfit and unknown keys,
// the other half comes last. Chords and paths that ran along the member run through the joint. A
// half that would double another member goes.
void splitMember(Truss&, MemberId, JointId);

// Members between the two joints and members that would be double go; so does a support of the same
// kind and direction as one that `into` has.
void mergeJoints(Truss&, JointId gone, JointId into);

void copyThings(Truss&, const CopyThings&);

} // namespace gusset
