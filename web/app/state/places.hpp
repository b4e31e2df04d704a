#pragma once
// Where the board and the notebook are, put aside by reading mode, and brought back when it is
// left. Only `update` calls this.

#include "app/state/state.hpp"

namespace gusset {

// The whole truss in the free part of the board.
void fit(AppState&);

// The picture beside the working shows the whole truss.
void read(AppState&, bool on);
void leaveWorking(AppState&); // to where the notebook was before
// Another truss is on the board: what was put aside shows it as a whole.
void forgetPlaces(AppState&);

} // namespace gusset
