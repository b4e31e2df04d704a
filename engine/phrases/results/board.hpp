#pragma once
// Shown beside the results, for readers who can't see the board.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kInfluenceHeading = "Influence line"_phrase;
inline constexpr auto kUntitledTruss = "Untitled truss"_phrase;
inline constexpr auto kBoardSummary = "The board: {joints}, {members}, {supports}, {loads}."_phrase;

} // namespace gusset::phrase
