#pragma once
// Lines of text with the little typography that a working needs; renderings turn it into plain
// text, HTML or drawing.

#include "core/ids.hpp"

#include <string>
#include <vector>

namespace gusset {

enum class RunStyle { Plain, Variable, Subscript, Strong };
struct Run {
    std::string text; // UTF-8
    RunStyle style = RunStyle::Plain;
};
using RichLine = std::vector<Run>;

enum class LineRole { Heading, Sentence, Equation, Result, Caution };
struct WorkingLine {
    LineRole role = LineRole::Sentence;
    RichLine runs;
};

[[nodiscard]] std::string plainText(const RichLine&); // subscripts as F_AB

} // namespace gusset
