#pragma once
// The work as text for the browser's own storage, and back: the model, its undo and redo, the view,
// the notebook's place. A mark, a length and a checksum stand first, so that a text cut short or
// altered by anything is told from a good one; reading a bad one gives nothing and changes nothing.

#include "app/state/state.hpp"
#include "core/outcome.hpp"

#include <string>
#include <string_view>

namespace gusset {

inline constexpr std::size_t kLargestSession = 2u << 20; // bytes: the oldest undo steps go first

// The committed model: a gesture in hand is not saved.
[[nodiscard]] std::string writeSession(const AppState&);
[[nodiscard]] Outcome<AppState> readSession(std::string_view);

} // namespace gusset
