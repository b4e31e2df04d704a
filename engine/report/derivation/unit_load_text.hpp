#pragma once
// The table of a displacement by the unit load method, in words and as HTML.

#include "hand/virtual_work/unit_load.hpp"
#include "report/derivation/passage.hpp"
#include "report/text/writer.hpp"

#include <string>

namespace gusset {

// The sentences before the table, the table with its totals, and what it comes to; or why there is
// none. The truss is the one that the table was made of.
[[nodiscard]] Passage unitLoadPassage(const Writer&, const UnitLoadTable&);
[[nodiscard]] std::string unitLoadText(const Writer&, const UnitLoadTable&);
[[nodiscard]] std::string unitLoadHtml(const Writer&, const UnitLoadTable&);

} // namespace gusset
