#pragma once
// Lines of text with the little typography that a working needs; renderers turn them into plain
// text, HTML or a drawing.

#include "core/ids.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

enum class RunStyle {
    Plain,
    Variable,
    Subscript,
    Strong,
    Fraction, // "4/√41", "L/EA": numerator/denominator; √ covers everything after it
    Root,     // "√41"
};
struct Run {
    std::string text; // UTF-8
    RunStyle style = RunStyle::Plain;
};
using RichLine = std::vector<Run>;

// A piece of a formula, for renderers that can set fractions and roots.
enum class TokenKind {
    Number,
    Variable, // with its subscript
    Operator, // + − = · ⇒ and the like, and brackets
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
    bool rootBelow = false;  // the denominator is the root of `below`
    std::string rootAbove{}; // of a fraction: radicand of a root after `text`, if any
};
using Formula = std::vector<Token>;

enum class LineRole { Heading, Sentence, Equation, Result, Caution };
struct WorkingLine {
    LineRole role = LineRole::Sentence;
    RichLine runs{};
    Formula formula{}; // what `runs` hold as a line of text; empty in a sentence
};

[[nodiscard]] std::string plainText(const RichLine&); // subscripts as F_AB
// Whether a line does not end with this word, as in a formula: a number stays with its "=" or "≈",
// a term with the sign before it.
[[nodiscard]] bool staysWithNext(std::string_view word);

} // namespace gusset
