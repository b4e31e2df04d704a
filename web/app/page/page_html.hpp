#pragma once
// Pieces of the page around the board: headings, lines, and what can be pressed, typed over or
// chosen there (site/page_tables.js). Everything is escaped.

#include "app/fields/questions.hpp"
#include "app/state/field_id.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

struct PageButton {
    std::string_view does; // "cell": becomes an input; "press": acts at once
    std::string key;
    std::string text; // what it holds or sends
    std::string look;
    std::string name; // for screen readers; empty: its look says it
};
[[nodiscard]] std::string buttonHtml(const PageButton&);
// A cell that is typed over; `name` says what it is.
[[nodiscard]] std::string typedHtml(const PhraseBook&, const FieldId&, const std::string& text,
                                    const std::string& look, const std::string& name);
// "12: x (m) of joint C".
[[nodiscard]] std::string valueOf(const PhraseBook&, const std::string& value,
                                  const std::string& what);
[[nodiscard]] std::string headingHtml(const PhraseBook&, Phrase<>, int level = 3);
[[nodiscard]] std::string lineHtml(const std::string& text);
// A table of the model, up to its first row; what ends it; and cells of pieces of HTML.
[[nodiscard]] std::string tableBegin(const std::string& caption,
                                     const std::vector<std::string>& headings);
inline constexpr const char* kTableEnd = "</tbody>\n</table>\n";
[[nodiscard]] std::string inCell(const std::string& html);
[[nodiscard]] std::string inRowHead(const std::string& html);
struct PageOption {
    std::string value; // sent when it is chosen
    std::string name;
    bool isNow = false;
};
// A labelled list to choose from.
[[nodiscard]] std::string selectHtml(const std::string& label, const FieldId&,
                                     const std::vector<PageOption>&);
// A list to choose an answer from; nothing if there is only one.
[[nodiscard]] std::string questionHtml(const AppState&, PageQuestion);
// A button that shows a part of the page, or hides it again.
[[nodiscard]] std::string partButtonHtml(const AppState&, PagePart, Phrase<> name);
// A sentence whose one part is a piece of HTML.
template <PartName Part>
[[nodiscard]] std::string sentenceHtml(const PhraseBook& book, Phrase<Part> sentence,
                                       const std::string& part);
[[nodiscard]] std::string filledHtml(const char* sentence, const std::string& part);

template <PartName Part>
std::string sentenceHtml(const PhraseBook& book, Phrase<Part> sentence, const std::string& part) {
    return "<p>" + filledHtml(sentenceIn(book, sentence.english), part) + "</p>\n";
}

} // namespace gusset
