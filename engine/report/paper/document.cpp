#include "report/paper/document.hpp"

#include "phrases/results/board.hpp"
#include "phrases/working/paper.hpp"
#include "report/sketch/sketch_svg.hpp"
#include "report/sketch/svg_text.hpp"
#include "report/text/html.hpp"
#include "report/text/math_ml.hpp"

#include <cassert>
#include <span>
#include <string_view>

namespace gusset {

// The files beside this one, compiled in: site/cmake/embed.cmake.
std::span<const unsigned char> formulaStyle();
std::span<const unsigned char> paperStyle();
std::span<const unsigned char> mathsTypeface();

namespace {

// RFC 4648, section 4.
std::string base64(std::span<const unsigned char> bytes) {
    constexpr std::string_view kDigits =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string text;
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        unsigned block = 0;
        for (std::size_t k = 0; k < 3; ++k) {
            block = block << 8 | (i + k < bytes.size() ? bytes[i + k] : 0u);
        }
        for (std::size_t k = 0; k < 4; ++k) {
            text += i + k <= bytes.size() ? kDigits[block >> (18 - 6 * k) & 63u] : '=';
        }
    }
    return text;
}

// The style sheets with their typeface in them.
std::string style() {
    constexpr std::string_view kFile = "maths.woff2";
    std::string css;
    for (const std::span<const unsigned char> sheet : {formulaStyle(), paperStyle()}) {
        css.append(sheet.begin(), sheet.end());
    }
    const std::size_t file = css.find(kFile);
    assert(file != css.npos);
    return css.replace(file, kFile.size(), "data:font/woff2;base64," + base64(mathsTypeface()));
}

std::string heading(const PhraseBook& book, Phrase<> phrase) {
    return "<h2>" + escapeHtml(sayPlain(book, phrase)) + "</h2>\n";
}

std::string workingPart(const PhraseBook& book, const WorkingDocument& document) {
    return document.working.empty()
               ? std::string{}
               : heading(book, phrase::kPartWorking) + passagesHtml(document.working);
}

std::string resultsPart(const Writer& writer, const WorkingDocument& document) {
    std::string html = document.results.empty() ? std::string{}
                                                : "<div class=\"results\">\n" +
                                                      passagesHtml(document.results) + "</div>\n";
    if (document.answer) {
        const std::string unit = symbolOf(writer.truss.units.force);
        html += "<div class=\"steps\">\n" + figureHtml(*document.answer) + "<p>" +
                escapeHtml(unit.empty() ? sayPlain(writer, phrase::kForcesSigns)
                                        : sayPlain(writer, phrase::kForcesIn, {{"unit", unit}})) +
                "</p>\n</div>\n";
    }
    return html.empty() ? html : heading(writer, phrase::kPartResults) + html;
}

std::string givenPart(const PhraseBook& book, const WorkingDocument& document) {
    std::string html = heading(book, phrase::kPartGiven);
    for (const std::string& warning : document.warnings) {
        html += "<p>" + escapeHtml(warning) + "</p>\n";
    }
    html += "<div class=\"steps\">\n";
    if (document.given) {
        html += figureHtml(*document.given);
    }
    return html + "<p class=\"sought\">" + htmlOf(document.sought) + "</p>\n</div>\n";
}

} // namespace

std::string documentHtml(const Writer& writer, const WorkingDocument& document) {
    const std::string title = escapeHtml(
        writer.truss.title.empty() ? sayPlain(writer, phrase::kUntitledTruss) : writer.truss.title);
    const std::string results = resultsPart(writer, document);
    const std::string working = workingPart(writer, document);
    const std::string language = svgAttribute("lang", sayPlain(writer, phrase::kLanguageTag));
    return "<!doctype html>\n<html" + language + ">\n<head>\n<meta charset=\"utf-8\">\n" +
           "<meta name=\"viewport\" content=\"width=device-width\">\n" + "<title>" + title +
           "</title>\n<style>\n" + style() + "</style>\n</head>\n<body>\n<main>\n<h1>" + title +
           "</h1>\n" + givenPart(writer, document) +
           (document.resultsFirst ? results + working : working + results) +
           "</main>\n</body>\n</html>\n";
}

} // namespace gusset
