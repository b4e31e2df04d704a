#pragma once
// Removing things from a model, with everything that depends on them.

#include "model/edit/edit.hpp"

namespace gusset {

// A joint's members, supports and loads go with it; chords and paths skip it, and are removed too
// when fewer than two joints are left. Invalid ids are ignored.
void removeThings(Truss&, const Things&);

// Removes loads on members that no longer exist.
void dropLoadsOffMembers(Truss&);

} // namespace gusset
