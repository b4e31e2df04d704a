#pragma once
// A language that nobody speaks, made from the English one: its letters are Cyrillic, and the parts
// of every sentence come in the opposite order. What is rendered in it and still shows an English
// word was not said by a phrase.

#include "model/truss/truss.hpp"
#include "report/text/phrases.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset::support {

[[nodiscard]] const PhraseBook& mockPhrases();

// Latin words of a text that are none of signs, units or the model's own names: what a translation
// would have left behind. A word is two or more letters, not all of them capitals, as symbols are.
[[nodiscard]] std::vector<std::string> foreignWords(std::string_view text, const Truss&);
// The text of HTML: without tags, and so without their attributes, and without entities.
[[nodiscard]] std::string textOfHtml(std::string_view html);
// Whether a point stands between two digits.
[[nodiscard]] bool hasDecimalPoint(std::string_view text);

} // namespace gusset::support
