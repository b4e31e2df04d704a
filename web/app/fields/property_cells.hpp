#pragma once
// Cells of what members are made of and what strains them: materials, sections, temperature,
// misfit, settlement. An empty text leaves the value out of the model.

#include "app/fields/cells.hpp"

namespace gusset {

// "rhs 100×60×4", "A 1200, r 25": how a section is made, in section units.
[[nodiscard]] std::string makeText(const Section&);
// "0, −5" of a pin that settles 5, "−5" along a roller's reaction, "" of one that stays.
[[nodiscard]] std::string settleText(const Support&);
[[nodiscard]] std::optional<double> memberNumber(const Member&, int column);
[[nodiscard]] std::optional<double> materialNumber(const Material&, int column);

// Preconditions as in cell_readers.hpp.
[[nodiscard]] Outcome<Edit> readMemberProperty(const Truss&, const Cell&, const std::string& text);
[[nodiscard]] Outcome<Edit> readSettlement(const Truss&, const Cell&, const std::string& text);
[[nodiscard]] Outcome<Edit> readMaterialCell(const Truss&, const Cell&, const std::string& text);
[[nodiscard]] Outcome<Edit> readSectionCell(const Truss&, const Cell&, const std::string& text);

} // namespace gusset
