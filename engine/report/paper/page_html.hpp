#pragma once
// A whole page of HTML, complete by itself: what every document that leaves the program has around
// it.

#include "report/text/writer.hpp"

#include <span>
#include <string>

namespace gusset {

struct DocumentParts {
    std::string typeface{}; // styles that hold a typeface; empty for a page without formulas
    std::string style{};
    std::string pages{}; // the @page rules, where the paper is chosen
    std::string body{};  // inside <main>
};
// Titled as the truss is.
[[nodiscard]] std::string pageHtml(const Writer&, const DocumentParts&);

// The styles of formulas, with their typeface in them.
[[nodiscard]] std::string formulaStyleWithTypeface();
[[nodiscard]] std::string textOf(std::span<const unsigned char> file);
[[nodiscard]] std::string titleOf(const Writer&); // of the truss, or that it has none

} // namespace gusset
