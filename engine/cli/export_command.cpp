#include "cli/export_command.hpp"

#include "cli/asked.hpp"
#include "cli/input.hpp"
#include "cli/verdicts.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/platforms/quiz_file.hpp"
#include "exchange/platforms/quiz_picture.hpp"
#include "report/classroom/quiz_of_exercise.hpp"

namespace gusset::cli {

namespace {

constexpr const char* kPictureOption = "--picture";

Issue ofPicture(std::string says) {
    return {IssueCode::OutOfRange, kPictureOption, std::move(says)};
}

Outcome<std::string> pictureNamed(const std::string& path) {
    Outcome<std::string> png = readTextOf(path);
    if (!png) {
        return png.issues();
    }
    if (!isPng(png.value())) {
        return ofPicture("is no PNG: name a picture of that kind");
    }
    return png;
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
    const QuizForm form = quizFormFor(takesSeveralFields(*format));
    std::vector<Quiz> quizzes;
    for (const NamedReading& it : readings) {
        Outcome<Quiz> quiz = quizOf(book, it.reading.truss, form);
        if (!quiz) {
            return {exitOf(quiz.issues()), {}, inFile(book, quiz.issues(), it.name)};
        }
        quizzes.push_back(std::move(quiz).value());
    }
    if (!png.empty()) {
        usePng(quizzes.front().picture, png);
    }
    const Outcome<std::string> file = quizFile(*format, quizzes);
    return file ? Answer{Exit::Answered, file.value(), {}}
                : Answer{Exit::BadInput, {}, file.issues()};
}

} // namespace gusset::cli
