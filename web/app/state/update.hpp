#pragma once
// The one writer of the state.

#include "app/state/action.hpp"

#include <string_view>

namespace gusset {

void update(AppState&, const Actions&);

// Whether the link holds the very model that is on the board.
[[nodiscard]] bool isOnBoard(const AppState&, std::string_view link);
// True when it does: then only the loads that the link looks at are taken from it.
[[nodiscard]] bool takeLinkOfBoard(AppState&, std::string_view link);

// A state with this model on the board, its history empty, the camera fitted; it is fitted again
// whenever the page changes its shape, until somebody pans or zooms.
[[nodiscard]] AppState startWith(Truss);

} // namespace gusset
