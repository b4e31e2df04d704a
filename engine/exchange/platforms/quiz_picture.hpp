#pragma once
// A picture in place of a quiz's drawing, for platforms that show no SVG.

#include "classroom/exercise/quiz.hpp"

#include <string>
#include <string_view>

namespace gusset {

[[nodiscard]] bool isPng(std::string_view bytes);
// As wide as the drawing that it replaces. Precondition: isPng.
void usePng(QuizPicture&, const std::string& png);

} // namespace gusset
