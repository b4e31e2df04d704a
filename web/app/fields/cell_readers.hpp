#pragma once
// What a text typed into a cell of each of the model's tables asks for (see cells.hpp).

#include "app/fields/cells.hpp"

namespace gusset {

// Precondition of all: canType(truss, cell).
[[nodiscard]] Outcome<Edit> readJointCell(const Truss&, const Cell&, const std::string& text);
[[nodiscard]] Outcome<Edit> readMemberCell(const Truss&, const Cell&, const std::string& text);
[[nodiscard]] Outcome<Edit> readSupportCell(const Truss&, const Cell&, const std::string& text);
[[nodiscard]] Outcome<Edit> readLoadCell(const Truss&, const Cell&, const std::string& text);

[[nodiscard]] std::string trimmed(const std::string&); // of blanks and line ends
// "A B", "A–B", "A-B", "A, B", or the two labels run together where that can mean one pair only.
[[nodiscard]] Outcome<std::pair<JointId, JointId>> readEnds(const Truss&, const std::string& text);

} // namespace gusset
