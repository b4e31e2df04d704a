#pragma once
// A sketch as SVG 1.1, valid as a file of its own and inline in HTML. Colours are presentation
// attributes for print (tension purple, compression orange of ColorBrewer's PuOr by C. Brewer and
// M. Harrower); every mark has a class `ink-…` by which a style sheet can recolour it. The sketch's
// sentence is its <title>, hence its name for screen readers. No ids, so that many can share one
// page.

#include "report/sketch/sketch.hpp"

#include <string>
#include <vector>

namespace gusset {

[[nodiscard]] std::string svgOf(const Sketch&); // ends with a line break
// With the attribute data-thing on every mark that belongs to something.
[[nodiscard]] std::string svgToPointAt(const Sketch&);

struct SketchFrame {
    Sketch sketch;
    double seconds = 0; // for which it is shown; > 0
};
enum class AnimationEnd { Stays, Repeats };
// Frames one after the other, by CSS alone: a file of its own, as its style would apply to all of a
// page. Who wants no motion sees the last one. Precondition: at least one, all of one size.
[[nodiscard]] std::string svgOfFrames(const std::vector<SketchFrame>&, AnimationEnd);

[[nodiscard]] std::string figureHtml(const Sketch&); // a <figure> of it

} // namespace gusset
