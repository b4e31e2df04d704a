#pragma once
// Taking things out of a model, with everything that can't stand without them.

#include "model/edit/edit.hpp"

namespace gusset {

// With a joint go its members, supports and loads; chords and paths close over it, and go as well
// when fewer than two joints are left of them. Ids without a thing behind them are passed over.
void removeThings(Truss&, const Things&);

// Loads on members that are no longer there.
void dropLoadsOffMembers(Truss&);

} // namespace gusset
