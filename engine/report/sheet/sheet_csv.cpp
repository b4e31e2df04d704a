#include "core/csv.hpp"
#include "core/signs.hpp"
#include "phrases/results/sheet.hpp"
#include "report/paper/page_html.hpp"
#include "report/results/check_text.hpp"
#include "report/sheet/sheet.hpp"
#include "report/sheet/sheet_model.hpp"
#include "report/sheet/sheet_outline.hpp"
#include "report/sheet/sheet_profiles.hpp"
#include "report/sheet/sheet_results.hpp"

#include <algorithm>
#include <string_view>

namespace gusset {
namespace {

using CsvRow = std::vector<std::string>; // cells as they are written

// A number as printed, as spreadsheets of every language read it from a file.
std::string numberCell(std::string text, char decimalSign) {
    if (text.starts_with(kMinus)) {
        text.replace(0, std::string_view(kMinus).size(), "-");
    }
    std::replace(text.begin(), text.end(), decimalSign, '.');
    return text;
}

void addTable(const Writer& writer, const TextTable& table, std::vector<CsvRow>& rows) {
    if (table.rows.empty()) {
        return;
    }
    rows.push_back({""});
    rows.push_back({csvTextCell(table.caption)});
    CsvRow& head = rows.emplace_back();
    for (const RichLine& cell : table.head) {
        head.push_back(csvTextCell(plainText(cell)));
    }
    for (const auto& from : table.rows) {
        CsvRow& row = rows.emplace_back();
        for (std::size_t c = 0; c < from.size(); ++c) {
            const std::string cell = plainText(from[c].line);
            row.push_back(table.numeric[c]
                              ? numberCell(cell, writer.truss.classSettings.decimalSign)
                              : csvTextCell(cell));
        }
    }
}

void addTables(const Writer& writer, const std::vector<TextTable>& tables,
               std::vector<CsvRow>& rows) {
    for (const TextTable& table : tables) {
        addTable(writer, table, rows);
    }
}

void addHead(const Writer& writer, const SheetChoices& choices, std::vector<CsvRow>& rows) {
    rows.push_back({csvTextCell(titleOf(writer))});
    const auto add = [&](Phrase<> name, const std::string& value) {
        if (!value.empty()) {
            rows.push_back({csvTextCell(sayPlain(writer, name)), csvTextCell(value)});
        }
    };
    add(phrase::kSheetProject, choices.project);
    add(phrase::kSheetAuthor, choices.author);
    add(phrase::kSheetDate, choices.date);
}

void addResults(const Writer& writer, const SheetChoices& choices, std::vector<CsvRow>& rows) {
    const SheetLoads loads = sheetLoads(writer.truss, choices.loads);
    if (!loads.solution.solved) {
        return;
    }
    if (choices.has(SheetPart::Forces)) {
        constexpr bool kWide = true; // a file has room
        addTables(writer, sheetForces(writer, loads, kWide).tables, rows);
        addTables(writer, movingForceTables(writer), rows);
    }
    if (choices.has(SheetPart::Displacements)) {
        addTable(writer, displacementsTable(writer, loads), rows);
    }
    if (choices.has(SheetPart::Checks)) {
        addTable(writer, sheetChecks(writer, loads).table, rows);
        addTable(writer, profilesTable(writer), rows);
        for (const std::string& line : cautionLines(writer)) {
            rows.push_back({csvTextCell(line)});
        }
    }
}

std::string lineOf(const CsvRow& row, std::size_t width) {
    std::string line;
    for (std::size_t c = 0; c < width; ++c) {
        line += (c == 0 ? "" : ",") + (c < row.size() ? row[c] : std::string{});
    }
    return line;
}

} // namespace

std::string sheetCsv(const Writer& writer, const SheetChoices& choices) {
    std::vector<CsvRow> rows;
    addHead(writer, choices, rows);
    if (choices.has(SheetPart::Model)) {
        addTables(writer, modelTables(writer), rows);
    }
    if (choices.has(SheetPart::Combinations)) {
        if (choices.outline) {
            addTables(writer, outlineTables(writer, *choices.outline), rows);
        }
        addTables(writer, combinationTables(writer), rows);
    }
    addResults(writer, choices, rows);
    std::size_t width = 0; // RFC 4180: the same in all lines
    for (const CsvRow& row : rows) {
        width = std::max(width, row.size());
    }
    std::string text = csvHead(lineOf(rows.front(), width));
    for (std::size_t i = 1; i < rows.size(); ++i) {
        text += lineOf(rows[i], width) + "\r\n";
    }
    return text;
}

} // namespace gusset
