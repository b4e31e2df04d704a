#include "report/lesson/captions.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {
namespace {

constexpr double kWordsInSecond = 2.5;
constexpr double kLook = 1.5;       // s
constexpr int kLongestCaption = 84; // characters: two lines of 42, the usual limit of subtitles

std::string padded(long long number, std::size_t digits) {
    std::string text = std::to_string(number);
    return std::string(digits > text.size() ? digits - text.size() : 0, '0') + text;
}

// 00:01:05.300
std::string vttTime(double seconds) {
    const auto all = static_cast<long long>(std::llround(1000 * std::max(0.0, seconds)));
    return padded(all / 3600000, 2) + ":" + padded(all / 60000 % 60, 2) + ":" +
           padded(all / 1000 % 60, 2) + "." + padded(all % 1000, 3);
}

// Its grammar has no "-->" in a caption, and & and < begin something else.
std::string vttWords(const std::string& text) {
    std::string safe;
    for (const char letter : text) {
        safe += letter == '&'                      ? std::string("&amp;")
                : letter == '<'                    ? std::string("&lt;")
                : letter == '>'                    ? std::string("&gt;")
                : letter == '\n' || letter == '\r' ? std::string(" ")
                                                   : std::string(1, letter);
    }
    return safe;
}

std::size_t lettersIn(const std::string& text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char letter) { return (letter & 0xC0) != 0x80; }));
}

// Pieces that fit a caption, broken at spaces.
std::vector<std::string> pieces(const std::string& says) {
    std::vector<std::string> all;
    std::string piece;
    std::size_t at = 0;
    while (at < says.size()) {
        const std::size_t space = std::min(says.find(' ', at), says.size());
        const std::string word = says.substr(at, space - at);
        if (!piece.empty() && lettersIn(piece) + lettersIn(word) + 1 > kLongestCaption) {
            all.push_back(std::move(piece));
            piece.clear();
        }
        piece += (piece.empty() ? "" : " ") + word;
        at = space + 1;
    }
    if (!piece.empty()) {
        all.push_back(std::move(piece));
    }
    return all;
}

std::string cue(double from, double to, const std::string& says) {
    return "\n" + vttTime(from) + " --> " + vttTime(to) + "\n" + vttWords(says) + "\n";
}

} // namespace

double secondsFor(const std::string& says) {
    const auto words = std::count(says.begin(), says.end(), ' ') + (says.empty() ? 0 : 1);
    return kLook + static_cast<double>(words) / kWordsInSecond;
}

std::vector<Caption> captionsAtReadingPace(const std::vector<LessonShown>& lessons) {
    std::vector<Caption> captions;
    double now = 0;
    for (const LessonShown& lesson : lessons) {
        for (const LessonStep& step : lesson.steps) {
            std::string chapter = plainText(step.title);
            for (const Stroke& stroke : step.strokes) {
                const double until = now + secondsFor(stroke.spoken);
                captions.push_back({now, until, stroke.spoken, std::exchange(chapter, {})});
                now = until;
            }
        }
    }
    return captions;
}

std::string captionsVtt(const std::vector<Caption>& captions) {
    std::string text = "WEBVTT\n";
    for (const Caption& caption : captions) {
        const std::vector<std::string> parts = pieces(caption.says);
        double letters = 0;
        for (const std::string& part : parts) {
            letters += static_cast<double>(lettersIn(part));
        }
        double from = caption.from;
        for (const std::string& part : parts) {
            const double share = static_cast<double>(lettersIn(part)) / letters;
            const double to = from + share * (caption.to - caption.from);
            text += cue(from, to, part);
            from = to;
        }
    }
    return text;
}

std::string chaptersVtt(const std::vector<Caption>& captions) {
    std::string text = "WEBVTT\n";
    for (std::size_t i = 0; i < captions.size(); ++i) {
        if (captions[i].chapter.empty()) {
            continue;
        }
        double until = captions[i].to;
        for (std::size_t k = i + 1; k < captions.size() && captions[k].chapter.empty(); ++k) {
            until = captions[k].to;
        }
        text += cue(captions[i].from, until, captions[i].chapter);
    }
    return text;
}

std::string chapterList(const std::vector<Caption>& captions) {
    std::string text;
    for (const Caption& caption : captions) {
        if (!caption.chapter.empty()) {
            const auto seconds = static_cast<long long>(caption.from);
            text += (seconds >= 3600
                         ? std::to_string(seconds / 3600) + ":" + padded(seconds / 60 % 60, 2)
                         : std::to_string(seconds / 60)) +
                    ":" + padded(seconds % 60, 2) + " " + caption.chapter + "\n";
        }
    }
    return text;
}

std::string transcript(const std::vector<Caption>& captions) {
    std::string text;
    for (const Caption& caption : captions) {
        if (!caption.chapter.empty()) {
            text += (text.empty() ? "" : "\n\n") + caption.chapter + "\n\n";
        } else if (!text.empty()) {
            text += " ";
        }
        text += caption.says;
    }
    return text.empty() ? text : text + "\n";
}

} // namespace gusset
