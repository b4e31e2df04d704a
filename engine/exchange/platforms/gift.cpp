#include "exchange/platforms/gift.hpp"

#include "exchange/platforms/quiz_parts.hpp"

#include <string_view>

namespace gusset {

namespace {

std::string giftEscaped(const std::string& text) {
    std::string escaped;
    for (const char c : onOneLine(text)) {
        escaped += std::string_view("~=#{}:\\").find(c) == std::string_view::npos
                       ? std::string(1, c)
                       : std::string("\\") + c;
    }
    return escaped;
}

std::string giftAnswers(const NumberField& field) {
    const std::string tolerance = ":" + answerNumber(field.tolerance) + "#";
    std::string text =
        "{#\n\t=%100%" + answerNumber(field.value) + tolerance + giftEscaped(field.right) + "\n";
    if (tellsSign(field)) {
        text += "\t=%50%" + answerNumber(-field.value) + tolerance + giftEscaped(field.sign) + "\n";
    }
    return text + "\t~#" + giftEscaped(field.wrong) + "\n}";
}

std::string giftAnswers(const ChoiceField& field) {
    std::string text = "{\n";
    for (std::size_t i = 0; i < field.options.size(); ++i) {
        const bool right = i == field.answer;
        text += (right ? "\t=" : "\t~") + giftEscaped(field.options[i]) + "#" +
                giftEscaped(right ? field.right : field.wrong) + "\n";
    }
    return text + "}";
}

} // namespace

std::string giftText(const std::vector<Quiz>& quizzes) {
    std::string text;
    for (const Quiz& quiz : quizzes) {
        text += "$CATEGORY: " + categoryOf(quiz) + "\n\n";
        for (const QuizItem& item : separateItems(quiz)) {
            text +=
                "::" + giftEscaped(item.name) + "::[html]" +
                giftEscaped(questionHtml(quiz, item.text, "")) +
                std::visit([](const auto& it) { return giftAnswers(it); }, item.fields.front()) +
                "\n\n";
        }
    }
    return text;
}

} // namespace gusset
