#include "app/page/page_tables.hpp"

#include "app/fields/cells.hpp"
#include "app/fields/field_key.hpp"
#include "app/fields/load_text.hpp"
#include "app/page/page_html.hpp"
#include "phrases/columns.hpp"
#include "phrases/frame.hpp"
#include "phrases/model.hpp"
#include "phrases/page_text.hpp"
#include "phrases/picked.hpp"
#include "report/text/html.hpp"

#include <algorithm>
#include <string_view>

namespace gusset {
namespace {

// A browser lays out this many within a second; hundreds of thousands would block the page for a
// minute.
constexpr int kMostRows = 5000;

std::string cellHtml(const Writer& writer, const Cell& cell) {
    const Truss& truss = writer.truss;
    const bool placeOfSeveral =
        cell.table == CellTable::Loads && cell.column == 0 && !canType(truss, cell);
    const std::string look =
        placeOfSeveral ? placeOfLoad(writer, truss.loads[static_cast<std::size_t>(cell.row)])
                       : cellLook(truss, cell);
    if (!canType(truss, cell)) {
        return escapeHtml(look);
    }
    const std::string key = keyOf(PageCell{cell});
    const std::string name = cellNameWithUnit(writer, cell);
    if (cell.row == rowsOf(truss, cell.table)) {
        return buttonHtml({"cell", key, "", sayPlain(writer, phrase::kAdd),
                           sayPlain(writer, phrase::kAddThat, {{"what", name}})});
    }
    const std::string heard = look.empty() ? sayPlain(writer, phrase::kEmptyCell) : look;
    return buttonHtml(
        {"cell", key, cellText(truss, cell), look, valueOf(writer.book, heard, name)});
}

bool isPin(const Writer& writer, int row) {
    return writer.truss.supports[static_cast<std::size_t>(row)].kind == SupportKind::Pin;
}

std::string kindOf(const Writer& writer, int row) {
    return sayPlain(writer, isPin(writer, row) ? phrase::kKindPin : phrase::kKindRoller);
}

std::string kindHtml(const Writer& writer, int row) {
    const Cell cell{CellTable::Supports, row, column::kSupportKind};
    const std::string kind = kindOf(writer, row);
    return buttonHtml({"press", keyOf(PageRow{cell.table, row, RowPress::ChangeKind}),
                       isPin(writer, row) ? "roller" : "pin", kind,
                       valueOf(writer.book, kind, cellName(writer, cell))});
}

std::string removeHtml(const Writer& writer, CellTable table, int row) {
    return buttonHtml(
        {"press", keyOf(PageRow{table, row, RowPress::Remove}), "",
         sayPlain(writer, phrase::kRemove),
         sayPlain(writer, phrase::kRemoveThat, {{"what", rowName(writer, table, row)}})});
}

// The same without anything to press, for reading only.
std::string plainRowHtml(const Writer& writer, CellTable table, int row) {
    std::string html = "<tr>";
    for (int column = 0; column < columnsOf(table); ++column) {
        const Cell cell{table, row, column};
        if (!columnOf(cell).more.isOnPage) {
            continue;
        }
        const bool kind = table == CellTable::Supports && column == column::kSupportKind;
        const std::string look =
            escapeHtml(kind ? kindOf(writer, row) : cellLook(writer.truss, cell));
        html += column == 0 ? inRowHead(look) : inCell(look);
    }
    return html + "</tr>\n";
}

std::string rowHtml(const Writer& writer, CellTable table, int row) {
    const bool isNew = row == rowsOf(writer.truss, table);
    std::string html = isNew ? "<tr class=\"new\">" : "<tr>";
    for (int column = 0; column < columnsOf(table); ++column) {
        const Cell cell{table, row, column};
        const bool presses = table == CellTable::Supports && column == column::kSupportKind;
        if (!columnOf(cell).more.isOnPage || (presses && isNew)) {
            continue;
        }
        const std::string inner = presses ? kindHtml(writer, row) : cellHtml(writer, cell);
        html += column == 0 && !isNew ? inRowHead(inner) : inCell(inner);
    }
    if (!isNew) {
        html += inCell(removeHtml(writer, table, row));
    }
    return html + "</tr>\n";
}

std::string columnHeading(const Writer& writer, const CellColumn& column) {
    const std::string unit = symbolOf(writer.truss.units, column.unit);
    const RichLine name = say(writer, column.more.onPage.value_or(column.name));
    return unit.empty() ? plainText(name)
                        : sayPlain(writer, phrase::kNameInUnit, {{"name", name}, {"unit", unit}});
}

std::string tableOf(const Writer& writer, CellTable table, PageCells cells) {
    const ModelTable& of = modelTable(table);
    std::vector<std::string> headings;
    for (const CellColumn& column : of.columns) {
        if (column.more.isOnPage) {
            headings.push_back(columnHeading(writer, column));
        }
    }
    const bool typed = cells == PageCells::Typed;
    if (typed) {
        headings.push_back(sayPlain(writer, phrase::kRemoveHeading));
    }
    std::string html = tableBegin(sayPlain(writer, of.name), headings);
    const int rows = rowsOf(writer.truss, table);
    const int shown = std::min(rows, kMostRows);
    for (int row = 0; row < shown; ++row) {
        html += typed ? rowHtml(writer, table, row) : plainRowHtml(writer, table, row);
    }
    html += (typed ? rowHtml(writer, table, rows) : "") + kTableEnd;
    if (shown < rows) {
        html += "<p>" + escapeHtml(sayPlain(writer, phrase::kMoreRows, {{"n", rows - shown}})) +
                "</p>\n";
    }
    return html;
}

std::string titleHtml(const Writer& writer) {
    const std::string& title = writer.truss.title;
    const std::string look = title.empty() ? sayPlain(writer, phrase::kNone) : title;
    return sentenceHtml(
        writer.book, phrase::kTitleIs,
        typedHtml(writer.book, TitleField::Page, title, look, sayPlain(writer, phrase::kTitle)));
}

} // namespace

std::string modelTablesHtml(const Writer& writer, PageCells cells) {
    std::string html = cells == PageCells::Typed ? titleHtml(writer) : "";
    for (std::size_t table = 0; table < kCellTables; ++table) {
        html += tableOf(writer, static_cast<CellTable>(table), cells);
    }
    return html;
}

} // namespace gusset
