#include "report/derivation/force_method_formulas.hpp"

#include "core/signs.hpp"
#include "report/results/added_up.hpp"
#include "report/text/formula.hpp"

#include <cmath>

namespace gusset {
namespace {

void addSignedNumber(const ForceMethodNotes& notes, double value, Formula& formula) {
    const bool first = formula.empty() || formula.back().text == "=" || formula.back().text == ":";
    if (!first) {
        formula.push_back(operatorToken(value < 0 ? kMinus : "+"));
    }
    formula.push_back(
        numberToken(sumText(first ? value : std::fabs(value), notes.notation.numbers)));
}

void addUnit(Formula& formula, const std::string& unit) {
    if (!unit.empty()) {
        formula.push_back(wordToken(unit));
    }
}

// EA·δ_10, or δ_10 alone.
Formula displacementName(const ForceMethodNotes& notes, std::size_t i, std::size_t k) {
    Formula formula;
    if (notes.method.timesStiffness) {
        formula = {variableToken("EA"), operatorToken(kDot)};
    }
    formula.push_back(displacementToken(i, k));
    return formula;
}

// "=" if sumText writes all of it, else "≈".
Token relationToSum(const ForceMethodNotes& notes, double value) {
    NumberStyle style = notes.notation.numbers;
    if (style.form != NumberForm::Significant) {
        style.digits = decimalsOf(value, style, kSumFigures);
    }
    return operatorToken(isWrittenInFull(value, style) ? "=" : kAlmost);
}

} // namespace

// δ_10 = Σ n_1·N_0·L/EA + Σ n_1·α·ΔT·L − … = −2.964 mm, with the separate parts shown in between if
// there are several.
Formula givenDisplacementFormula(const ForceMethodNotes& notes, std::size_t i) {
    const GivenDisplacement& given = notes.method.given[i];
    Formula names;
    std::vector<double> parts;
    const auto add = [&](double value, bool stands, const Formula& work, const char* sign) {
        if (!stands) {
            return;
        }
        if (!parts.empty() || sign[0] != '+') {
            names.push_back(operatorToken(sign));
        }
        names.push_back(operatorToken(kSum));
        append(names, work);
        parts.push_back(value);
    };
    const bool loaded = !notes.method.givenTruss.loads.empty();
    add(given.elastic, loaded, elasticProduct(notes, unitToken(i), givenToken()), "+");
    add(given.thermal, anyThermal(notes.method), thermalProduct(i), "+");
    add(given.misfit, anyMisfit(notes.method), misfitProduct(i), "+");
    add(given.settlement, anySettlement(notes.method), settlementProduct(i), kMinus);
    Formula formula = displacementName(notes, i, 0);
    if (!parts.empty()) {
        formula.push_back(operatorToken("="));
        append(formula, names);
    }
    const NumberStyle& numbers = notes.notation.numbers;
    const int decimals = decimalsOf(given.total, numbers, kSumFigures);
    const int carried = decimalsThatAddUp(parts, given.total, decimals);
    if (parts.size() > 1) {
        addPrintedSum(formula, parts, carried, numbers);
    }
    if (parts.size() < 2 || carried > decimals) {
        formula.push_back(relationToSum(notes, given.total));
        formula.push_back(numberToken(sumText(given.total, numbers)));
    }
    addUnit(formula, given.total == 0 ? std::string{} : givenUnit(notes));
    return formula;
}

Formula unitDisplacementFormula(const ForceMethodNotes& notes, std::size_t i, std::size_t k) {
    Formula formula = displacementName(notes, i, k + 1);
    if (i != k) {
        formula.push_back(operatorToken("="));
        append(formula, displacementName(notes, k, i + 1));
    }
    append(formula, {operatorToken("="), operatorToken(kSum)});
    append(formula, elasticProduct(notes, unitToken(i), unitToken(k)));
    formula.push_back(relationToSum(notes, notes.method.unit[i][k]));
    formula.push_back(numberToken(sumText(notes.method.unit[i][k], notes.notation.numbers)));
    addUnit(formula, notes.method.unit[i][k] == 0 ? std::string{} : perRedundantUnit(notes));
    return formula;
}

// δ_10 + X_1·δ_11 + X_2·δ_12 = 0:  −2.964 + X_1·0.1234 + X_2·0.02 = 0
Formula conditionFormula(const ForceMethodNotes& notes, std::size_t i) {
    const ForceMethod& method = notes.method;
    const Token right = numberToken(formatGiven(method.allowed[i], notes.notation.numbers));
    Formula formula{displacementToken(i, 0)};
    for (std::size_t k = 0; k < method.releases.size(); ++k) {
        append(formula, {operatorToken("+"), redundantToken(k), operatorToken(kDot),
                         displacementToken(i, k + 1)});
    }
    append(formula, {operatorToken("="), right, operatorToken(":")});
    addSignedNumber(notes, method.given[i].total, formula);
    for (std::size_t k = 0; k < method.releases.size(); ++k) {
        const double factor = method.unit[i][k];
        if (factor != 0) {
            append(formula, {operatorToken(factor < 0 ? kMinus : "+"), redundantToken(k),
                             operatorToken(kDot),
                             numberToken(sumText(std::fabs(factor), notes.notation.numbers))});
        }
    }
    append(formula, {operatorToken("="), right});
    return formula;
}

// X_1 = F_BD = 2.706 kN (tension)
Formula redundantFormula(const ForceMethodNotes& notes, std::size_t i) {
    const double value = notes.method.redundants[i];
    const Found found{redundantSymbol(notes, i), value,
                      value == 0 ? FoundAs::Zero : FoundAs::AsAssumed};
    Formula formula{redundantToken(i), operatorToken("=")};
    append(formula, resultFormula(notes.notation, found, Told::AsFound));
    return formula;
}

} // namespace gusset
