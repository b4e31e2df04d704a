#include "support/reading/printed_solving.hpp"

#include "core/signs.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <set>

namespace gusset::support {

namespace {

bool isNameAt(const Formula& formula, std::size_t i) {
    return formula[i].kind == TokenKind::Variable &&
           (i == 0 || formula[i - 1].kind != TokenKind::Function);
}

std::set<std::string> namesIn(const Formula& formula) {
    std::set<std::string> names;
    for (std::size_t i = 0; i < formula.size(); ++i) {
        if (isNameAt(formula, i)) {
            names.insert(printedName(formula[i]));
        }
    }
    return names;
}

// Left side less right side, as factors of its names and a constant.
struct Linear {
    std::map<std::string, Rounded> factors{};
    Rounded constant{};
};

Rounded minus(Rounded a, Rounded b) { return {a.value - b.value, a.slack + b.slack}; }
Rounded added(Rounded a, Rounded b) { return {a.value + b.value, a.slack + b.slack}; }

struct Line {
    std::string text;
    std::vector<std::pair<Rounded, int>> of; // multiples of numbered equations
    Formula left;
    Formula right;
    bool isExact = false;
    Rounded given{}; // the right side
    Linear linear{};
};

std::optional<Rounded> difference(const Line& line, const Names& names,
                                  const NumberReader& number) {
    const auto left = worthOf(line.left, names, number);
    const auto right = worthOf(line.right, names, number);
    return left && right ? std::optional(minus(*left, *right)) : std::nullopt;
}

// The letters count as numbers.
bool makeLinear(Line& line, const Names& values, const NumberReader& number) {
    Names names;
    std::set<std::string> all = namesIn(line.left);
    all.merge(namesIn(line.right));
    std::erase_if(all, isLetter);
    for (const auto& [name, value] : values) {
        names[name] = value;
    }
    for (const std::string& name : all) {
        names[name] = {0, 0};
    }
    const auto constant = difference(line, names, number);
    if (!constant) {
        return false;
    }
    line.linear.constant = *constant;
    for (const std::string& name : all) {
        names[name] = {1, 0};
        const auto with = difference(line, names, number);
        names[name] = {0, 0};
        line.linear.factors[name] = {with->value - constant->value,
                                     std::fabs(with->slack - constant->slack) + kNoise};
    }
    return true;
}

// "3 · (1) − 4 · (2):"; false if it is not a label.
bool readLabel(const Formula& formula, std::size_t end, const NumberReader& number, Line& line) {
    double sign = 1;
    Rounded factor{1, 0};
    for (std::size_t i = 0; i < end; ++i) {
        if (isOperator(formula[i], "+") || isOperator(formula[i], kMinus)) {
            sign = isOperator(formula[i], kMinus) ? -1 : 1;
        } else if (isOperator(formula[i], "(") && i + 2 < end && isOperator(formula[i + 2], ")")) {
            line.of.push_back({times({sign, 0}, factor), std::atoi(formula[i + 1].text.c_str())});
            factor = {1, 0};
            i += 2;
        } else if (!isOperator(formula[i], kDot)) {
            const auto multiple =
                worthOf({formula[i]}, {}, [&](const std::string& text, NumberPlace) {
                    return number(text, NumberPlace::Factor);
                });
            if (!multiple) {
                return false;
            }
            factor = *multiple;
        }
    }
    return std::all_of(line.of.begin(), line.of.end(),
                       [](const auto& part) { return part.second == 1 || part.second == 2; });
}

std::optional<Line> lineOf(const SolvingText& printed, const Names& values,
                           const NumberReader& number) {
    Line line{printed.text, {}, {}, {}};
    const Formula& formula = printed.formula;
    const auto colon = std::find_if(formula.begin(), formula.end(),
                                    [](const Token& token) { return isOperator(token, ":"); });
    if (colon != formula.end() &&
        !readLabel(formula, static_cast<std::size_t>(colon - formula.begin()), number, line)) {
        return std::nullopt;
    }
    const std::vector<PrintedEquation> equations = equationsOf(formula);
    const PrintedEquation& parts = equations.back();
    if (parts.size() != 2) {
        return std::nullopt;
    }
    line.left = parts[0].formula;
    line.right = parts[1].formula;
    line.isExact = parts[1].isExact;
    const auto right = worthOf(line.right, values, number);
    line.given = right.value_or(Rounded{});
    return right && makeLinear(line, values, number) ? std::optional(line) : std::nullopt;
}

Rounded factorIn(const Linear& linear, const std::string& name) {
    const auto at = linear.factors.find(name);
    return at == linear.factors.end() ? Rounded{} : at->second;
}

Linear plus(const Linear& a, Rounded multiple, const Linear& b) {
    Linear sum = a;
    for (const auto& [name, factor] : b.factors) {
        sum.factors[name] = added(factorIn(sum, name), times(multiple, factor));
    }
    sum.constant = added(sum.constant, times(multiple, b.constant));
    return sum;
}

// Whether two lines say the same, up to the sign of both sides.
bool isSame(const Linear& a, const Linear& b) {
    const auto agrees = [&](double sign) {
        const auto same = [&](Rounded one, Rounded other) {
            return agree({sign * one.value, one.slack + kNoise},
                         {other.value, other.slack + kNoise});
        };
        for (const Linear* names : {&a, &b}) {
            for (const auto& [name, factor] : names->factors) {
                if (!same(factorIn(a, name), factorIn(b, name))) {
                    return false;
                }
            }
        }
        return same(a.constant, b.constant);
    };
    return agrees(1) || agrees(-1);
}

// The two numbered equations, as far as they are written.
using Pair = std::array<std::optional<Line>, 2>;

// The multiples of the equations that the label names.
Linear combined(const Line& line, const Pair& pair) {
    Linear sum;
    for (const auto& [multiple, number] : line.of) {
        sum = plus(sum, multiple, pair[static_cast<std::size_t>(number - 1)]->linear);
    }
    return sum;
}

// An equation whose names that the line lacks are expressed by the other equation.
Linear substituted(const Line& line, const Linear& equation, const Linear& other) {
    Linear sum = equation;
    for (const auto& [name, factor] : equation.factors) {
        if (!line.linear.factors.contains(name)) {
            const Rounded by = factorIn(other, name);
            const double ratio = -factor.value / by.value;
            const double slack =
                (factor.slack + std::fabs(ratio) * by.slack) / (std::fabs(by.value) - by.slack);
            sum = plus(sum, {ratio, slack}, other);
            sum.factors.erase(name);
        }
    }
    return sum;
}

// The same with the values of these names put in.
Linear withValues(const Line& line, const Linear& equation, const Names& values) {
    Linear sum = equation;
    for (const auto& [name, factor] : equation.factors) {
        if (!line.linear.factors.contains(name) && values.contains(name)) {
            sum.constant = added(sum.constant, times(factor, values.at(name)));
            sum.factors.erase(name);
        }
    }
    return sum;
}

// A_x = 20 − 3 A_y: the equation divided by the factor of its only name on the left.
bool isSolvedFor(const Line& line, const Linear& equation) {
    if (line.left.size() != 1 || line.left.front().kind != TokenKind::Variable) {
        return false;
    }
    const Rounded factor = factorIn(equation, printedName(line.left.front()));
    return isSame(plus({}, factor, line.linear), equation);
}

bool isWhatItsLabelSays(const Line& line, const Pair& pair, const Names& values) {
    const Linear equation = combined(line, pair);
    if (line.of.size() != 1) {
        return isSame(line.linear, equation);
    }
    if (line.linear.factors.size() == equation.factors.size()) {
        return isSame(line.linear, equation) || isSolvedFor(line, equation);
    }
    const auto at = static_cast<std::size_t>(line.of.front().second - 1);
    const bool keepsRight = agree(line.given, pair[at]->given);
    const Linear put = withValues(line, equation, values);
    return (keepsRight && isSame(line.linear, put)) || isSolvedFor(line, put) ||
           isSame(line.linear, substituted(line, equation, pair[1 - at]->linear));
}

// Whether it holds for the true answers with its numbers taken as exact.
bool holdsExactly(const Line& line, const AnswerValues& values, const NumberReader& number) {
    const auto exactly = [&](const std::string& text, NumberPlace place) {
        auto value = number(text, place);
        if (value) {
            value->slack = 0;
        }
        return value;
    };
    const auto left = worthOf(line.left, values.exact, exactly);
    const auto right = worthOf(line.right, values.exact, exactly);
    return left && right &&
           std::fabs(left->value - right->value) <=
               kNoise * std::max({1.0, std::fabs(left->value), std::fabs(right->value)}) * 10;
}

std::string objectionToLine(const Line& line, Pair& pair, const AnswerValues& values,
                            const NumberReader& number) {
    const auto difference = gusset::support::difference(line, values.printed, number);
    if (!difference) {
        return "a line of numbers can't be worked out";
    }
    if (!agree(*difference, {0, kNoise})) {
        return "a line of numbers does not hold";
    }
    if (line.isExact && !values.exact.empty() && !holdsExactly(line, values, number)) {
        return "a line with rounded numbers is said to be equal";
    }
    if (line.of.empty()) {
        return {};
    }
    const std::size_t at = static_cast<std::size_t>(line.of.front().second - 1);
    if (line.of.size() == 1 && line.of.front().first.value == 1 && !pair[at]) {
        pair[at] = line;
        return at == 1 && !pair[0] ? "the second equation comes first" : "";
    }
    if (!pair[0] || !pair[1]) {
        return "a line comes from an equation that is not written";
    }
    return isWhatItsLabelSays(line, pair, values.printed) ? ""
                                                          : "a line is not what its label says";
}

bool isNumberOrSign(const Token& token) {
    return token.kind == TokenKind::Number || token.kind == TokenKind::Fraction ||
           token.kind == TokenKind::Root || isOperator(token, "(") || isOperator(token, kMinus);
}

} // namespace

bool isLetter(const std::string& name) { return name == "X" || name == "Y"; }

bool isSolvingLine(const Formula& formula) {
    if (isNumberOrSign(formula.front()) || isLetter(printedName(formula.front()))) {
        return true;
    }
    const bool named = std::any_of(formula.begin(), formula.end(),
                                   [](const Token& token) { return isOperator(token, ":"); });
    const std::vector<PrintedEquation> equations = equationsOf(formula);
    return !named && equations.front().size() == 2 &&
           !namesIn(equations.front()[1].formula).empty();
}

Names lettersOf(const std::vector<SolvingText>& lines, const Names& answers) {
    Names letters;
    for (const SolvingText& line : lines) {
        const bool defines = line.formula.size() == 3 && isLetter(printedName(line.formula[0])) &&
                             line.formula[2].kind == TokenKind::Variable;
        if (!defines) {
            continue;
        }
        const auto answer = answers.find(printedName(line.formula[2]));
        if (answer != answers.end()) {
            letters[printedName(line.formula[0])] = answer->second;
        }
    }
    return letters;
}

std::string objectionToSolving(const std::vector<SolvingText>& lines, const AnswerValues& values,
                               const NumberReader& number) {
    Pair pair;
    for (const SolvingText& printed : lines) {
        if (printed.formula.empty()) {
            pair = {};
            continue;
        }
        const auto line = lineOf(printed, values.printed, number);
        const std::string objection =
            line ? objectionToLine(*line, pair, values, number) : "a line can't be read";
        if (!objection.empty()) {
            return objection + ": " + printed.text;
        }
    }
    return {};
}

} // namespace gusset::support
