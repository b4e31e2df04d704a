#pragma once
// From the sentences of a language, each beside its phrase, to its book. Only the files that hold a
// language include this.

#include "report/text/phrases.hpp"

namespace gusset {

struct Sentence {
    Phrase phrase;
    const char* text;
};

namespace phrase_table {

template <std::size_t Size>
constexpr bool follow(const Sentence (&sentences)[Size], std::size_t& next) {
    for (const Sentence& sentence : sentences) {
        if (static_cast<std::size_t>(sentence.phrase) != next++) {
            return false;
        }
    }
    return true;
}

template <std::size_t Size>
constexpr void enter(const Sentence (&sentences)[Size], PhraseBook& book) {
    for (const Sentence& sentence : sentences) {
        book.sentences[static_cast<std::size_t>(sentence.phrase)] = sentence.text;
    }
}

} // namespace phrase_table

// Whether the tables, one behind the other, have a sentence for every phrase, in the order of the
// phrases.
template <std::size_t... Sizes>
constexpr bool isComplete(const Sentence (&... tables)[Sizes]) {
    std::size_t next = 0;
    return (phrase_table::follow(tables, next) && ...) &&
           next == static_cast<std::size_t>(Phrase::Count_);
}

template <std::size_t... Sizes>
constexpr PhraseBook bookOf(const Sentence (&... tables)[Sizes]) {
    PhraseBook book;
    (phrase_table::enter(tables, book), ...);
    return book;
}

} // namespace gusset
