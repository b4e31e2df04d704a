#pragma once
// Every sentence of the working and the results stands in one table of a language, with its parts
// in braces: "Joint {joint}: …". No sentence is glued together in code, so that a translation is
// one more table. Whoever writes is given the book that it writes in.

#include "report/text/phrase_list.hpp"
#include "report/text/rich_text.hpp"

#include <array>
#include <cstddef>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// The table of one language, UTF-8, one sentence for every phrase. The sign of decimals is not the
// language's but the class's (model/truss/class_settings).
struct PhraseBook {
    std::array<const char*, static_cast<std::size_t>(Phrase::Count_)> sentences{};
};
[[nodiscard]] const PhraseBook& englishPhrases();

struct Part {
    const char* name; // as in the sentence, without braces
    RichLine text;
};
[[nodiscard]] RichLine plainLine(std::string_view text); // one plain run

// The sentence with its parts put in. Precondition: every {part} of the sentence is given.
[[nodiscard]] RichLine say(const PhraseBook&, Phrase, std::initializer_list<Part> = {});
[[nodiscard]] std::string sayPlain(const PhraseBook&, Phrase, std::initializer_list<Part> = {});
// "1 member", "3 members".
[[nodiscard]] RichLine countedWords(const PhraseBook&, int count, Phrase one, Phrase many);
// "A", "A and B", "A, B and C".
[[nodiscard]] RichLine listOf(const PhraseBook&, const std::vector<RichLine>&);

} // namespace gusset
