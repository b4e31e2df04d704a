#include "core/phrase.hpp"

// Defined by the page, whose program comes in two parts (site/split): a sentence that is missing in
// the first is empty.
extern "C" [[gnu::weak]] void gussetBringSentence(const char* english);

namespace gusset {

const PhraseBook& englishPhrases() {
    static const PhraseBook english;
    return english;
}

const char* englishOf(const char* english) {
    if (*english == '\0' && gussetBringSentence != nullptr) {
        gussetBringSentence(english);
    }
    return english;
}

const char* sentenceIn(const PhraseBook& book, const char* english) {
    return book.translate ? book.translate(englishOf(english)) : englishOf(english);
}

} // namespace gusset
