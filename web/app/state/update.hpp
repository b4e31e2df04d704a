#pragma once
// The only writer of the state.

#include "app/state/action.hpp"

#include <string_view>

namespace gusset {

void update(AppState&, const Actions&);

// Whether the link holds exactly the model that is on the board.
[[nodiscard]] bool isOnBoard(const AppState&, std::string_view link);
// True if it does: then only the load choice is taken from the link.
[[nodiscard]] bool takeLinkOfBoard(AppState&, std::string_view link);

// A state with this model on the board, an empty history and the camera fitted; it is fitted again
// whenever the page changes its shape, until somebody pans or zooms.
[[nodiscard]] AppState startWith(Truss);

} // namespace gusset
