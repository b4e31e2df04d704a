#pragma once
// Load combinations, moving loads, units, class settings and the numbers of the checks in the
// page's own tables, to be typed over and chosen there.

#include "app/state/state.hpp"

#include <string>

namespace gusset {

[[nodiscard]] std::string casesHtml(const AppState&); // empty without loads
[[nodiscard]] std::string combinationsHtml(const AppState&);
[[nodiscard]] std::string movingLoadsHtml(const AppState&);
[[nodiscard]] std::string settingsHtml(const AppState&); // units and class settings
[[nodiscard]] std::string checkSettingsHtml(const AppState&);

} // namespace gusset
