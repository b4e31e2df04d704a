#include "app/page/page_html.hpp"

#include "app/fields/field_key.hpp"
#include "app/fields/page_controls.hpp"
#include "phrases/page_text.hpp"
#include "report/text/html.hpp"

namespace gusset {

std::string buttonHtml(const PageButton& button) {
    return "<button type=\"button\" data-" + std::string(button.does) + "=\"" +
           escapeHtml(button.key) + "\" data-text=\"" + escapeHtml(button.text) +
           (button.name.empty() ? "\">" : "\" aria-label=\"" + escapeHtml(button.name) + "\">") +
           escapeHtml(button.look) + "</button>";
}

std::string typedHtml(const PhraseBook& book, const FieldId& field, const std::string& text,
                      const std::string& look, const std::string& name) {
    const std::string heard = look.empty() ? sayPlain(book, phrase::kEmptyCell) : look;
    return buttonHtml({"cell", keyOf(field), text, look, valueOf(book, heard, name)});
}

std::string valueOf(const PhraseBook& book, const std::string& value, const std::string& what) {
    return sayPlain(book, phrase::kValueOf, {{"value", value}, {"what", what}});
}

std::string headingHtml(const PhraseBook& book, Phrase<> phrase, int level) {
    const std::string tag = "h" + std::to_string(level) + ">";
    return "<" + tag + escapeHtml(sayPlain(book, phrase)) + "</" + tag + "\n";
}

std::string lineHtml(const std::string& text) { return "<p>" + escapeHtml(text) + "</p>\n"; }

std::string tableBegin(const std::string& caption, const std::vector<std::string>& headings) {
    std::string html =
        "<table class=\"model\">\n<caption>" + escapeHtml(caption) + "</caption>\n<thead><tr>";
    for (const std::string& heading : headings) {
        html += "<th scope=\"col\">" + escapeHtml(heading) + "</th>";
    }
    return html + "</tr></thead>\n<tbody>\n";
}

std::string inCell(const std::string& html) { return "<td>" + html + "</td>"; }
std::string inRowHead(const std::string& html) { return "<th scope=\"row\">" + html + "</th>"; }

std::string selectHtml(const std::string& label, const FieldId& field,
                       const std::vector<PageOption>& options) {
    std::string html = "<p><label>" + escapeHtml(label) + " <select data-ask=\"" +
                       escapeHtml(keyOf(field)) + "\">\n";
    for (const PageOption& option : options) {
        html += "<option value=\"" + escapeHtml(option.value) +
                (option.isNow ? "\" selected>" : "\">") + escapeHtml(option.name) + "</option>\n";
    }
    return html + "</select></label></p>\n";
}

std::string questionHtml(const AppState& state, PageQuestion question) {
    std::vector<PageOption> options;
    for (const Choice& choice : answersTo(state, question)) {
        options.push_back({std::to_string(options.size()), choice.name, choice.isNow});
    }
    return options.size() < 2 ? std::string()
                              : selectHtml(sayPlain(*state.book, questionOf(question)),
                                           PageAnswer{static_cast<int>(question)}, options);
}

std::string partButtonHtml(const AppState& state, PagePart part, Phrase<> name) {
    const PhraseBook& book = *state.book;
    const auto sentence = isShown(state, part) ? phrase::kHidePart : phrase::kShowPart;
    return "<p>" +
           buttonHtml({"press", keyOf(PageControl{PagePress::ShowPart, static_cast<int>(part)}), "",
                       sayPlain(book, sentence, {{"part", say(book, name)}}), ""}) +
           "</p>\n";
}

std::string filledHtml(const char* sentence, const std::string& part) {
    std::string html;
    forEachPiece(
        sentence, [&](std::string_view words) { html += escapeHtml(words); },
        [&](std::string_view) { html += part; });
    return html;
}

} // namespace gusset
