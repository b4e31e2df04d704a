#include "support/reading/text_formula.hpp"

#include "core/signs.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <string_view>

namespace gusset::support {

namespace {

constexpr std::string_view kRoot = "\u221A";
constexpr std::string_view kDegreeSign = "\u00B0";
constexpr std::array<std::string_view, 12> kOperators{
    "+", kMinus, "\u00B7", "=", ":", ",", "(", ")", kAlmost, "\u03A3", "\u27F2", "\u27F3"};
constexpr std::array<std::string_view, 8> kArrows{"↑", "↓", "←", "→", "↖", "↗", "↙", "↘"};
constexpr std::array<std::string_view, 2> kSpaces{" ", "\u2009"};

bool isFormulaDigit(char c) { return std::isdigit(static_cast<unsigned char>(c)) != 0; }

struct Scanner {
    const std::string& text;
    const PrintedWords& words;
    Formula formula{};
    std::size_t at = 0;

    [[nodiscard]] bool sees(std::string_view sign) const {
        return text.compare(at, sign.size(), sign) == 0;
    }
    bool take(std::string_view sign) {
        const bool seen = !sign.empty() && sees(sign);
        at += seen ? sign.size() : 0;
        return seen;
    }
    [[nodiscard]] bool atDigit() const { return at < text.size() && isFormulaDigit(text[at]); }
};

template <std::size_t Size>
std::string_view seenOf(const Scanner& scanner, const std::array<std::string_view, Size>& signs) {
    const auto seen = std::find_if(signs.begin(), signs.end(),
                                   [&](std::string_view sign) { return scanner.sees(sign); });
    return seen == signs.end() ? std::string_view{} : *seen;
}

// "26.67", "26,67", "1.5e21", "2e-7": a point, a comma or a power belongs to the number if a digit
// follows.
std::string takeNumber(Scanner& scanner) {
    const std::string& text = scanner.text;
    const std::size_t start = scanner.at;
    const auto digitAt = [&](std::size_t i) { return i < text.size() && isFormulaDigit(text[i]); };
    while (scanner.at < text.size()) {
        const char c = text[scanner.at];
        const bool joins = c == '.' || c == ',' || c == 'e';
        if (isFormulaDigit(c) || (joins && digitAt(scanner.at + 1))) {
            ++scanner.at;
        } else if (c == 'e' && digitAt(scanner.at + 2) && text[scanner.at + 1] == '-') {
            scanner.at += 2;
        } else {
            break;
        }
    }
    return text.substr(start, scanner.at - start);
}

std::string takeRadicand(Scanner& scanner) {
    return scanner.take(kRoot) ? takeNumber(scanner) : std::string{};
}

// 3/5, 25√5/3, √2/2, 1.5/√13
void takeFraction(Scanner& scanner, const std::string& above, const std::string& rootAbove) {
    Token token{.kind = TokenKind::Fraction, .text = above, .rootAbove = rootAbove};
    token.rootBelow = scanner.take(kRoot);
    token.below = takeNumber(scanner);
    scanner.formula.push_back(token);
}

void takeQuantity(Scanner& scanner) {
    const std::string above = takeNumber(scanner);
    const std::string rootAbove = takeRadicand(scanner);
    if (scanner.take("/")) {
        takeFraction(scanner, above, rootAbove);
        return;
    }
    if (!above.empty()) {
        const std::string degree =
            scanner.take(kDegreeSign) ? std::string(kDegreeSign) : std::string{};
        scanner.formula.push_back({TokenKind::Number, above + degree});
    }
    if (!rootAbove.empty()) {
        scanner.formula.push_back({TokenKind::Root, rootAbove});
    }
}

Token named(const std::string& name) {
    const std::size_t low = name.find('_');
    return low == std::string::npos
               ? Token{TokenKind::Variable, name}
               : Token{TokenKind::Variable, name.substr(0, low), name.substr(low + 1)};
}

// Up to a space or a sign: a function, a unit after a number, or a variable.
void takeWord(Scanner& scanner) {
    const std::size_t start = scanner.at;
    while (scanner.at < scanner.text.size() && seenOf(scanner, kSpaces).empty() &&
           seenOf(scanner, kOperators).empty()) {
        ++scanner.at;
    }
    const std::string word = scanner.text.substr(start, scanner.at - start);
    const bool behindNumber =
        !scanner.formula.empty() && scanner.formula.back().kind != TokenKind::Operator;
    if (word == "sin" || word == "cos" || word == "tan") {
        scanner.formula.push_back({TokenKind::Function, word});
    } else if (behindNumber && word == scanner.words.unit) {
        scanner.formula.push_back({TokenKind::Word, word});
    } else {
        scanner.formula.push_back(named(word));
    }
}

bool takeKnownName(Scanner& scanner) {
    std::string longest;
    for (const std::string& name : scanner.words.names) {
        if (scanner.sees(name) && name.size() > longest.size()) {
            longest = name;
        }
    }
    if (longest.empty()) {
        return false;
    }
    scanner.at += longest.size();
    scanner.formula.push_back(named(longest));
    return true;
}

// "(tension)", "(to the left)"
bool takeRemark(Scanner& scanner) {
    const std::size_t next = scanner.at + 1;
    const bool letter = next < scanner.text.size() &&
                        std::islower(static_cast<unsigned char>(scanner.text[next])) != 0;
    const bool function = scanner.sees("(sin") || scanner.sees("(cos");
    if (!scanner.sees("(") || !letter || function) {
        return false;
    }
    const std::size_t end = std::min(scanner.text.find(')', next), scanner.text.size() - 1) + 1;
    scanner.formula.push_back({TokenKind::Word, scanner.text.substr(scanner.at, end - scanner.at)});
    scanner.at = end;
    return true;
}

} // namespace

Formula formulaOfText(const std::string& line, const PrintedWords& words) {
    Scanner scanner{line, words};
    while (scanner.at < line.size()) {
        if (scanner.take(seenOf(scanner, kSpaces)) || takeKnownName(scanner) ||
            takeRemark(scanner)) {
            continue;
        }
        if (const std::string_view arrow = seenOf(scanner, kArrows); !arrow.empty()) {
            scanner.at += arrow.size();
            scanner.formula.push_back({TokenKind::Word, std::string(arrow)});
            continue;
        }
        const std::string_view sign = seenOf(scanner, kOperators);
        if (!sign.empty()) {
            scanner.at += sign.size();
            scanner.formula.push_back({TokenKind::Operator, std::string(sign)});
        } else if (scanner.atDigit() || scanner.sees(kRoot)) {
            takeQuantity(scanner);
        } else {
            takeWord(scanner);
        }
    }
    return scanner.formula;
}

} // namespace gusset::support
