#include "exchange/platforms/quiz_csv.hpp"

#include "exchange/platforms/quiz_parts.hpp"

#include "core/csv.hpp"

namespace gusset {

namespace {

std::string cellsOf(const NumberField& field) {
    return "number," + answerNumber(field.value) + "," + answerNumber(field.tolerance) + "," +
           csvTextCell(field.unit) + ",";
}

std::string cellsOf(const ChoiceField& field) {
    std::string options;
    for (const std::string& option : field.options) {
        options += (options.empty() ? "" : "; ") + option;
    }
    return "choice," + csvTextCell(field.options[field.answer]) + ",,," + csvTextCell(options);
}

} // namespace

std::string quizCsv(const std::vector<Quiz>& quizzes) {
    std::string text = csvHead("exercise,name,question,kind,answer,tolerance,unit,options,points");
    for (const Quiz& quiz : quizzes) {
        for (const QuizItem& item : separateItems(quiz)) {
            const QuizField& field = item.fields.front();
            text += csvTextCell(quiz.title) + "," + csvTextCell(item.name) + "," +
                    csvTextCell(item.text) + "," +
                    std::visit([](const auto& it) { return cellsOf(it); }, field) + "," +
                    answerNumber(pointsOf(field)) + "\r\n";
        }
    }
    return text;
}

} // namespace gusset
