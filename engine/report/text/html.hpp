#pragma once

#include "core/markup.hpp"

#include <string>
#include <vector>

namespace gusset {

[[nodiscard]] std::string paragraphsHtml(const std::vector<std::string>&); // a <p> for each text

} // namespace gusset
