#include "app/page/page_tables.hpp"

#include "app/fields/cells.hpp"
#include "app/fields/field_key.hpp"
#include "report/text/html.hpp"

#include <algorithm>
#include <string_view>

namespace gusset {
namespace {

// A browser lays out this many within a second; hundreds of thousands would block the page for a
// minute.
constexpr int kMostRows = 5000;

struct PageButton {
    std::string_view does; // "cell": becomes an input; "press": acts at once
    std::string key;
    std::string text; // what it holds or sends
    std::string look;
    std::string name; // for screen readers
};

std::string buttonHtml(const PageButton& button) {
    return "<button type=\"button\" data-" + std::string(button.does) + "=\"" +
           escapeHtml(button.key) + "\" data-text=\"" + escapeHtml(button.text) +
           "\" aria-label=\"" + escapeHtml(button.name) + "\">" + escapeHtml(button.look) +
           "</button>";
}

std::string cellHtml(const Truss& truss, const Cell& cell) {
    const std::string look = cellLook(truss, cell);
    if (!canType(truss, cell)) {
        return escapeHtml(look);
    }
    const std::string key = keyOf(PageCell{cell});
    const std::string name = ": " + cellNameWithUnit(truss, cell);
    if (cell.row == rowsOf(truss, cell.table)) {
        return buttonHtml({"cell", key, "", "Add", "Add" + name});
    }
    return buttonHtml(
        {"cell", key, cellText(truss, cell), look, (look.empty() ? "empty" : look) + name});
}

std::string kindHtml(const Truss& truss, int row) {
    const Cell cell{CellTable::Supports, row, column::kSupportKind};
    const std::string kind = cellText(truss, cell);
    return buttonHtml({"press", keyOf(PageRow{cell.table, row, RowPress::ChangeKind}),
                       kind == "pin" ? "roller" : "pin", kind,
                       kind + ": " + cellName(truss, cell)});
}

std::string removeHtml(const Truss& truss, CellTable table, int row) {
    return buttonHtml({"press", keyOf(PageRow{table, row, RowPress::Remove}), "", "Remove",
                       "Remove " + rowName(truss, table, row)});
}

std::string rowHtml(const Truss& truss, CellTable table, int row) {
    const bool isNew = row == rowsOf(truss, table);
    std::string html = isNew ? "<tr class=\"new\">" : "<tr>";
    for (int column = 0; column < columnsOf(table); ++column) {
        const Cell cell{table, row, column};
        const bool presses = table == CellTable::Supports && column == column::kSupportKind;
        if (!columnOf(cell).more.isOnPage || (presses && isNew)) {
            continue;
        }
        const std::string inner = presses ? kindHtml(truss, row) : cellHtml(truss, cell);
        html += column == 0 && !isNew ? "<th scope=\"row\">" + inner + "</th>"
                                      : "<td>" + inner + "</td>";
    }
    if (!isNew) {
        html += "<td>" + removeHtml(truss, table, row) + "</td>";
    }
    return html + "</tr>\n";
}

std::string headingHtml(const Truss& truss, const CellColumn& column) {
    const std::string unit = symbolOf(truss.units, column.unit);
    return "<th scope=\"col\">" +
           escapeHtml(std::string(column.more.onPage.empty() ? column.name : column.more.onPage) +
                      (unit.empty() ? "" : " (" + unit + ")")) +
           "</th>";
}

std::string tableOf(const Truss& truss, CellTable table) {
    const ModelTable& of = modelTable(table);
    std::string html =
        "<table class=\"model\">\n<caption>" + std::string(of.plural) + "</caption>\n<thead><tr>";
    for (const CellColumn& column : of.columns) {
        html += column.more.isOnPage ? headingHtml(truss, column) : "";
    }
    html += "<td></td></tr></thead>\n<tbody>\n"; // the column of remove buttons needs no heading
    const int rows = rowsOf(truss, table);
    const int shown = std::min(rows, kMostRows);
    for (int row = 0; row < shown; ++row) {
        html += rowHtml(truss, table, row);
    }
    html += rowHtml(truss, table, rows) + "</tbody>\n</table>\n";
    if (shown < rows) {
        html += "<p>" + std::to_string(rows - shown) +
                " more rows are too many for this page: the notebook lists them, and the file "
                "holds them.</p>\n";
    }
    return html;
}

} // namespace

std::string modelTablesHtml(const Truss& truss) {
    const std::string title = truss.title.empty() ? "none" : truss.title;
    std::string html =
        "<p>Title: " +
        buttonHtml({"cell", keyOf(TitleField::Page), truss.title, title, title + ": title"}) +
        "</p>\n";
    for (std::size_t table = 0; table < kCellTables; ++table) {
        html += tableOf(truss, static_cast<CellTable>(table));
    }
    return html;
}

} // namespace gusset
