#pragma once
// An exercise as learning platforms know one: a title, a picture, questions, and for each question
// the fields to fill in with their right answers. All texts are plain text in UTF-8; the writers of
// this folder turn them into what each platform reads.

#include <cstddef>
#include <string>
#include <variant>
#include <vector>

namespace gusset {

struct NumberField {
    std::string label;
    double value = 0;
    double tolerance = 0; // absolute: value ± tolerance is right
    std::string unit;     // "kN", or empty
    double points = 1;
    std::string right; // what is said to a right answer …
    std::string sign;  // … to one of the right size with the other sign; empty: as to a wrong one
    std::string wrong; // … and to any other
};
struct ChoiceField {
    std::string label;
    std::vector<std::string> options;
    std::size_t answer = 0; // index of the right one
    double points = 1;
    std::string right;
    std::string wrong;
};
using QuizField = std::variant<NumberField, ChoiceField>;

struct QuizItem {
    std::string name; // short, for lists of questions
    std::string text; // the question
    std::vector<QuizField> fields;
};

struct QuizPicture {
    std::string svg; // empty: there is none
    std::string png; // its bytes; empty: the SVG is used
    std::string says;
    int width = 0; // px
    int height = 0;
};

struct Quiz {
    std::string title;
    std::vector<std::string> introduction; // paragraphs that go before every question
    QuizPicture picture;
    std::vector<QuizItem> items;
};

// Whether an answer of the other sign is to be told from a wrong one: the two ranges lie apart.
[[nodiscard]] bool tellsSign(const NumberField&);
[[nodiscard]] double pointsOf(const QuizField&);
[[nodiscard]] double pointsOf(const QuizItem&);
[[nodiscard]] const std::string& labelOf(const QuizField&);

// Each field as a question of its own, for formats that take one answer a question.
[[nodiscard]] std::vector<QuizItem> separateItems(const Quiz&);

// As files have them: ASCII, a hyphen for minus, twelve figures.
[[nodiscard]] std::string answerNumber(double);
// Line breaks and tabs as spaces.
[[nodiscard]] std::string onOneLine(const std::string&);

// Introduction and question as HTML; `source` is where the picture is found, empty for none.
[[nodiscard]] std::string questionHtml(const Quiz&, const std::string& text,
                                       const std::string& source);
// Introduction and question as one line of text.
[[nodiscard]] std::string questionLine(const Quiz&, const std::string& text);

[[nodiscard]] const char* pictureEnding(const QuizPicture&); // "png" or "svg"
[[nodiscard]] const std::string& pictureBytes(const QuizPicture&);
[[nodiscard]] bool hasPicture(const QuizPicture&);

} // namespace gusset
