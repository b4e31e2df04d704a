#pragma once
// Lines of text with the little typography that a working needs; renderings turn it into plain
// text, HTML or drawing.

#include "core/ids.hpp"

#include <string>
#include <vector>

namespace gusset {

enum class RunStyle {
    Plain,
    Variable,
    Subscript,
    Strong,
    Fraction, // "4/√41", "L/EA": what stands above / what stands below; √ covers all behind it
    Root,     // "√41"
};
struct Run {
    std::string text; // UTF-8
    RunStyle style = RunStyle::Plain;
};
using RichLine = std::vector<Run>;

// A piece of a formula, for renderings that set fractions and roots.
enum class TokenKind {
    Number,
    Variable, // with its subscript
    Operator, // + − = · ⇒ and the like, also brackets
    Function, // sin, cos, tan
    Fraction, // text over below
    Root,     // of text
    Word,     // a unit, or words in brackets
};
struct Token {
    TokenKind kind = TokenKind::Word;
    std::string text{};
    std::string subscript{}; // of a variable
    std::string below{};     // of a fraction
    bool rootBelow = false;  // what stands below is the root of it
    std::string rootAbove{}; // of a fraction: what stands under a root behind `text`, if anything
};
using Formula = std::vector<Token>;

enum class LineRole { Heading, Sentence, Equation, Result, Caution };
struct WorkingLine {
    LineRole role = LineRole::Sentence;
    RichLine runs{};
    Formula formula{}; // what `runs` hold as a line of text; empty for a sentence
};

[[nodiscard]] std::string plainText(const RichLine&); // subscripts as F_AB

} // namespace gusset
