#pragma once
// What is said in a lesson, with the times at which it is shown: captions and chapters by the rules
// of WebVTT (W3C, WebVTT: The Web Video Text Tracks Format, Candidate Recommendation 2019), a
// transcript, and a list of chapters as text.

#include "report/lesson/lesson.hpp"

#include <string>
#include <vector>

namespace gusset {

struct Caption {
    double from = 0; // s from the beginning
    double to = 0;
    std::string says{};
    std::string chapter{}; // its title, where one begins with it; else empty
};

// Each stroke as long as it takes to be said: for a lesson that nobody has recorded yet.
[[nodiscard]] std::vector<Caption> captionsAtReadingPace(const std::vector<LessonShown>&);
// Of a speaker at 150 words a minute, the pace of recorded talks (common practice), with a moment
// to look at what is new.
[[nodiscard]] double secondsFor(const std::string& says);

[[nodiscard]] std::string captionsVtt(const std::vector<Caption>&);
[[nodiscard]] std::string chaptersVtt(const std::vector<Caption>&);
[[nodiscard]] std::string chapterList(const std::vector<Caption>&); // "1:05 Joint C", a line each
[[nodiscard]] std::string transcript(const std::vector<Caption>&);

} // namespace gusset
