#include "exchange/platforms/blackboard.hpp"

#include "exchange/platforms/quiz_parts.hpp"

#include "phrases/faults/platforms.hpp"

namespace gusset {

namespace {

std::string recordOf(const std::string& question, const NumberField& field) {
    return "NUM\t" + question + "\t" + answerNumber(field.value) + "\t" +
           answerNumber(field.tolerance) + "\r\n";
}

std::string recordOf(const std::string& question, const ChoiceField& field) {
    std::string line = "MC\t" + question;
    for (std::size_t i = 0; i < field.options.size(); ++i) {
        line +=
            "\t" + onOneLine(field.options[i]) + (i == field.answer ? "\tcorrect" : "\tincorrect");
    }
    return line + "\r\n";
}

} // namespace

Outcome<std::string> blackboardText(const std::vector<Quiz>& quizzes) {
    std::string text;
    std::size_t records = 0;
    for (const Quiz& quiz : quizzes) {
        for (const QuizItem& item : separateItems(quiz)) {
            const std::string question = questionLine(quiz, item.text);
            text += std::visit([&](const auto& it) { return recordOf(question, it); },
                               item.fields.front());
            ++records;
        }
    }
    if (records > kBlackboardRecords) {
        return Issue{IssueCode::TooLarge, "--as",
                     statement(phrase::kTooManyRecords,
                               {{"number", records}, {"limit", kBlackboardRecords}})};
    }
    return text;
}

} // namespace gusset
