#pragma once
// Sums, products and powers of printed numbers, as a calculator works them out.

#include <optional>
#include <string>

namespace gusset::support {

// "(1 + 3.2²) / √5.9", "0.658 ^ 1.2 · 355": with a true minus, a middle dot and thin spaces as in
// print. None if the text holds anything else, such as names.
[[nodiscard]] std::optional<double> calculated(const std::string& text);

} // namespace gusset::support
