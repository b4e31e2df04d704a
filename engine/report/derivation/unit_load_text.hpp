#pragma once
// The table of a displacement by the unit load method, as text and as HTML.

#include "hand/virtual_work/unit_load.hpp"
#include "report/derivation/passage.hpp"
#include "report/text/writer.hpp"

#include <string>

namespace gusset {

// The sentences before the table, the table with its totals, and the result; or why there is none.
// The truss must be the one that the table was built from.
[[nodiscard]] Passage unitLoadPassage(const Writer&, const UnitLoadTable&);
[[nodiscard]] std::string unitLoadText(const Writer&, const UnitLoadTable&);
[[nodiscard]] std::string unitLoadHtml(const Writer&, const UnitLoadTable&);

} // namespace gusset
