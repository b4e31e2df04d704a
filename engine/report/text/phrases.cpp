#include "report/text/phrases.hpp"

#include "phrases/results/lists.hpp"

#include <algorithm>
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

} // namespace

RichLine plainLine(std::string_view text) {
    RichLine line;
    append(line, text);
    return line;
}

Words::Words(std::string_view plain) : line(plainLine(plain)) {}

RichLine putTogether(std::string_view sentence, std::span<const std::string_view> names,
                     std::span<const Words* const> words) {
    RichLine line;
    forEachPiece(
        sentence, [&](std::string_view text) { append(line, text); },
        [&](std::string_view name) {
            const auto at = static_cast<std::size_t>(std::find(names.begin(), names.end(), name) -
                                                     names.begin());
            assert(at < names.size() && words[at] != nullptr &&
                   "a part is given twice, another not at all");
            append(line, words[at]->line);
        });
    return line;
}

RichLine countedWords(const PhraseBook& book, int count, Phrase<> one, CountedPhrase many) {
    return count == 1 ? say(book, one) : say(book, many, {{"n", count}});
}

RichLine listOf(const PhraseBook& book, const std::vector<RichLine>& items) {
    RichLine line;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (i == 0) {
            line = items[i];
        } else {
            const bool last = i + 1 == items.size();
            line = say(book, last ? phrase::kListTwo : phrase::kListMore,
                       {{"a", line}, {"b", items[i]}});
        }
    }
    return line;
}

} // namespace gusset
