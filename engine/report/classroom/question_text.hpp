#pragma once
// What is asked, in words.

#include "classroom/exercise/exercise.hpp"
#include "report/text/writer.hpp"

#include <string>

namespace gusset {

[[nodiscard]] std::string questionText(const Writer&, const Question&);

} // namespace gusset
