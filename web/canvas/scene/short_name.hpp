#pragma once
// Long names of joints on the board, where they must not cover the drawing; tables and the
// inspector have them whole.

#include <string>

namespace gusset {

inline constexpr int kLettersOnBoard = 16;

// The name, or its beginning and its end with "…" between, so many letters in all.
[[nodiscard]] std::string shortName(const std::string& name, int letters = kLettersOnBoard);

} // namespace gusset
