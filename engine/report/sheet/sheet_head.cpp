#include "report/sheet/sheet_head.hpp"

#include "phrases/results/sheet.hpp"
#include "report/paper/page_html.hpp"
#include "report/sheet/sheet_profiles.hpp"
#include "report/sketch/qr_code.hpp"
#include "report/text/html.hpp"

#include <optional>
#include <string_view>

namespace gusset {
namespace {

// CSS Syntax 3, 4.3.5 and 4.3.7: whatever might end a string, or the style around it, as an escape.
std::string cssString(std::string_view text) {
    constexpr std::string_view kHex = "0123456789abcdef";
    std::string css;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte < 0x20 || byte == 0x7F) {
            css += ' ';
        } else if (std::string_view("\"\\<>&").find(c) != std::string_view::npos) {
            css += std::string("\\") + kHex[byte >> 4] + kHex[byte & 15] + ' ';
        } else {
            css += c;
        }
    }
    return "\"" + css + "\"";
}

// "Page " counter(page) " of " counter(pages), in any language's order.
std::string pageCount(const PhraseBook& book) {
    std::string css;
    forEachPiece(
        sentenceIn(book, phrase::kSheetPage.english),
        [&](std::string_view words) { css += words.empty() ? "" : cssString(words) + " "; },
        [&](std::string_view part) { css += part == "n" ? "counter(page) " : "counter(pages) "; });
    return css;
}

// What has room beside the number of the page.
std::string cutShort(const std::string& text) {
    constexpr int kLongest = 60; // characters
    int letters = 0;
    for (std::size_t at = 0; at < text.size(); ++at) {
        letters += (text[at] & 0xC0) != 0x80 ? 1 : 0; // a byte that begins a character
        if (letters > kLongest) {
            return text.substr(0, at) + "\u2026";
        }
    }
    return text;
}

std::string footOf(const Writer& writer, const SheetChoices& choices) {
    std::string foot;
    for (const std::string& part :
         {cutShort(choices.project), cutShort(titleOf(writer)), choices.date}) {
        foot += (foot.empty() || part.empty() ? "" : " \u00B7 ") + part;
    }
    return foot;
}

std::string entry(const PhraseBook& book, Phrase<> name, const std::string& value) {
    return value.empty() ? value
                         : "<div><dt>" + escapeHtml(sayPlain(book, name)) + "</dt><dd>" +
                               escapeHtml(value) + "</dd></div>\n";
}

std::string linkHtml(const PhraseBook& book, const SheetChoices& choices) {
    if (choices.link.empty()) {
        return {};
    }
    const std::optional<QrCode> code = qrCodeOf(choices.link);
    const std::string words = sayPlain(book, !code          ? phrase::kSheetNoCode
                                             : choices.asks ? phrase::kSheetAsks
                                                            : phrase::kSheetOpens);
    constexpr int kFine = 85; // modules a side: finer ones need more room to be read
    const bool large = code && code->side > kFine;
    return (large ? "<p class=\"code large\">\n" : "<p class=\"code\">\n") +
           (code ? qrCodeSvg(book, *code) : std::string{}) + "<a href=\"" +
           escapeHtml(choices.link) + "\">" + escapeHtml(words) + "</a></p>\n";
}

// On every page of a sheet that checks members.
std::string cautionRule(const Writer& writer, const SheetChoices& choices) {
    if (!choices.has(SheetPart::Checks) || !hasProfiles(writer.truss)) {
        return {};
    }
    return "    @top-right { content: " + cssString(sayPlain(writer, phrase::kPreliminary)) +
           "; }\n";
}

} // namespace

std::string sheetHead(const Writer& writer, const SheetChoices& choices) {
    const std::string about = entry(writer, phrase::kSheetProject, choices.project) +
                              entry(writer, phrase::kSheetAuthor, choices.author) +
                              entry(writer, phrase::kSheetDate, choices.date);
    return "<header>\n" + linkHtml(writer, choices) + "<h1>" + escapeHtml(titleOf(writer)) +
           "</h1>\n" + (about.empty() ? about : "<dl>\n" + about + "</dl>\n");
}

std::string pageRule(const Writer& writer, const SheetChoices& choices) {
    const std::string size = choices.size == SheetSize::A4 ? "A4" : "letter";
    return "@page {\n    margin: 13mm 15mm 15mm;\n    font: 8pt \"Helvetica Neue\", Arial, "
           "sans-serif;\n    color: #3d3a36;\n    size: " +
           size + (choices.across ? " landscape" : " portrait") +
           ";\n    @bottom-left { content: " + cssString(footOf(writer, choices)) +
           "; }\n    @bottom-right { content: " + pageCount(writer) + "; }\n" +
           cautionRule(writer, choices) + "}\n";
}

} // namespace gusset
