#include "core/csv.hpp"
#include "core/signs.hpp"
#include "phrases/results/sheet.hpp"
#include "report/paper/page_html.hpp"
#include "report/results/check_text.hpp"
#include "report/sheet/sheet.hpp"
#include "report/sheet/sheet_model.hpp"
#include "report/sheet/sheet_results.hpp"

#include <algorithm>

namespace gusset {
namespace {

constexpr const char* kLineEnd = "\r\n";

// A number as printed, as spreadsheets of every language read it from a file.
std::string numberCell(std::string text, char decimalSign) {
    if (text.starts_with(kMinus)) {
        text.replace(0, std::string_view(kMinus).size(), "-");
    }
    std::replace(text.begin(), text.end(), decimalSign, '.');
    return text;
}

std::string blockOf(const Writer& writer, const TextTable& table) {
    if (table.rows.empty()) {
        return {};
    }
    std::string text = kLineEnd + csvTextCell(table.caption) + kLineEnd;
    for (std::size_t c = 0; c < table.head.size(); ++c) {
        text += (c == 0 ? "" : ",") + csvTextCell(plainText(table.head[c]));
    }
    text += kLineEnd;
    for (const auto& row : table.rows) {
        for (std::size_t c = 0; c < row.size(); ++c) {
            const std::string cell = plainText(row[c].line);
            text += c == 0 ? "" : ",";
            text += table.numeric[c] ? numberCell(cell, writer.truss.classSettings.decimalSign)
                                     : csvTextCell(cell);
        }
        text += kLineEnd;
    }
    return text;
}

std::string blocksOf(const Writer& writer, const std::vector<TextTable>& tables) {
    std::string text;
    for (const TextTable& table : tables) {
        text += blockOf(writer, table);
    }
    return text;
}

std::string checksBlock(const Writer& writer, const SheetLoads& loads) {
    std::string text = blockOf(writer, sheetChecks(writer, loads).table);
    for (const std::string& line : cautionLines(writer)) {
        text += csvTextCell(line) + kLineEnd;
    }
    return text;
}

std::string line(const PhraseBook& book, Phrase<> name, const std::string& value) {
    return value.empty() ? value
                         : csvTextCell(sayPlain(book, name)) + "," + csvTextCell(value) + kLineEnd;
}

} // namespace

std::string sheetCsv(const Writer& writer, const SheetChoices& choices) {
    const SheetLoads loads = sheetLoads(writer.truss, choices.loads);
    const bool solved = loads.solution.solved;
    std::string text = csvHead(csvTextCell(titleOf(writer))) +
                       line(writer, phrase::kSheetProject, choices.project) +
                       line(writer, phrase::kSheetAuthor, choices.author) +
                       line(writer, phrase::kSheetDate, choices.date);
    if (choices.has(SheetPart::Model)) {
        text += blocksOf(writer, modelTables(writer));
    }
    if (choices.has(SheetPart::Combinations)) {
        text += blocksOf(writer, combinationTables(writer));
    }
    if (choices.has(SheetPart::Forces) && solved) {
        constexpr bool kWide = true; // a file has room
        text += blocksOf(writer, sheetForces(writer, loads, kWide).tables) +
                blocksOf(writer, movingForceTables(writer));
    }
    if (choices.has(SheetPart::Displacements) && solved) {
        text += blockOf(writer, displacementsTable(writer, loads));
    }
    if (choices.has(SheetPart::Checks) && solved) {
        text += checksBlock(writer, loads);
    }
    return text;
}

} // namespace gusset
