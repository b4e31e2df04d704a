#pragma once
// Why an exercise can't be given to a learning platform.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kTooManyRecords =
    "these are {number} questions, and one file may have {limit}: give fewer models at a time"_phrase;
inline constexpr auto kNothingForPlatforms =
    "only the steps are asked, which no learning platform marks: ask for forces or reactions"_phrase;

} // namespace gusset::phrase
