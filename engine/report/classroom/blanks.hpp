#pragma once
// The places for answers on a sheet, blank or filled in. Private to report/classroom.

#include "classroom/exercise/key.hpp"
#include "report/text/writer.hpp"
#include "statics/solve/solution.hpp"

#include <string>

namespace gusset {

struct BlanksOf {
    const Writer& writer;
    const Exercise& exercise;
    const AnswerKey* filledBy = nullptr; // null: blank
    NumberStyle forces{};                // of the answers
};
// A list of the blanks of this question; empty for one that is answered by its working alone.
[[nodiscard]] std::string blanksHtml(const BlanksOf&, std::size_t question);

} // namespace gusset
