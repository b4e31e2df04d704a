#include "exchange/platforms/quiz_file.hpp"

#include "exchange/platforms/blackboard.hpp"
#include "exchange/platforms/canvas.hpp"
#include "exchange/platforms/gift.hpp"
#include "exchange/platforms/moodle.hpp"
#include "exchange/platforms/qti_package.hpp"
#include "exchange/platforms/quiz_csv.hpp"

#include <array>
#include <utility>

namespace gusset {

namespace {

constexpr std::array<std::pair<std::string_view, QuizFormat>, 8> kQuizFormats{{
    {"moodle", QuizFormat::Moodle},
    {"cloze", QuizFormat::Cloze},
    {"qti12", QuizFormat::Canvas},
    {"gift", QuizFormat::Gift},
    {"blackboard", QuizFormat::Blackboard},
    {"qti21", QuizFormat::Qti2},
    {"qti3", QuizFormat::Qti3},
    {"csv", QuizFormat::Csv},
}};

} // namespace

std::optional<QuizFormat> quizFormatNamed(std::string_view name) {
    for (const auto& format : kQuizFormats) {
        if (format.first == name) {
            return format.second;
        }
    }
    return std::nullopt;
}

std::string quizFormatNames() {
    std::string names;
    for (const auto& format : kQuizFormats) {
        names += (names.empty() ? "" : ", ") + std::string(format.first);
    }
    return names;
}

bool takesSeveralFields(QuizFormat format) { return format == QuizFormat::Cloze; }

Outcome<std::string> quizFile(QuizFormat format, const std::vector<Quiz>& quizzes) {
    switch (format) {
    case QuizFormat::Moodle:
        return moodleXml(quizzes);
    case QuizFormat::Cloze:
        return moodleClozeXml(quizzes);
    case QuizFormat::Canvas:
        return zipOf(canvasPackage(quizzes));
    case QuizFormat::Gift:
        return giftText(quizzes);
    case QuizFormat::Blackboard:
        return blackboardText(quizzes);
    case QuizFormat::Qti2:
        return zipOf(qtiPackage(QtiVersion::Two, quizzes));
    case QuizFormat::Qti3:
        return zipOf(qtiPackage(QtiVersion::Three, quizzes));
    case QuizFormat::Csv:
        break;
    }
    return quizCsv(quizzes);
}

} // namespace gusset
