#pragma once
// The example that the page opens with when there is nothing else to show, as the text of its file.

#include <span>

namespace gusset {

[[nodiscard]] std::span<const unsigned char> demoModel();

} // namespace gusset
