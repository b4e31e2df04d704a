#include "support/reading/formula_reader.hpp"

#include "support/reading/formula_value.hpp"

#include <algorithm>
#include <cmath>

namespace gusset::support {

namespace {

constexpr int kFigures = 4;           // of sums, which keep their zeros
constexpr double kDecimalStep = 0.01; // of forces, which may drop them

std::optional<Rounded> numberOf(const std::string& text, NumberPlace) {
    const auto digits = digitsOf(text);
    if (!digits) {
        return std::nullopt;
    }
    double step = digits->step();
    if (!digits->scientific) {
        const double size = std::fabs(digits->value);
        if (size < std::pow(10.0, kFigures - 1 - digits->decimals)) {
            step = std::min(step, kDecimalStep); // fewer figures than a sum has: zeros were dropped
        } else if (digits->decimals == 0) {
            step = digits->figureStep(kFigures); // "12350" for 12345.6
        }
    }
    return Rounded{digits->value, 0.5001 * step};
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

// Whether all parts with a value have the same value; counts those compared.
bool holds(const PrintedEquation& equation, const Names& names, int& compared) {
    std::optional<Rounded> first;
    for (const PrintedPart& part : equation) {
        const auto value = worthOf(part.formula, names, numberOf);
        if (value && first) {
            ++compared;
            if (!agree(*value, *first)) {
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
        const PrintedEquation parts = equationsOf(line.formula).front();
        const auto value = worthOf(parts.back().formula, {}, numberOf);
        for (const auto& [part, isExact] : parts) {
            if (line.role == LineRole::Result && value && part.size() == 1 &&
                part.front().kind == TokenKind::Variable) {
                names[printedName(part.front())] = *value;
            }
        }
    }
    FormulaReading reading;
    for (const WorkingLine& line : lines) {
        if (line.role == LineRole::Result) {
            continue; // defines the values of names
        }
        for (const PrintedEquation& equation : equationsOf(line.formula)) {
            if (!holds(equation, names, reading.equations)) {
                reading.objection = plainText(line.runs);
                return reading;
            }
        }
    }
    return reading;
}

} // namespace gusset::support
