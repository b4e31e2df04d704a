#include "report/paper/page_html.hpp"

#include "core/base64.hpp"
#include "phrases/results/board.hpp"
#include "phrases/working/paper.hpp"
#include "report/sketch/svg_text.hpp"
#include "report/text/html.hpp"

#include <cassert>
#include <string_view>

namespace gusset {

// The files beside this one, compiled in: site/cmake/embed.cmake.
std::span<const unsigned char> formulaStyle();
std::span<const unsigned char> mathsTypeface();

namespace {

std::string styleElement(const std::string& css) {
    return css.empty() ? css : "<style>\n" + css + "</style>\n";
}

} // namespace

std::string textOf(std::span<const unsigned char> file) { return {file.begin(), file.end()}; }

std::string formulaStyleWithTypeface() {
    constexpr std::string_view kFile = "maths.woff2";
    std::string css = textOf(formulaStyle());
    const std::size_t file = css.find(kFile);
    assert(file != css.npos);
    return css.replace(file, kFile.size(), "data:font/woff2;base64," + base64(mathsTypeface()));
}

std::string titleOf(const Writer& writer) {
    return writer.truss.title.empty() ? sayPlain(writer, phrase::kUntitledTruss)
                                      : writer.truss.title;
}

std::string pageHtml(const Writer& writer, const DocumentParts& parts) {
    const std::string language = svgAttribute("lang", sayPlain(writer, phrase::kLanguageTag));
    return "<!doctype html>\n<html" + language + ">\n<head>\n<meta charset=\"utf-8\">\n" +
           "<meta name=\"viewport\" content=\"width=device-width\">\n<title>" +
           escapeHtml(titleOf(writer)) + "</title>\n" + styleElement(parts.typeface) +
           styleElement(parts.style) + styleElement(parts.pages) + "</head>\n<body>\n<main>\n" +
           parts.body + "</main>\n</body>\n</html>\n";
}

} // namespace gusset
