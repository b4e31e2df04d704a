#pragma once
// Lines of the working typeset as on paper: italic symbols, true subscripts, wrapped at spaces.

#include "report/text/rich_text.hpp"
#include "ui/theme.hpp"

namespace gusset {

struct RichLook {
    float indent = 0;  // CSS px, of all lines
    float hanging = 0; // CSS px of additional indent from the second line on
    Colour ink;
    const ImFont* face = nullptr; // of plain runs; null: the text face
};
struct RichSize {
    float width = 0; // device px: of the widest line
    float height = 0;
};

// At ImGui's cursor, within the remaining width; moves the cursor below.
RichSize drawRich(const Ui&, const RichLine&, const RichLook&);

} // namespace gusset
