#include "report/lesson/slides.hpp"

#include "phrases/working/lesson.hpp"
#include "report/lesson/captions.hpp"
#include "report/lesson/spoken.hpp"
#include "report/paper/page_html.hpp"
#include "report/sketch/svg_text.hpp"
#include "report/text/html.hpp"

#include <algorithm>
#include <cmath>
#include <span>

namespace gusset {

std::span<const unsigned char> slidesStyle(); // slides.css, compiled in: site/cmake/embed.cmake

namespace {

constexpr StageSize kWide{1600, 900};
constexpr StageSize kNarrow{1200, 900};

// Words below the slides, px, as slides.css has them.
constexpr double kWordsBeside = 0.025; // of the width, on either side
constexpr double kUnderWords = 24;
constexpr double kLineHigh = 1.4; // of the font size
constexpr double kLargestWords = 26;
constexpr double kSmallestWords = 18;
constexpr double kWordsHigh = 240; // as much as the letters are made smaller for

// An upper bound: lines break at spaces, so that the end of one may stay empty.
double heightOfWords(const std::string& words, double width, double size) {
    constexpr double kFilled = 0.85;
    const double lines = std::ceil(widthOf({Run{words}}, size) / (kFilled * width));
    return lines * kLineHigh * size;
}

double heightOfWords(const Slide& slide, double size) {
    const double width = (1 - 2 * kWordsBeside) * slide.picture.width;
    double height = kUnderWords + heightOfWords(slide.says, width, size);
    for (const std::string& remark : slide.remarks) {
        height += heightOfWords(remark, width, size);
    }
    return height;
}

double sizeOfWords(const Slide& slide) {
    double size = kLargestWords;
    while (size > kSmallestWords && heightOfWords(slide, size) > kWordsHigh) {
        size -= 1;
    }
    return size;
}

std::string wordsHtml(const Slide& slide) {
    std::string html = "<div" + svgAttribute("class", "words") +
                       svgAttribute("style", "font-size:" + svgLength(sizeOfWords(slide)) + "px") +
                       ">\n";
    for (const std::string& remark : slide.remarks) {
        html += "<p class=\"remark\">" + escapeHtml(remark) + "</p>\n";
    }
    return html + "<p>" + escapeHtml(slide.says) + "</p>\n</div>\n";
}

// A page has one size throughout: the words that need most decide.
std::string pageRule(const std::vector<Slide>& slides, const SlideChoices& choices) {
    const StageSize size = sizeOf(choices);
    constexpr double kStep = 4; // px, so that it is whole in points, of which printers make pages
    double words = 0;
    for (const Slide& slide : slides) {
        words = std::max(words, choices.withWords ? heightOfWords(slide, sizeOfWords(slide)) : 0);
    }
    return "@page { size: " + svgLength(size.width) + "px " +
           svgLength(size.height + kStep * std::ceil(words / kStep)) + "px; margin: 0; }\n";
}

// What the author says and asks before a step; with an empty subject, after the last one.
std::vector<std::string> remarksAt(const PhraseBook& book, const LessonShown& lesson,
                                   const std::string& subject) {
    std::vector<std::string> remarks;
    for (const LessonPause& pause : lesson.pauses) {
        if (pause.before != subject) {
            continue;
        }
        if (!pause.says.empty()) {
            remarks.push_back(pause.says);
        }
        if (pause.asks.valid()) {
            remarks.push_back(sayPlain(book, phrase::kWhatIsTheForce,
                                       {{"member", memberName(lesson.truss, pause.asks)}}));
        }
    }
    return remarks;
}

// By step: one slide for all its strokes, but for those after which something leaves the stage: a
// table stands alone, and only so many lines have room.
bool endsSlide(const std::vector<Stroke>& strokes, std::size_t first, std::size_t last) {
    constexpr std::size_t kLines = 6;
    if (last + 1 == strokes.size() || strokes[last].table || strokes[last + 1].table) {
        return true;
    }
    const std::size_t before = first == 0 ? 0 : strokes[first - 1].lines;
    return strokes[last + 1].lines > before + kLines;
}

} // namespace

StageSize sizeOf(const SlideChoices& choices) { return choices.narrow ? kNarrow : kWide; }

std::vector<SlidePlace> slidePlaces(const std::vector<LessonShown>& lessons,
                                    const SlideChoices& choices) {
    std::vector<SlidePlace> places;
    for (std::size_t k = 0; k < lessons.size(); ++k) {
        for (std::size_t i = 0; i < lessons[k].steps.size(); ++i) {
            const std::vector<Stroke>& strokes = lessons[k].steps[i].strokes;
            std::size_t first = 0;
            for (std::size_t last = 0; last < strokes.size(); ++last) {
                if (!choices.byStep || endsSlide(strokes, first, last)) {
                    places.push_back({k, i, first, last});
                    first = last + 1;
                }
            }
        }
    }
    return places;
}

Slide slideAt(const PhraseBook& book, const std::vector<LessonShown>& lessons,
              const SlidePlace& place, const SlideChoices& choices) {
    const LessonShown& lesson = lessons[place.lesson];
    const LessonStep& step = lesson.steps[place.step];
    Slide slide;
    slide.title = plainText(step.title);
    slide.picture =
        stageOf(book, lesson, {place.step, place.last, choices.hidesValues}, sizeOf(choices))
            .sketch;
    for (std::size_t i = place.first; i <= place.last; ++i) {
        addSaid(slide.says, step.strokes[i].spoken);
    }
    if (place.first == 0) {
        slide.remarks = remarksAt(book, lesson, step.subject);
    }
    if (place.step + 1 == lesson.steps.size() && place.last + 1 == step.strokes.size()) {
        const std::vector<std::string> last = remarksAt(book, lesson, {});
        slide.remarks.insert(slide.remarks.end(), last.begin(), last.end());
    }
    return slide;
}

std::vector<Slide> slidesOf(const PhraseBook& book, const std::vector<LessonShown>& lessons,
                            const SlideChoices& choices) {
    std::vector<Slide> slides;
    for (const SlidePlace& place : slidePlaces(lessons, choices)) {
        slides.push_back(slideAt(book, lessons, place, choices));
    }
    return slides;
}

std::string pictureNumber(std::size_t index) {
    constexpr std::size_t kDigits = 4;
    const std::string number = std::to_string(index + 1);
    return std::string(kDigits - std::min(kDigits, number.size()), '0') + number;
}

std::string animatedStep(const PhraseBook& book, const LessonShown& lesson, std::size_t step,
                         const SlideChoices& choices, AnimationEnd end) {
    std::vector<SketchFrame> frames;
    const std::vector<Stroke>& strokes = lesson.steps[step].strokes;
    for (std::size_t k = 0; k < strokes.size(); ++k) {
        frames.push_back(
            {stageOf(book, lesson, {step, k, choices.hidesValues}, sizeOf(choices)).sketch,
             secondsFor(strokes[k].spoken)});
    }
    return svgOfFrames(frames, end);
}

std::string slidesHtml(const Writer& writer, const std::vector<Slide>& slides,
                       const SlideChoices& choices) {
    std::string body;
    for (const Slide& slide : slides) {
        body += "<section class=\"slide\">\n" + svgOf(slide.picture);
        if (choices.withWords) {
            body += wordsHtml(slide);
        }
        body += "</section>\n";
    }
    return pageHtml(writer, {{}, textOf(slidesStyle()), pageRule(slides, choices), body});
}

} // namespace gusset
