#include "support/reading/formula_value.hpp"

#include "core/signs.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace gusset::support {

namespace {

constexpr const char* kMinus = "\u2212";
constexpr const char* kDot = "\u00B7";
constexpr const char* kDegree = "\u00B0";

// The unread rest of a formula.
struct Cursor {
    const Formula& formula;
    const Names& names;
    const NumberReader& number;
    std::size_t at = 0;

    [[nodiscard]] const Token* here() const { return at < formula.size() ? &formula[at] : nullptr; }
    [[nodiscard]] bool sees(const char* sign) const { return here() && isOperator(*here(), sign); }
};

Rounded plus(Rounded a, Rounded b) { return {a.value + b.value, a.slack + b.slack}; }

Rounded over(Rounded a, Rounded b) {
    const double ratio = a.value / b.value;
    return {ratio, (a.slack + std::fabs(ratio) * b.slack) / (std::fabs(b.value) - b.slack)};
}

Rounded rootOf(Rounded a) {
    const double root = std::sqrt(a.value);
    return {root, a.slack / root};
}

std::optional<Rounded> ofDegrees(const std::string& function, Rounded degrees) {
    constexpr double kRadian = 3.14159265358979323846 / 180;
    const double angle = degrees.value * kRadian;
    const double slack = degrees.slack * kRadian;
    if (function == "sin") {
        return Rounded{std::sin(angle), slack};
    }
    if (function == "cos") {
        return Rounded{std::cos(angle), slack};
    }
    const double tangent = std::tan(angle);
    const double steepness = 1 + tangent * tangent;
    return Rounded{tangent, 2 * steepness * slack}; // doubled: the slope increases within the slack
}

std::optional<Rounded> named(const Cursor& cursor, const std::string& name) {
    const auto known = cursor.names.find(name);
    return known == cursor.names.end() ? std::nullopt : std::optional(known->second);
}

std::optional<Rounded> inFraction(const Cursor& cursor, const std::string& text) {
    const auto number = cursor.number(text, NumberPlace::Fraction);
    return number ? number : named(cursor, text);
}

std::optional<Rounded> fraction(const Cursor& cursor, const Token& token) {
    const bool negativeRoot = token.text == kMinus; // −√2 / 3
    std::optional<Rounded> above = token.text.empty() || negativeRoot
                                       ? Rounded{negativeRoot ? -1.0 : 1.0, 0}
                                       : inFraction(cursor, token.text);
    std::optional<Rounded> below = inFraction(cursor, token.below);
    if (above && !token.rootAbove.empty()) {
        const auto root = inFraction(cursor, token.rootAbove);
        above = root ? std::optional(times(*above, rootOf(*root))) : std::nullopt;
    }
    if (!above || !below) {
        return std::nullopt;
    }
    return over(*above, token.rootBelow ? rootOf(*below) : *below);
}

std::optional<Rounded> ofFunction(Cursor& cursor, const std::string& function) {
    const Token* angle = cursor.here();
    if (!angle) {
        return std::nullopt;
    }
    ++cursor.at;
    if (angle->kind == TokenKind::Variable) {
        return named(cursor, function + " " + printedName(*angle));
    }
    const auto degrees = cursor.number(angle->text, NumberPlace::Degrees);
    return degrees ? ofDegrees(function, *degrees) : std::nullopt;
}

std::optional<Rounded> sum(Cursor&);

std::optional<Rounded> factor(Cursor& cursor, NumberPlace place) {
    const Token token = *cursor.here();
    ++cursor.at;
    switch (token.kind) {
    case TokenKind::Number: {
        const bool degrees = token.text.find(kDegree) != std::string::npos;
        return cursor.number(token.text, degrees ? NumberPlace::Degrees : place);
    }
    case TokenKind::Variable:
        return named(cursor, printedName(token));
    case TokenKind::Function:
        return ofFunction(cursor, token.text);
    case TokenKind::Fraction:
        return fraction(cursor, token);
    case TokenKind::Root: {
        const auto radicand = cursor.number(token.text, NumberPlace::Fraction);
        return radicand ? std::optional(rootOf(*radicand)) : std::nullopt;
    }
    case TokenKind::Operator:
    case TokenKind::Word:
        break;
    }
    if (!isOperator(token, "(")) {
        return std::nullopt;
    }
    const auto inside = sum(cursor);
    const bool closed = cursor.sees(")");
    ++cursor.at;
    return closed ? inside : std::nullopt;
}

bool endsTerm(const Cursor& cursor) {
    return !cursor.here() || cursor.sees("+") || cursor.sees(kMinus) || cursor.sees(")");
}

std::optional<Rounded> product(Cursor& cursor) {
    std::optional<Rounded> result;
    NumberPlace place = NumberPlace::Value;
    while (!endsTerm(cursor)) {
        if (cursor.here()->kind == TokenKind::Word || cursor.sees(kDot)) {
            place = cursor.sees(kDot) ? NumberPlace::Factor : place;
            ++cursor.at;
            continue;
        }
        const Token* after =
            cursor.at + 1 < cursor.formula.size() ? &cursor.formula[cursor.at + 1] : nullptr;
        const bool multiplies =
            after && (after->kind == TokenKind::Variable || isOperator(*after, "("));
        const auto next = factor(cursor, multiplies ? NumberPlace::Factor : place);
        if (!next) {
            return std::nullopt;
        }
        result = result ? times(*result, *next) : *next;
    }
    return result;
}

std::optional<Rounded> sum(Cursor& cursor) {
    Rounded total;
    bool any = false;
    while (cursor.here() && !cursor.sees(")")) {
        double sign = 1;
        if (cursor.sees("+") || cursor.sees(kMinus)) {
            sign = cursor.sees(kMinus) ? -1 : 1;
            ++cursor.at;
        }
        const auto term = product(cursor);
        if (!term) {
            return std::nullopt;
        }
        total = plus(total, {sign * term->value, term->slack});
        any = true;
    }
    return any ? std::optional(total) : std::nullopt;
}

} // namespace

bool agree(Rounded a, Rounded b) { return std::fabs(a.value - b.value) <= a.slack + b.slack; }

Rounded times(Rounded a, Rounded b) {
    return {a.value * b.value,
            std::fabs(a.value) * b.slack + std::fabs(b.value) * a.slack + a.slack * b.slack};
}

bool isOperator(const Token& token, const char* sign) {
    return token.kind == TokenKind::Operator && token.text == sign;
}

std::string printedName(const Token& token) {
    return token.subscript.empty() ? token.text : token.text + "_" + token.subscript;
}

std::optional<Rounded> worthOf(const Formula& formula, const Names& names,
                               const NumberReader& number) {
    Cursor cursor{formula, names, number};
    const auto worth = sum(cursor);
    return cursor.at == formula.size() ? worth : std::nullopt;
}

double Digits::step() const { return std::pow(10.0, power - decimals); }

double Digits::figureStep(int figures) const { return std::pow(10.0, leading - figures + 1); }

std::optional<Digits> digitsOf(std::string text) {
    const std::string minus = kMinus;
    const bool negative = text.rfind(minus, 0) == 0;
    text.erase(0, negative ? minus.size() : 0);
    std::replace(text.begin(), text.end(), ',', '.');
    if (text.empty() || text.find_first_not_of("0123456789.e-") != std::string::npos) {
        return std::nullopt;
    }
    char* end = nullptr;
    const double size = std::strtod(text.c_str(), &end);
    if (*end != '\0') {
        return std::nullopt;
    }
    Digits digits{.value = negative ? -size : size};
    const std::size_t power = std::min(text.find('e'), text.size());
    const std::size_t point = std::min(text.find('.'), power);
    digits.decimals = static_cast<int>(power - std::min(point + 1, power));
    digits.scientific = power < text.size();
    digits.power = digits.scientific ? std::atoi(text.c_str() + power + 1) : 0;
    digits.leading = size > 0 ? static_cast<int>(std::floor(std::log10(size))) : 0;
    return digits;
}

std::vector<PrintedEquation> equationsOf(const Formula& formula) {
    std::vector<PrintedEquation> equations(1, PrintedEquation(1));
    for (const Token& token : formula) {
        if (isOperator(token, ":")) {
            equations.back() = PrintedEquation(1);
        } else if (isOperator(token, ",")) {
            equations.emplace_back(1);
        } else if (isOperator(token, "=") || isOperator(token, kAlmost)) {
            equations.back().push_back({.isExact = isOperator(token, "=")});
        } else {
            equations.back().back().formula.push_back(token);
        }
    }
    return equations;
}

} // namespace gusset::support
