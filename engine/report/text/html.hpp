#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

[[nodiscard]] std::string escapeHtml(std::string_view); // the only escaper, for HTML and SVG alike
[[nodiscard]] std::string paragraphsHtml(const std::vector<std::string>&); // a <p> for each text

} // namespace gusset
