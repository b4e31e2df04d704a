#pragma once
// Numbers as a student wrote them. Private to classroom/marking.

#include <optional>
#include <vector>

namespace gusset {

// How far each value may be from the one that was worked with, as the sheet is rounded: by its
// decimals, and by its figures.
struct Rounding {
    int decimals = 0;
    int figures = 1;
};
[[nodiscard]] Rounding roundingOf(const std::vector<std::optional<double>>& written);
[[nodiscard]] double roundingError(const Rounding&, double value);

// Whether exchanging two digits next to each other gives what is written, `within` of it.
[[nodiscard]] bool isDigitSwap(const Rounding&, double written, double meant, double within);

} // namespace gusset
