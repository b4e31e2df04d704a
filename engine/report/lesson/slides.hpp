#pragma once
// A lesson handed on: slides to print or to show, pictures, and words.

#include "report/lesson/stage.hpp"

#include <string>
#include <vector>

namespace gusset {

struct SlideChoices {
    bool narrow = false;    // 4:3; otherwise 16:9
    bool byStep = false;    // a slide for each step as it ends; otherwise one for each stroke
    bool withWords = false; // what is said stands below each slide
    bool hidesValues = false;
};
[[nodiscard]] StageSize sizeOf(const SlideChoices&);

struct Slide {
    std::string title; // of its step
    Sketch picture;
    std::string says{}; // since the slide before
};
[[nodiscard]] std::vector<Slide> slidesOf(const PhraseBook&, const std::vector<LessonShown>&,
                                          const SlideChoices&);
// A document of its own, one page a slide.
[[nodiscard]] std::string slidesHtml(const Writer&, const std::vector<Slide>&, const SlideChoices&);

} // namespace gusset
