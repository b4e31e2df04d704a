#pragma once
// A sketch as SVG 1.1: stands alone as a file, and inline in HTML. Colours are presentation
// attributes for print (tension purple, compression orange of ColorBrewer's PuOr by C. Brewer and
// M. Harrower); every mark has a class `ink-…` by which a style sheet may give it another. The
// sentence is its <title>, hence its name for a screen reader. No ids, so that many stand on one
// page.

#include "report/sketch/sketch.hpp"

#include <string>

namespace gusset {

[[nodiscard]] std::string svgOf(const Sketch&);      // ends with a line break
[[nodiscard]] std::string figureHtml(const Sketch&); // a <figure> of it

} // namespace gusset
