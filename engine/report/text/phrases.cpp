#include "report/text/phrases.hpp"

#include <cassert>

namespace gusset {
namespace {

void append(RichLine& line, std::string_view text) {
    if (text.empty()) {
        return;
    }
    if (!line.empty() && line.back().style == RunStyle::Plain) {
        line.back().text += text;
    } else {
        line.push_back({std::string(text), RunStyle::Plain});
    }
}

void append(RichLine& line, const RichLine& runs) {
    for (const Run& run : runs) {
        if (run.style == RunStyle::Plain) {
            append(line, run.text);
        } else {
            line.push_back(run);
        }
    }
}

const RichLine& partNamed(std::initializer_list<Part> parts, std::string_view name) {
    for (const Part& part : parts) {
        if (name == part.name) {
            return part.text;
        }
    }
    assert(false && "a sentence names a part that it was not given");
    static const RichLine none;
    return none;
}

} // namespace

RichLine plainLine(std::string_view text) {
    RichLine line;
    append(line, text);
    return line;
}

RichLine say(const PhraseBook& book, Phrase phrase, std::initializer_list<Part> parts) {
    std::string_view rest = book.sentences[static_cast<std::size_t>(phrase)];
    RichLine line;
    while (true) {
        const auto open = rest.find('{');
        append(line, rest.substr(0, open));
        if (open == std::string_view::npos) {
            return line;
        }
        const auto close = rest.find('}', open);
        assert(close != std::string_view::npos);
        append(line, partNamed(parts, rest.substr(open + 1, close - open - 1)));
        rest = rest.substr(close + 1);
    }
}

std::string sayPlain(const PhraseBook& book, Phrase phrase, std::initializer_list<Part> parts) {
    return plainText(say(book, phrase, parts));
}

RichLine countedWords(const PhraseBook& book, int count, Phrase one, Phrase many) {
    return count == 1 ? say(book, one) : say(book, many, {{"n", plainLine(std::to_string(count))}});
}

RichLine listOf(const PhraseBook& book, const std::vector<RichLine>& items) {
    RichLine line;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (i == 0) {
            line = items[i];
        } else {
            const bool last = i + 1 == items.size();
            line = say(book, last ? Phrase::ListTwo : Phrase::ListMore,
                       {{"a", line}, {"b", items[i]}});
        }
    }
    return line;
}

} // namespace gusset
