#include "exchange/platforms/quiz_parts.hpp"

#include "core/markup.hpp"
#include "core/number.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

bool tellsSign(const NumberField& field) {
    return !field.sign.empty() && std::abs(field.value) > field.tolerance;
}

double pointsOf(const QuizField& field) {
    return std::visit([](const auto& it) { return it.points; }, field);
}

double pointsOf(const QuizItem& item) {
    double points = 0;
    for (const QuizField& field : item.fields) {
        points += pointsOf(field);
    }
    return points;
}

const std::string& labelOf(const QuizField& field) {
    return std::visit([](const auto& it) -> const std::string& { return it.label; }, field);
}

std::vector<QuizItem> separateItems(const Quiz& quiz) {
    std::vector<QuizItem> items;
    for (const QuizItem& item : quiz.items) {
        for (const QuizField& field : item.fields) {
            const bool alone = item.fields.size() == 1;
            items.push_back({alone ? item.name : item.name + ": " + labelOf(field),
                             alone ? item.text : item.text + " " + labelOf(field),
                             {field}});
        }
    }
    return items;
}

std::string answerNumber(double value) {
    return value == 0 ? "0" : significantNumber(value, kFileDigits);
}

std::string onOneLine(const std::string& text) {
    std::string line = text;
    std::replace_if(
        line.begin(), line.end(), [](char c) { return c == '\n' || c == '\r' || c == '\t'; }, ' ');
    return line;
}

std::string categoryOf(const Quiz& quiz) {
    std::string name;
    for (const char c : onOneLine(quiz.title)) {
        name += c == '/' ? "//" : std::string(1, c);
    }
    return "Gusset/" + name;
}

std::string questionHtml(const Quiz& quiz, const std::string& text, const std::string& source) {
    std::string html;
    for (const std::string& paragraph : quiz.introduction) {
        html += "<p>" + escapeHtml(paragraph) + "</p>";
    }
    if (!source.empty()) {
        html += "<p><img src=\"" + escapeHtml(source) + "\" alt=\"" +
                escapeHtml(quiz.picture.says) + "\" width=\"" + std::to_string(quiz.picture.width) +
                "\" height=\"" + std::to_string(quiz.picture.height) + "\"/></p>";
    }
    return html + "<p>" + escapeHtml(text) + "</p>";
}

std::string questionLine(const Quiz& quiz, const std::string& text) {
    std::string line;
    for (const std::string& paragraph : quiz.introduction) {
        line += paragraph + " ";
    }
    return onOneLine(line + text);
}

bool hasPicture(const QuizPicture& picture) { return !pictureBytes(picture).empty(); }

const char* pictureEnding(const QuizPicture& picture) {
    return picture.png.empty() ? "svg" : "png";
}

const std::string& pictureBytes(const QuizPicture& picture) {
    return picture.png.empty() ? picture.svg : picture.png;
}

} // namespace gusset
