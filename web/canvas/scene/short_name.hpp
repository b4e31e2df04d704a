#pragma once
// Long joint names on the board, where they must not cover the drawing; tables and the inspector
// show them in full.

#include <string>

namespace gusset {

inline constexpr int kLettersOnBoard = 16;

// The name, or its beginning and end with "…" between, this many letters in all.
[[nodiscard]] std::string shortName(const std::string& name, int letters = kLettersOnBoard);

} // namespace gusset
