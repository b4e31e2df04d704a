#pragma once
// Passages of a derivation (report/passage) in the notebook: sentences, formulas, tables, drawings.

#include "report/passage.hpp"
#include "ui/sketch_view.hpp"
#include "ui/theme.hpp"

namespace gusset {

// At the cursor, as wide as the column. `id` tells its drawings from those of other passages.
void drawPassage(const Ui&, int id, const Passage&, const SketchLook& = {});

} // namespace gusset
