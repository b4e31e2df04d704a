#include "core/phrase.hpp"

namespace gusset {

const PhraseBook& englishPhrases() {
    static const PhraseBook english;
    return english;
}

const char* sentenceIn(const PhraseBook& book, const char* english) {
    return book.translate ? book.translate(english) : english;
}

} // namespace gusset
