#include "report/paper/page_html.hpp"
#include "report/sheet/sheet.hpp"

namespace gusset {

std::span<const unsigned char> sheetStyle(); // sheet.css, compiled in: site/cmake/embed.cmake

SheetStyles embeddedStyles(const SheetChoices& choices) {
    return {textOf(sheetStyle()),
            choices.has(SheetPart::Working) ? formulaStyleWithTypeface() : std::string{}};
}

} // namespace gusset
