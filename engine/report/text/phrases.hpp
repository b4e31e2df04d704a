#pragma once
// Sentences with their parts filled in. No sentence is assembled in code, so that a translation is
// a table of sentences (core/phrase). Code that writes is given the phrase book to use.

#include "core/phrase.hpp"
#include "report/text/rich_text.hpp"

#include <concepts>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace gusset {

// A value for a part of a sentence: a line, plain text, or a count.
struct Words {
    RichLine line{};

    Words(RichLine runs) : line(std::move(runs)) {}
    Words(std::string_view plain);
    Words(const std::string& plain) : Words(std::string_view(plain)) {}
    Words(const char* plain) : Words(std::string_view(plain)) {}
    Words(std::integral auto count) : Words(std::to_string(count)) {}
};
[[nodiscard]] RichLine plainLine(std::string_view text); // one plain run

// `words[i]` replaces `names[i]`.
[[nodiscard]] RichLine putTogether(std::string_view sentence,
                                   std::span<const std::string_view> names,
                                   std::span<const Words* const> words);

[[nodiscard]] inline RichLine say(const PhraseBook& book, Phrase<> phrase) {
    return plainLine(sentenceIn(book, phrase.english));
}
template <PartName... Names>
[[nodiscard]] RichLine say(const PhraseBook& book, Phrase<Names...> phrase,
                           const PartsOf<Words, Names...>& parts) {
    const Words* words[sizeof...(Names)] = {};
    for (const auto& part : parts) {
        words[part.name.index] = &part.value;
    }
    return putTogether(sentenceIn(book, phrase.english), kPartNames<Names...>, words);
}
[[nodiscard]] inline std::string sayPlain(const PhraseBook& book, Phrase<> phrase) {
    return sentenceIn(book, phrase.english);
}
template <PartName... Names>
[[nodiscard]] std::string sayPlain(const PhraseBook& book, Phrase<Names...> phrase,
                                   const PartsOf<Words, Names...>& parts) {
    return plainText(say(book, phrase, parts));
}

using CountedPhrase = decltype("{n}"_phrase);
// "1 member", "3 members".
[[nodiscard]] RichLine countedWords(const PhraseBook&, int count, Phrase<> one, CountedPhrase many);
// "A", "A and B", "A, B and C".
[[nodiscard]] RichLine listOf(const PhraseBook&, const std::vector<RichLine>&);

} // namespace gusset
