#include "report/derivation/passage.hpp"

#include "report/sketch/sketch_svg.hpp"
#include "report/text/formula.hpp"
#include "report/text/math_ml.hpp"

namespace gusset {
namespace {

std::string indented(const std::string& text, const char* indent) {
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = text.find('\n', at) + 1;
        out += indent + text.substr(at, end - at);
        at = end;
    }
    return out;
}

std::string textOf(const WorkingLine& line) {
    const bool deeper = line.role == LineRole::Equation || line.role == LineRole::Result;
    return (deeper ? "    " : "  ") + plainText(line.runs) + '\n';
}

std::string textOf(const Sketch&) { return {}; }

std::string textOf(const TextTable& table) { return indented(tableText(table), "  "); }

std::string htmlOf(const WorkingLine& line) {
    return line.formula.empty() ? "<p>" + htmlOf(line.runs) + "</p>\n"
                                : "<div class=\"formula\">" + mathMl(line.formula) + "</div>\n";
}

std::string htmlOf(const Sketch& sketch) { return figureHtml(sketch); }

std::string htmlOf(const TextTable& table) { return tableHtml(table); }

std::string sectionsHtml(const std::vector<Passage>&, int level);

std::string sectionHtml(const Passage& passage, int level) {
    const std::string heading = "h" + std::to_string(level) + ">";
    std::string html =
        "<section>\n<" + heading + gusset::htmlOf(passage.title) + "</" + heading + "\n";
    for (const auto& part : passage.parts) {
        html += std::visit([](const auto& it) { return htmlOf(it); }, part);
    }
    for (const Folded& folded : passage.folded) {
        html += "<details>\n<summary>" + gusset::htmlOf(folded.title) + "</summary>\n" +
                sectionsHtml(folded.passages, level + 1) + "</details>\n";
    }
    return html + "</section>\n";
}

std::string sectionsHtml(const std::vector<Passage>& passages, int level) {
    std::string html;
    for (std::size_t i = 0; i < passages.size(); ++i) {
        const bool begins = !passages[i].goesOn;
        const bool ends = i + 1 == passages.size() || !passages[i + 1].goesOn;
        html += begins ? "<div class=\"steps\">\n" : "";
        html += sectionHtml(passages[i], level);
        html += ends ? "</div>\n" : "";
    }
    return html;
}

} // namespace

void addSentence(Passage& passage, RichLine runs) {
    if (!runs.empty()) {
        passage.parts.push_back(WorkingLine{LineRole::Sentence, std::move(runs)});
    }
}

void addFormula(Passage& passage, LineRole role, Formula tokens) {
    RichLine runs = runsOf(tokens);
    passage.parts.push_back(WorkingLine{role, std::move(runs), std::move(tokens)});
}

std::string passagesText(const std::vector<Passage>& passages) {
    std::string text;
    for (const Passage& passage : passages) {
        text += plainText(passage.title) + '\n';
        for (const auto& part : passage.parts) {
            text += std::visit([](const auto& it) { return textOf(it); }, part);
        }
        text += '\n';
    }
    return text.substr(0, text.find_last_not_of('\n') + 1) + '\n';
}

std::string passagesHtml(const std::vector<Passage>& passages, int level) {
    return sectionsHtml(passages, level);
}

} // namespace gusset
