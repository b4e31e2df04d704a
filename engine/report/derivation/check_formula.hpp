#pragma once
// How the formulas of a check are written, sign by sign.

#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "report/derivation/passage.hpp"
#include "report/results/results_text.hpp"
#include "report/text/formula.hpp"

#include <cmath>
#include <string>
#include <utility>

namespace gusset {

// Builds a formula from left to right.
class CheckFormula {
public:
    CheckFormula(const Truss& truss) : truss_(truss) {}

    CheckFormula& name(std::string text, std::string subscript = {}) {
        formula_.push_back(variableToken(std::move(text), std::move(subscript)));
        return *this;
    }
    CheckFormula& squared(std::string text, std::string subscript = {}) {
        name(std::move(text), std::move(subscript));
        formula_.push_back(numberToken("\u00B2"));
        return *this;
    }
    CheckFormula& sign(const char* text) {
        formula_.push_back(operatorToken(text));
        return *this;
    }
    CheckFormula& equals() { return sign("="); }
    CheckFormula& times() { return sign(kDot); }
    CheckFormula& over() { return sign("/"); }
    // A number from the input: as many figures as it has, up to six.
    CheckFormula& given(double value) { return number(formatNumber(value, typedStyleOf(truss_))); }
    // A computed number: five figures, one more than the last line of a check needs.
    CheckFormula& found(double value) { return number(foundText(value)); }
    CheckFormula& square(double value) { return number(foundText(value) + "\u00B2"); }
    CheckFormula& number(std::string text) {
        formula_.push_back(numberToken(std::move(text)));
        return *this;
    }
    CheckFormula& root(double value) {
        formula_.push_back({.kind = TokenKind::Root, .text = foundText(value)});
        return *this;
    }
    CheckFormula& unit(const std::string& symbol) {
        if (!symbol.empty()) {
            formula_.push_back(wordToken(symbol));
        }
        return *this;
    }
    // Conversion of stress · area to force, where the model's units need one: "/ 1000".
    CheckFormula& toForce() {
        const double factor =
            toPascal(truss_.units.stress) * areaUnit() / toNewton(truss_.units.force);
        const double inverse = std::round(1 / factor);
        if (std::abs(factor - 1) < kWholeRatio) {
            return *this;
        }
        return std::abs(factor * inverse - 1) < kWholeRatio ? over().given(inverse)
                                                            : times().given(factor);
    }

    void put(Passage& passage, LineRole role = LineRole::Equation) {
        addFormula(passage, role, std::move(formula_));
        formula_.clear();
    }

    [[nodiscard]] double areaUnit() const {
        const double metre = toMetre(truss_.units.section);
        return metre * metre;
    }

private:
    [[nodiscard]] std::string foundText(double value) const {
        return formatNumber(value,
                            {NumberForm::Significant, 5, truss_.classSettings.decimalSign, false});
    }

    const Truss& truss_;
    Formula formula_;
};

} // namespace gusset
