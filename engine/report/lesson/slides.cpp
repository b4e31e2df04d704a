#include "report/lesson/slides.hpp"

#include "report/paper/page_html.hpp"
#include "report/sketch/sketch_svg.hpp"
#include "report/text/html.hpp"

#include <span>

namespace gusset {

std::span<const unsigned char> slidesStyle(); // slides.css, compiled in: site/cmake/embed.cmake

namespace {

constexpr StageSize kWide{1600, 900};
constexpr StageSize kNarrow{1200, 900};
constexpr int kWordsHigh = 225; // px below each slide

std::string pageRule(const SlideChoices& choices) {
    const StageSize size = sizeOf(choices);
    const int high = static_cast<int>(size.height) + (choices.withWords ? kWordsHigh : 0);
    return "@page { size: " + std::to_string(static_cast<int>(size.width)) + "px " +
           std::to_string(high) + "px; margin: 0; }\n";
}

} // namespace

StageSize sizeOf(const SlideChoices& choices) { return choices.narrow ? kNarrow : kWide; }

std::vector<Slide> slidesOf(const PhraseBook& book, const std::vector<LessonShown>& lessons,
                            const SlideChoices& choices) {
    std::vector<Slide> slides;
    for (const LessonShown& lesson : lessons) {
        for (std::size_t i = 0; i < lesson.steps.size(); ++i) {
            const LessonStep& step = lesson.steps[i];
            std::string says;
            for (std::size_t k = 0; k < step.strokes.size(); ++k) {
                says += (says.empty() ? "" : " ") + step.strokes[k].spoken;
                if (choices.byStep && k + 1 < step.strokes.size()) {
                    continue;
                }
                slides.push_back(
                    {plainText(step.title),
                     stageOf(book, lesson, {i, k, choices.hidesValues}, sizeOf(choices)).sketch,
                     says});
                says.clear();
            }
        }
    }
    return slides;
}

std::string slidesHtml(const Writer& writer, const std::vector<Slide>& slides,
                       const SlideChoices& choices) {
    std::string body;
    for (const Slide& slide : slides) {
        body += "<section class=\"slide\">\n" + svgOf(slide.picture);
        if (choices.withWords) {
            body += "<p>" + escapeHtml(slide.says) + "</p>\n";
        }
        body += "</section>\n";
    }
    return pageHtml(writer, {{}, textOf(slidesStyle()), pageRule(choices), body});
}

} // namespace gusset
