#pragma once
// The work as text for the browser's storage, and back: the model, its undo and redo, the view, the
// notebook's place. A marker, a length and a checksum come first, so that a truncated or altered
// text is recognised; reading a bad one returns nothing and changes nothing.

#include "app/state/state.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace gusset {

inline constexpr std::size_t kLargestSession = 2u << 20; // bytes: oldest undo steps go first

// The committed model: a gesture in progress is not saved.
[[nodiscard]] std::string writeSession(const AppState&);
[[nodiscard]] std::optional<AppState> readSession(std::string_view);

} // namespace gusset
