#include "report/derivation/virtual_work_table.hpp"

#include "core/signs.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/unit_load.hpp"
#include "report/results/added_up.hpp"
#include "report/text/formula.hpp"

#include <cmath>

namespace gusset {

std::string sumText(double value, const NumberStyle& style) {
    if (value == 0) {
        return "0";
    }
    return style.form == NumberForm::Significant
               ? formatNumber(value, style)
               : withDecimals(value, decimalsOf(value, style, kSumFigures), style);
}

std::string shareText(double value, int decimals, const NumberStyle& style) {
    return value == 0 ? "0" : withDecimals(value, decimals, style);
}

void addPrintedSum(Formula& formula, const std::vector<double>& parts, int decimals,
                   const NumberStyle& style) {
    formula.push_back(operatorToken(areWrittenInFull(parts, decimals) ? "=" : kAlmost));
    std::size_t written = 0;
    for (const double part : parts) {
        if (part == 0) {
            continue;
        }
        if (written++ > 0) {
            formula.push_back(operatorToken(part < 0 ? kMinus : "+"));
        }
        formula.push_back(
            numberToken(withDecimals(written > 1 ? std::fabs(part) : part, decimals, style)));
    }
    if (written != 1) {
        if (written > 0) {
            formula.push_back(operatorToken("="));
        }
        formula.push_back(numberToken(shareText(sumOfPrinted(parts, decimals), decimals, style)));
    }
}

std::string stiffnessText(double stiffness, const NumberStyle& style) {
    return formatNumber(stiffness, {NumberForm::Significant, 6, style.decimalSign, false});
}

std::string unitForce(double value, const NumberStyle& style) {
    return formatNumber(value, {.form = NumberForm::Decimals,
                                .digits = 4,
                                .decimalSign = style.decimalSign,
                                .keepZeros = false});
}

Formula product(std::initializer_list<Token> factors) {
    Formula formula;
    for (const Token& factor : factors) {
        if (!formula.empty()) {
            formula.push_back(operatorToken(kDot));
        }
        formula.push_back(factor);
    }
    return formula;
}

Token overStiffness() { return {.kind = TokenKind::Fraction, .text = "L", .below = "EA"}; }

Formula thermalGrowth() {
    return product({variableToken("\u03B1"), variableToken("\u0394T"), variableToken("L")});
}

Token misfitGrowth() { return variableToken("\u0394L"); }

Token settledToken() { return variableToken("\u0394"); }

TextTable settlementTable(const Notation& notation, const std::vector<SettlementRow>& rows,
                          const Token& r, int decimals) {
    const PhraseBook& book = notation.book;
    const Token settle = settledToken();
    const std::string moved = symbolOf(notation.truss.units.displacement);
    Formula work = product({r, settle});
    work.insert(work.begin(), operatorToken(kMinus));
    TextTable table;
    table.caption = sayPlain(book, phrase::kSettlementCaption);
    table.head = {say(book, phrase::kColumnReaction), runsOf({r}),
                  headed(book, runsOf({settle}), moved), headed(book, runsOf(work), moved)};
    table.numeric = {false, true, true, true};
    std::vector<double> shares;
    for (const SettlementRow& row : rows) {
        const auto& restraint = notation.working.structure.restraints[row.restraint.at()];
        const Symbol symbol{
            .kind = SymbolKind::Reaction, .restraint = row.restraint, .joint = restraint.joint};
        table.rows.push_back({symbolRuns(notation, symbol), unitForce(row.unit, notation.numbers),
                              formatGiven(row.settle, notation.numbers),
                              shareText(row.contribution, decimals, notation.numbers)});
        shares.push_back(row.contribution);
    }
    table.rows.push_back({sayPlain(book, phrase::kTotal), "", "",
                          shareText(sumOfPrinted(shares, decimals), decimals, notation.numbers)});
    return table;
}

} // namespace gusset
