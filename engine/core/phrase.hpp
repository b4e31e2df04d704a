#pragma once
// Text that people read, and its translation. A sentence is written once, in English, where its
// phrase is defined (engine/phrases, web/phrases), with its parts in braces: "Joint {joint}
// …"_phrase. The type of a phrase names its parts, in alphabetical order. The caller supplies each
// of them; the compiler rejects a missing part, or one that the sentence does not have.

#include <algorithm>
#include <array>
#include <cstddef>
#include <functional>
#include <string_view>
#include <type_traits>
#include <utility>

namespace gusset {

struct PartName {
    char letters[16] = {};

    [[nodiscard]] constexpr std::string_view view() const { return letters; }
    bool operator==(const PartName&) const = default;
};

// Each sentence exists once: equal sentences have equal addresses.
template <PartName... Names>
struct Phrase {
    const char* english = ""; // UTF-8, parts in braces; to be read by englishOf or sentenceIn
};

template <PartName... Names>
inline constexpr std::array<std::string_view, sizeof...(Names)> kPartNames{Names.view()...};

// A language: maps each English sentence to its translation. A translation may put the parts in any
// order and repeat them, but has no others. The returned text lives as long as the book. English
// has no translate function. The decimal sign belongs to the class, not the language
// (model/truss/class_settings).
struct PhraseBook {
    std::function<const char*(const char* english)> translate{};
};
[[nodiscard]] const PhraseBook& englishPhrases();
[[nodiscard]] const char* sentenceIn(const PhraseBook&, const char* english);
[[nodiscard]] const char* englishOf(const char* english);

// Calls words(text) and part(name) for the pieces of a sentence, in order.
template <class Words, class Part>
void forEachPiece(std::string_view sentence, const Words& words, const Part& part) {
    while (true) {
        const auto open = sentence.find('{');
        words(sentence.substr(0, open));
        if (open == std::string_view::npos) {
            return;
        }
        const auto close = sentence.find('}', open);
        part(sentence.substr(open + 1, close - open - 1));
        sentence.remove_prefix(close + 1);
    }
}

// One part with its value, as {"joint", value} for {joint}.
template <class Value, PartName... Names>
struct PartOf;
// All the parts, in any order, each once.
template <class Value, PartName... Names>
using PartsOf = std::type_identity_t<PartOf<Value, Names...>[sizeof...(Names)]>;

// Declared but never defined: constant evaluation fails at the call, and the error shows the name.
void thisBraceIsNeverClosed();
void thisSentenceHasNoSuchPart();

template <PartName... Names>
struct NameAmong {
    std::size_t index = 0; // of Names

    consteval NameAmong(const char* name) {
        constexpr std::array<PartName, sizeof...(Names)> names{Names...};
        while (index < names.size() && names[index].view() != name) {
            ++index;
        }
        if (index == names.size()) {
            thisSentenceHasNoSuchPart();
        }
    }
};

template <class Value, PartName... Names>
struct PartOf {
    NameAmong<Names...> name;
    Value value;
};

namespace phrase_reader {

template <std::size_t Size>
struct Sentence {
    char letters[Size] = {};

    consteval Sentence(const char (&text)[Size]) { std::copy(text, text + Size, letters); }
};

struct Parts {
    std::array<PartName, 8> names{};
    std::size_t count = 0;
};

consteval void enter(Parts& parts, const PartName& name) {
    std::size_t at = parts.count;
    while (at > 0 && name.view() < parts.names[at - 1].view()) {
        --at;
    }
    if (at > 0 && parts.names[at - 1] == name) {
        return;
    }
    for (std::size_t i = parts.count++; i > at; --i) {
        parts.names[i] = parts.names[i - 1];
    }
    parts.names[at] = name;
}

// By index, as under its sanitizer GCC 12 does not evaluate find() when it compiles.
consteval std::size_t placeOf(char letter, std::string_view sentence, std::size_t from) {
    while (from < sentence.size() && sentence[from] != letter) {
        ++from;
    }
    return from;
}

consteval Parts partsIn(std::string_view sentence) {
    Parts parts;
    const std::size_t end = sentence.size();
    for (auto open = placeOf('{', sentence, 0); open < end; open = placeOf('{', sentence, open)) {
        const auto close = placeOf('}', sentence, open);
        if (close == end) {
            thisBraceIsNeverClosed();
        }
        PartName name;
        std::copy(sentence.begin() + open + 1, sentence.begin() + close, name.letters);
        enter(parts, name);
        open = close;
    }
    return parts;
}

// Together in one section of the page's program, so that the sentences which a first picture does
// not say are left to the second part of the program (site/split).
#ifdef __wasm__
#define GUSSET_AMONG_SENTENCES [[gnu::section("sentences")]]
#else
#define GUSSET_AMONG_SENTENCES
#endif
template <Sentence Text>
GUSSET_AMONG_SENTENCES inline constexpr auto kText = Text;
#undef GUSSET_AMONG_SENTENCES

template <Sentence Text, std::size_t... I>
consteval auto phraseOf(std::index_sequence<I...>) {
    [[maybe_unused]] constexpr Parts parts = partsIn(Text.letters); // unused if there are none
    return Phrase<parts.names[I]...>{kText<Text>.letters};
}

} // namespace phrase_reader

template <phrase_reader::Sentence Text>
consteval auto operator""_phrase() {
    constexpr phrase_reader::Parts parts = phrase_reader::partsIn(Text.letters);
    return phrase_reader::phraseOf<Text>(std::make_index_sequence<parts.count>{});
}

} // namespace gusset
