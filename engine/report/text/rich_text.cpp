#include "report/text/rich_text.hpp"

namespace gusset {

std::string plainText(const RichLine& line) {
    std::string text;
    for (const Run& run : line) {
        if (run.style == RunStyle::Subscript) {
            text += '_';
        }
        text += run.text;
    }
    return text;
}

} // namespace gusset
