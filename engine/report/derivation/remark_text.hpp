#pragma once
// The remarks of a step as sentences.

#include "report/formula/notation.hpp"

#include <vector>

namespace gusset {

[[nodiscard]] RichLine jointName(const Notation&, JointId);
[[nodiscard]] RichLine jointNames(const Notation&, const std::vector<JointId>&);
[[nodiscard]] RichLine memberNames(const Notation&, const std::vector<MemberId>&);
[[nodiscard]] RichLine symbolNames(const Notation&, const std::vector<Symbol>&);

[[nodiscard]] RichLine remarkLine(const Notation&, const Remark&);
[[nodiscard]] std::vector<RichLine> wholeBodyLines(const Notation&, const Step&);
// "Look at the part on the left: A, B and C."
[[nodiscard]] RichLine lookAtLine(const Notation&, const std::vector<JointId>& part);
// Of a moment centre off the truss, as the step's remark introduces it; else empty.
[[nodiscard]] std::string centreName(const Step&);
[[nodiscard]] RichLine countLine(const Notation&);

} // namespace gusset
