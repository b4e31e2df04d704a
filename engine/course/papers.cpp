#include "course/papers.hpp"

#include "core/base64.hpp"
#include "exchange/exercises/series.hpp"
#include "exchange/links/base64url.hpp"
#include "exchange/platforms/quiz_file.hpp"
#include "exchange/platforms/quiz_picture.hpp"
#include "report/classroom/handout.hpp"
#include "report/classroom/quiz_of_exercise.hpp"

#include <utility>

namespace gusset {

namespace {

HandoutChoices handoutChoicesOf(const JsonValue& request) {
    HandoutChoices choices;
    const std::string kind = textUnder(request, "kind");
    choices.kind = kind == "key"       ? HandoutKind::Key
                   : kind == "answers" ? HandoutKind::Answers
                                       : HandoutKind::Questions;
    choices.size = sizeNamed(textUnder(request, "paper")).value_or(SheetSize::A4);
    return choices;
}

// Its picture is a PNG where the page could make one.
void usePictureOf(Quiz& quiz, std::string_view picture) {
    const std::optional<Bytes> bytes = fromBase64Url(picture);
    const std::string png = bytes ? std::string(bytes->begin(), bytes->end()) : std::string();
    if (isPng(png)) {
        usePng(quiz.picture, png);
    }
}

struct FileKind {
    std::string name;
    std::string type;
};
FileKind kindOf(QuizFormat format) {
    switch (format) {
    case QuizFormat::Moodle:
    case QuizFormat::Cloze:
        return {"questions.xml", "application/xml"};
    case QuizFormat::Gift:
    case QuizFormat::Blackboard:
        return {"questions.txt", "text/plain"};
    case QuizFormat::Csv:
        return {"questions.csv", "text/csv"};
    case QuizFormat::Canvas:
    case QuizFormat::Qti2:
    case QuizFormat::Qti3:
        break;
    }
    return {"questions.zip", "application/zip"};
}

} // namespace

Issues makeSheets(const CourseWish& wish, JsonText& out) {
    const Outcome<std::vector<AskedTruss>> all = readAllAsked(wish.request);
    if (!all) {
        return all.issues();
    }
    HandoutChoices choices = handoutChoicesOf(wish.request);
    const std::string page = textUnder(wish.request, "address");
    std::string sheets;
    Progress progress{0, all.value().size()};
    for (const AskedTruss& asked : all.value()) {
        if (!page.empty()) {
            const Outcome<std::string> link = studentLink(asked.truss, asked.exercise);
            if (!link) {
                return link.issues();
            }
            choices.link = page + "#" + link.value();
        }
        const Outcome<std::string> sheet =
            handoutSheet({wish.book, asked.truss}, asked.exercise, choices);
        if (!sheet) {
            return sheet.issues();
        }
        sheets += sheet.value();
        ++progress.done;
        if (wish.told) {
            wish.told(progress);
        }
    }
    out.text("html", handoutHtml({wish.book, all.value().front().truss}, sheets, choices));
    return {};
}

Issues exportQuestions(const CourseWish& wish, JsonText& out) {
    const Outcome<std::vector<AskedTruss>> all = readAllAsked(wish.request);
    if (!all) {
        return all.issues();
    }
    const QuizFormat format =
        quizFormatNamed(textUnder(wish.request, "format")).value_or(QuizFormat::Csv);
    const std::vector<JsonValue>& pictures = itemsUnder(wish.request, "pictures");
    std::vector<Quiz> quizzes;
    for (const AskedTruss& asked : all.value()) {
        Outcome<Quiz> made = quizOfExercise({wish.book, asked.truss}, asked.exercise,
                                            quizFormFor(takesSeveralFields(format)));
        if (!made) {
            return made.issues();
        }
        Quiz quiz = std::move(made).value();
        if (quizzes.size() < pictures.size()) {
            usePictureOf(quiz, pictures[quizzes.size()].text);
        }
        quizzes.push_back(std::move(quiz));
    }
    const Outcome<std::string> file = quizFile(format, quizzes);
    if (!file) {
        return file.issues();
    }
    const Bytes bytes(file.value().begin(), file.value().end());
    const FileKind kind = kindOf(format);
    out.text("name", kind.name);
    out.text("type", kind.type);
    out.text("base64", base64(bytes));
    return {};
}

} // namespace gusset
