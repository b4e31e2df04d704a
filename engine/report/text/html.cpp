#include "report/text/html.hpp"

namespace gusset {

std::string paragraphsHtml(const std::vector<std::string>& texts) {
    std::string html;
    for (const std::string& text : texts) {
        html += "<p>" + escapeHtml(text) + "</p>\n";
    }
    return html;
}

} // namespace gusset
