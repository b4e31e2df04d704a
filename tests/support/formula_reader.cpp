#include "support/formula_reader.hpp"

#include <cmath>
#include <cstdlib>
#include <map>
#include <optional>

namespace gusset::support {

namespace {

constexpr int kFigures = 4;           // of sums, which keep their zeros
constexpr double kDecimalStep = 0.01; // of forces, which may drop them

// A printed number, and how far off its rounding may be.
struct Rounded {
    double value = 0;
    double slack = 0;
};

std::optional<Rounded> numberOf(std::string text) {
    constexpr const char* kMinus = "\u2212";
    const bool negative = text.rfind(kMinus, 0) == 0;
    if (negative) {
        text.erase(0, std::string(kMinus).size());
    }
    char* end = nullptr;
    const double size = std::strtod(text.c_str(), &end);
    if (text.empty() || *end != '\0') {
        return std::nullopt;
    }
    const auto point = text.find('.');
    const auto power = text.find('e');
    const auto digits = point == std::string::npos ? 0 : std::min(power, text.size()) - point - 1;
    double step = std::pow(10.0, -static_cast<double>(digits));
    if (power != std::string::npos) {
        step *= std::pow(10.0, std::atoi(text.c_str() + power + 1));
    } else if (size < std::pow(10.0, kFigures - 1 - static_cast<double>(digits))) {
        step = std::min(step, kDecimalStep); // fewer figures than a sum has: zeros were dropped
    } else if (digits == 0) {
        step = std::pow(10.0, std::floor(std::log10(size)) - kFigures + 1); // "12350" for 12345.6
    }
    return Rounded{negative ? -size : size, 0.5001 * step};
}

using Names = std::map<std::string, Rounded>;

std::string nameOf(const Token& token) { return token.text + "_" + token.subscript; }

std::optional<Rounded> valueOf(const Token& token, const Names& names) {
    if (token.kind == TokenKind::Number) {
        return numberOf(token.text);
    }
    const auto known = names.find(nameOf(token));
    return token.kind == TokenKind::Variable && known != names.end() ? std::optional(known->second)
                                                                     : std::nullopt;
}

bool is(const Token& token, const char* sign) {
    return token.kind == TokenKind::Operator && token.text == sign;
}

// A sum of products; nothing when something in it has no value.
std::optional<Rounded> evaluate(const Formula& formula, const Names& names) {
    Rounded sum;
    double sign = 1;
    std::optional<Rounded> product;
    const auto close = [&] {
        if (product) {
            sum.value += sign * product->value;
            sum.slack += product->slack;
        }
        product.reset();
        sign = 1;
    };
    for (const Token& token : formula) {
        if (token.kind == TokenKind::Word || is(token, "\u00B7")) {
            continue;
        }
        if (is(token, "+") || is(token, "\u2212")) {
            close();
            sign = is(token, "+") ? 1 : -1;
            continue;
        }
        const auto value = valueOf(token, names);
        if (!value) {
            return std::nullopt;
        }
        if (product) {
            product->slack = std::fabs(product->value) * value->slack +
                             std::fabs(value->value) * product->slack +
                             product->slack * value->slack;
            product->value *= value->value;
        } else {
            product = value;
        }
    }
    close();
    return sum;
}

using Equation = std::vector<Formula>; // the parts between the equals signs

// A colon begins anew, a comma begins another equation.
std::vector<Equation> equationsOf(const Formula& formula) {
    std::vector<Equation> equations(1, Equation(1));
    for (const Token& token : formula) {
        if (is(token, ":")) {
            equations.back().assign(1, {});
        } else if (is(token, ",")) {
            equations.emplace_back(1);
        } else if (is(token, "=")) {
            equations.back().emplace_back();
        } else {
            equations.back().back().push_back(token);
        }
    }
    return equations;
}

std::vector<WorkingLine> formulasOf(const std::vector<Passage>& passages) {
    std::vector<WorkingLine> lines;
    for (const Passage& passage : passages) {
        for (const auto& part : passage.parts) {
            const auto* line = std::get_if<WorkingLine>(&part);
            if (line && !line->formula.empty()) {
                lines.push_back(*line);
            }
        }
    }
    return lines;
}

// Whether all its parts that have a value have the same; counts those compared.
bool holds(const Equation& equation, const Names& names, int& compared) {
    std::optional<Rounded> first;
    for (const Formula& part : equation) {
        const auto value = evaluate(part, names);
        if (value && first) {
            ++compared;
            if (std::fabs(value->value - first->value) > value->slack + first->slack) {
                return false;
            }
        }
        first = value ? value : first;
    }
    return true;
}

} // namespace

FormulaReading readFormulas(const std::vector<Passage>& passages) {
    const std::vector<WorkingLine> lines = formulasOf(passages);
    Names names;
    for (const WorkingLine& line : lines) {
        const Equation parts = equationsOf(line.formula).front();
        const auto value = evaluate(parts.back(), {});
        for (const Formula& part : parts) {
            if (line.role == LineRole::Result && value && part.size() == 1 &&
                part.front().kind == TokenKind::Variable) {
                names[nameOf(part.front())] = *value;
            }
        }
    }
    FormulaReading reading;
    for (const WorkingLine& line : lines) {
        if (line.role == LineRole::Result) {
            continue; // where the names' values come from
        }
        for (const Equation& equation : equationsOf(line.formula)) {
            if (!holds(equation, names, reading.equations)) {
                reading.objection = plainText(line.runs);
                return reading;
            }
        }
    }
    return reading;
}

} // namespace gusset::support
