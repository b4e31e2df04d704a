#pragma once
// An invented language, made from English: its letters are Cyrillic, and the parts of every
// sentence come in the opposite order. If a text rendered in it still shows an English word, that
// word did not come from a phrase.

#include "model/truss/truss.hpp"
#include "report/text/phrases.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset::support {

[[nodiscard]] const PhraseBook& mockPhrases();

// Latin words of a text that are not symbols, units or the model's own names: what a translation
// would have left behind. A word is two or more letters, not all of them capitals, as in symbols.
[[nodiscard]] std::vector<std::string> foreignWords(std::string_view text, const Truss&);
// The text of HTML: without tags, hence without their attributes, and without entities.
[[nodiscard]] std::string textOfHtml(std::string_view html);
// Whether there is a point between two digits.
[[nodiscard]] bool hasDecimalPoint(std::string_view text);

} // namespace gusset::support
