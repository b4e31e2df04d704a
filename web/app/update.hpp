#pragma once
// The one writer of the state.

#include "app/action.hpp"

namespace gusset {

void update(AppState&, const Actions&);

// A state with this model on the board, its history empty, the camera fitted; it is fitted again
// whenever the page changes its shape, until somebody pans or zooms.
[[nodiscard]] AppState startWith(Truss);

} // namespace gusset
