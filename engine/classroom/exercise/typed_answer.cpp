#include "classroom/exercise/typed_answer.hpp"

#include "model/quantity/quantity_input.hpp"
#include "phrases/faults/exercises.hpp"

#include <array>
#include <cmath>
#include <string>
#include <utility>

namespace gusset {

namespace {

constexpr std::array<std::pair<std::string_view, int>, 14> kSignWords{{{"→", 1},
                                                                       {"←", -1},
                                                                       {"↑", 1},
                                                                       {"↓", -1},
                                                                       {"(T)", 1},
                                                                       {"(C)", -1},
                                                                       {"(t)", 1},
                                                                       {"(c)", -1},
                                                                       {"T", 1},
                                                                       {"C", -1},
                                                                       {"t", 1},
                                                                       {"c", -1},
                                                                       {"+", 1},
                                                                       {"−", -1}}};

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

// Takes a sign's word from either end of the text; 0 if there is none.
int takeSign(std::string_view& text) {
    for (const auto& [word, sign] : kSignWords) {
        if (text.starts_with(word)) {
            text = trimmed(text.substr(word.size()));
            return sign;
        }
        // A letter behind a letter belongs to a unit.
        if (text.ends_with(word) && text.size() > word.size() &&
            (word.size() > 1 || text[text.size() - 2] == ' ' ||
             (text[text.size() - 2] >= '0' && text[text.size() - 2] <= '9'))) {
            text = trimmed(text.substr(0, text.size() - word.size()));
            return sign;
        }
    }
    return 0;
}

} // namespace

Outcome<WrittenForce> readWritten(std::string_view text, ForceUnit unit) {
    std::string_view rest = trimmed(text);
    WrittenForce written;
    if (rest.empty()) {
        return written;
    }
    int sign = 0;
    while (const int taken = takeSign(rest)) {
        sign = sign == 0 ? taken : sign * taken;
    }
    const Outcome<double> size = readForce(rest, unit);
    if (!size) {
        return Issue{IssueCode::Syntax, phrase::kPlaceAnswers,
                     statement(phrase::kNotTyped, {{"text", std::string(trimmed(text))}})};
    }
    if (size.value() < 0) {
        sign = sign == 0 ? -1 : -sign;
    }
    written.size = std::abs(size.value());
    if (written.size == 0.0) {
        written.sign = 0;
    } else if (sign != 0) {
        written.sign = sign;
    }
    return written;
}

} // namespace gusset
