#include "cli/export_command.hpp"

#include "cli/asked.hpp"
#include "cli/input.hpp"
#include "cli/verdicts.hpp"
#include "exchange/platforms/quiz_file.hpp"
#include "report/classroom/quiz_of_exercise.hpp"

namespace gusset::cli {

namespace {

constexpr const char* kPictureOption = "--picture";

Issue ofPicture(std::string says) {
    return {IssueCode::OutOfRange, kPictureOption, std::move(says)};
}

// PNG (ISO/IEC 15948), 5.2 and 11.2.2: the signature, then the header's length and name, then the
// width and the height, four bytes each, the highest first.
std::size_t pngNumber(const std::string& png, std::size_t at) {
    std::size_t value = 0;
    for (std::size_t i = at; i < at + 4; ++i) {
        value = value << 8 | static_cast<unsigned char>(png[i]);
    }
    return value;
}

Outcome<std::string> pictureNamed(const std::string& path) {
    Outcome<std::string> png = readTextOf(path);
    if (!png) {
        return png.issues();
    }
    constexpr std::string_view kSignature = "\x89PNG\r\n\x1A\n";
    constexpr std::size_t kHead = 24;
    if (png.value().size() < kHead || !png.value().starts_with(kSignature) ||
        pngNumber(png.value(), 16) == 0 || pngNumber(png.value(), 20) == 0) {
        return ofPicture("is no PNG: name a picture of that kind");
    }
    return png;
}

// As wide as the drawing that it replaces.
void usePicture(QuizPicture& picture, const std::string& png) {
    picture.png = png;
    picture.height = static_cast<int>(static_cast<double>(picture.width) *
                                      static_cast<double>(pngNumber(png, 20)) /
                                      static_cast<double>(pngNumber(png, 16)));
}

Outcome<Quiz> quizOf(const PhraseBook& book, const Truss& truss, QuizForm form) {
    const Outcome<Exercise> exercise = askedOf(truss);
    if (!exercise) {
        return exercise.issues();
    }
    return quizOfExercise({book, truss}, exercise.value(), form);
}

} // namespace

Answer answerExport(const PhraseBook& book, const Arguments& arguments,
                    const std::vector<NamedReading>& readings) {
    const std::optional<QuizFormat> format = quizFormatNamed(arguments.valueOf("--as"));
    if (!format) {
        return {Exit::WrongUse,
                {},
                {{IssueCode::UnknownName, "--as", "takes one of " + quizFormatNames()}}};
    }
    std::string png;
    if (arguments.has(kPictureOption)) {
        Outcome<std::string> read = readings.size() > 1
                                        ? ofPicture("goes with one FILE: each has its own picture")
                                        : pictureNamed(arguments.valueOf(kPictureOption));
        if (!read) {
            return {Exit::BadInput, {}, read.issues()};
        }
        png = std::move(read).value();
    }
    const QuizForm form =
        takesSeveralFields(*format) ? QuizForm::SizeAndSense : QuizForm::OneNumber;
    std::vector<Quiz> quizzes;
    for (const NamedReading& it : readings) {
        Outcome<Quiz> quiz = quizOf(book, it.reading.truss, form);
        if (!quiz) {
            return {exitOf(quiz.issues()), {}, inFile(book, quiz.issues(), it.name)};
        }
        quizzes.push_back(std::move(quiz).value());
    }
    if (!png.empty()) {
        usePicture(quizzes.front().picture, png);
    }
    const Outcome<std::string> file = quizFile(*format, quizzes);
    return file ? Answer{Exit::Answered, file.value(), {}}
                : Answer{Exit::BadInput, {}, file.issues()};
}

} // namespace gusset::cli
