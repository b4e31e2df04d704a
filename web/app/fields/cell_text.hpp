#pragma once
// How cells that hold more than one number or name are written and read.

#include "core/outcome.hpp"
#include "model/truss/truss.hpp"

#include <string>
#include <utility>

namespace gusset {

[[nodiscard]] std::string trimmed(const std::string&); // strips blanks and line ends
[[nodiscard]] Issue unreadable(Statement says);

[[nodiscard]] std::string jointLabel(const Truss&, JointId); // "" for no joint
[[nodiscard]] Outcome<JointId> readJoint(const Truss&, const std::string& label);
// Reads "A B", "A–B", "A-B", "A, B", or the two labels run together where only one pair can be
// meant.
[[nodiscard]] Outcome<std::pair<JointId, JointId>> readEnds(const Truss&, const std::string& text);

// The dimensions a section is made from, in section units: "rhs 100×60×4", "A 1200, r 25".
[[nodiscard]] std::string makeText(const Section&);
[[nodiscard]] Outcome<Section> madeOf(Section, const std::string& text);
// "0, −5" for a pin that settles by 5, "−5" along a roller's reaction, "" for no settlement.
[[nodiscard]] std::string settleText(const Support&);
[[nodiscard]] Outcome<Support> settled(const Truss&, Support, const std::string& text);

} // namespace gusset
