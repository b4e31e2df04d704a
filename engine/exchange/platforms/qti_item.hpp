#pragma once
// One question of QTI 2.1 or 3.0 (1EdTech, QTI 3.0 Assessment, Section and Item information model,
// 2022). The two differ in names, responseCondition and qti-response-condition, and in little else.
// Private to exchange/platforms.

#include "classroom/exercise/quiz.hpp"

#include <string>

namespace gusset {

enum class QtiVersion { Two, Three };

// "responseIf" as it is in 2.1; in 3.0 "qti-response-if".
[[nodiscard]] std::string qtiElement(QtiVersion, const std::string& name);
[[nodiscard]] std::string qtiAttribute(QtiVersion, const std::string& name);

struct QtiItemPlace {
    std::string identifier;
    std::string picture; // relative to the item, or empty
};
// With all of its fields. Tolerances are absolute, as two numbers: at least one reader takes a
// single number or a relative one wrongly.
[[nodiscard]] std::string qtiItem(QtiVersion, const Quiz&, const QuizItem&, const QtiItemPlace&);

} // namespace gusset
