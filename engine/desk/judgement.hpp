#pragma once
// What is said of a student's answers: while practising, and when they are marked. Private to desk.

#include "classroom/marking/marking.hpp"
#include "desk/request.hpp"
#include "report/text/writer.hpp"

#include <string>

namespace gusset {

[[nodiscard]] constexpr bool isRight(Verdict verdict) {
    return verdict == Verdict::Right || verdict == Verdict::Unsupported;
}
// Of one answer, without giving it away; empty if it is blank.
[[nodiscard]] std::string checkText(const Writer&, const MarkedForce&, const WrittenForce&);

} // namespace gusset
