#pragma once
// How cells that hold more than one number or one name are written and read.

#include "core/outcome.hpp"
#include "model/truss/truss.hpp"

#include <string>
#include <utility>

namespace gusset {

[[nodiscard]] std::string trimmed(const std::string&); // of blanks and line ends
[[nodiscard]] Issue unreadable(std::string says);

[[nodiscard]] std::string jointLabel(const Truss&, JointId); // "" of none
[[nodiscard]] Outcome<JointId> readJoint(const Truss&, const std::string& label);
// "A B", "A–B", "A-B", "A, B", or the two labels run together where that can mean one pair only.
[[nodiscard]] Outcome<std::pair<JointId, JointId>> readEnds(const Truss&, const std::string& text);

// "rhs 100×60×4", "A 1200, r 25": how a section is made, in section units.
[[nodiscard]] std::string makeText(const Section&);
[[nodiscard]] Outcome<Section> madeOf(Section, const std::string& text);
// "0, −5" of a pin that settles 5, "−5" along a roller's reaction, "" of one that stays.
[[nodiscard]] std::string settleText(const Support&);
[[nodiscard]] Outcome<Support> settled(const Truss&, Support, const std::string& text);

} // namespace gusset
