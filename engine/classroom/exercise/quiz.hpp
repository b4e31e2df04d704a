#pragma once
// An exercise as learning platforms know one: a title, a picture, questions, and for each question
// the fields to fill in with their right answers. All texts are plain text in UTF-8; the writers of
// exchange/platforms turn them into what each platform reads.

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

} // namespace gusset
