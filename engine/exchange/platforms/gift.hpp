#pragma once
// GIFT: https://docs.moodle.org/en/GIFT_format, and in Moodle's source question/format/gift. A
// question for each field. It holds no pictures.

#include "classroom/exercise/quiz.hpp"

#include <string>
#include <vector>

namespace gusset {

[[nodiscard]] std::string giftText(const std::vector<Quiz>&);

} // namespace gusset
