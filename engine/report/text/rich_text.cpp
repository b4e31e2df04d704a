#include "report/text/rich_text.hpp"

#include "core/signs.hpp"

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

bool staysWithNext(std::string_view word) {
    return word == "=" || word == kAlmost || word == "+" || word == kMinus;
}

} // namespace gusset
