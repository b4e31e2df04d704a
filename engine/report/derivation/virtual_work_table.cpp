#include "report/derivation/virtual_work_table.hpp"

#include "core/signs.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/unit_load.hpp"
#include "report/text/formula.hpp"

namespace gusset {

std::string contribution(double value, const NumberStyle& style) {
    constexpr int kFigures = 4; // slide-rule accuracy
    if (value == 0) {
        return "0";
    }
    return formatNumber(
        value,
        {.form = NumberForm::Significant, .digits = kFigures, .decimalSign = style.decimalSign});
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

TextTable settlementTable(const Notation& notation, const std::vector<SettlementRow>& rows,
                          const Token& r, const Token& settle) {
    const PhraseBook& book = notation.book;
    const std::string moved = symbolOf(notation.truss.units.displacement);
    Formula work = product({r, settle});
    work.insert(work.begin(), operatorToken(kMinus));
    TextTable table;
    table.caption = sayPlain(book, phrase::kSettlementCaption);
    table.head = {say(book, phrase::kColumnReaction), runsOf({r}),
                  headed(book, runsOf({settle}), moved), headed(book, runsOf(work), moved)};
    table.numeric = {false, true, true, true};
    double total = 0;
    for (const SettlementRow& row : rows) {
        const auto& restraint = notation.working.structure.restraints[row.restraint.at()];
        const Symbol symbol{
            .kind = SymbolKind::Reaction, .restraint = row.restraint, .joint = restraint.joint};
        table.rows.push_back({plainText(symbolRuns(notation, symbol)),
                              unitForce(row.unit, notation.numbers),
                              formatGiven(row.settle, notation.numbers),
                              contribution(row.contribution, notation.numbers)});
        total += row.contribution;
    }
    table.rows.push_back(
        {sayPlain(book, phrase::kTotal), "", "", contribution(total, notation.numbers)});
    return table;
}

} // namespace gusset
