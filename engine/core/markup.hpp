#pragma once

#include <string>
#include <string_view>

namespace gusset {

[[nodiscard]] std::string escapeHtml(std::string_view); // the only escaper, for HTML and XML alike

} // namespace gusset
