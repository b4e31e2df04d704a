#pragma once
// Moodle XML: https://docs.moodle.org/en/Moodle_XML_format, and in Moodle's source
// question/format/xml/tests and question/type/multianswer. Fractions are of the list that Moodle
// allows (question/engine/bank.php); tolerances are absolute.

#include "classroom/exercise/quiz.hpp"

#include <string>
#include <vector>

namespace gusset {

// A question for each field: "numerical", or "multichoice".
[[nodiscard]] std::string moodleXml(const std::vector<Quiz>&);
// A "cloze" question for each item, with all of its fields.
[[nodiscard]] std::string moodleClozeXml(const std::vector<Quiz>&);

} // namespace gusset
