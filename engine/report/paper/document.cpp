#include "report/paper/document.hpp"

#include "phrases/working/paper.hpp"
#include "report/paper/page_html.hpp"
#include "report/sketch/sketch_svg.hpp"
#include "report/text/html.hpp"
#include "report/text/math_ml.hpp"

#include <span>
#include <string_view>

namespace gusset {

std::span<const unsigned char> paperStyle(); // paper.css, compiled in: site/cmake/embed.cmake

namespace {

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
    std::string html = heading(book, phrase::kPartGiven) + paragraphsHtml(document.warnings);
    html += "<div class=\"steps\">\n";
    if (document.given) {
        html += figureHtml(*document.given);
    }
    return html + "<p class=\"sought\">" + htmlOf(document.sought) + "</p>\n</div>\n";
}

} // namespace

std::string documentHtml(const Writer& writer, const WorkingDocument& document) {
    const std::string results = resultsPart(writer, document);
    const std::string working = workingPart(writer, document);
    return documentAround(writer,
                          givenPart(writer, document) +
                              (document.resultsFirst ? results + working : working + results));
}

std::string documentAround(const Writer& writer, const std::string& html) {
    return pageHtml(writer, {formulaStyleWithTypeface(),
                             textOf(paperStyle()),
                             {},
                             "<h1>" + escapeHtml(titleOf(writer)) + "</h1>\n" + html});
}

} // namespace gusset
