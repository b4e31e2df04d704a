#pragma once
// The one writer of the state.

#include "app/action.hpp"

namespace gusset {

void update(AppState&, const Actions&);

// A state with this model on the board, its history empty, the camera fitted when `size` is known.
[[nodiscard]] AppState startWith(Truss);

} // namespace gusset
