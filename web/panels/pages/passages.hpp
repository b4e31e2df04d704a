#pragma once
// Passages of a derivation (report/derivation/passage) in the notebook: sentences, formulas,
// tables, drawings.

#include "report/derivation/passage.hpp"
#include "ui/sketch_view.hpp"
#include "ui/theme.hpp"

#include <vector>

namespace gusset {

// At the cursor, as wide as the column. `id` distinguishes its drawings from those of other
// passages. With `heights`, only the visible part is laid out.
void drawPassage(const Ui&, int id, const Passage&, const SketchLook& = {},
                 std::vector<float>* heights = nullptr);

} // namespace gusset
