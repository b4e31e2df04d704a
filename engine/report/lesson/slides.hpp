#pragma once
// A lesson handed on: slides to print or to show, pictures, and words.

#include "report/lesson/stage.hpp"
#include "report/sketch/sketch_svg.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace gusset {

struct SlideChoices {
    bool narrow = false;    // 4:3; otherwise 16:9
    bool byStep = false;    // a slide for each step as it ends; otherwise one for each stroke
    bool withWords = false; // below each slide: what its author puts there, and what is said
    bool hidesValues = false;
};
[[nodiscard]] StageSize sizeOf(const SlideChoices&);

struct Slide {
    std::string title; // of its step
    Sketch picture{};
    std::vector<std::string> remarks{}; // of the lesson's author: before it, or after the last one
    std::string says{};                 // since the slide before
};
// Which strokes a slide shows: it is drawn as the last of them, and says all.
struct SlidePlace {
    std::size_t lesson = 0;
    std::size_t step = 0;
    std::size_t first = 0;
    std::size_t last = 0;
};
[[nodiscard]] std::vector<SlidePlace> slidePlaces(const std::vector<LessonShown>&,
                                                  const SlideChoices&);
[[nodiscard]] Slide slideAt(const PhraseBook&, const std::vector<LessonShown>&, const SlidePlace&,
                            const SlideChoices&);
[[nodiscard]] std::vector<Slide> slidesOf(const PhraseBook&, const std::vector<LessonShown>&,
                                          const SlideChoices&);
// "0007" for the seventh: so pictures sort in the order in which they are shown.
[[nodiscard]] std::string pictureNumber(std::size_t index);
// A picture whose strokes follow each other as long as each takes to be said; a file of its own.
[[nodiscard]] std::string animatedStep(const PhraseBook&, const LessonShown&, std::size_t step,
                                       const SlideChoices&, AnimationEnd);
// A document of its own, one page a slide.
[[nodiscard]] std::string slidesHtml(const Writer&, const std::vector<Slide>&, const SlideChoices&);

} // namespace gusset
