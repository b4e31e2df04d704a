#include "app/page/page_tables.hpp"

#include "app/fields/cells.hpp"
#include "app/fields/field_key.hpp"
#include "app/fields/load_text.hpp"
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

// "12: x (m) of joint C".
std::string valueOf(const PhraseBook& book, const std::string& value, const std::string& what) {
    return sayPlain(book, phrase::kValueOf, {{"value", value}, {"what", what}});
}

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
    return buttonHtml({"cell", key, cellText(truss, cell), look, valueOf(writer, heard, name)});
}

std::string kindHtml(const Writer& writer, int row) {
    const Cell cell{CellTable::Supports, row, column::kSupportKind};
    const bool pin = writer.truss.supports[static_cast<std::size_t>(row)].kind == SupportKind::Pin;
    const std::string kind = sayPlain(writer, pin ? phrase::kKindPin : phrase::kKindRoller);
    return buttonHtml({"press", keyOf(PageRow{cell.table, row, RowPress::ChangeKind}),
                       pin ? "roller" : "pin", kind,
                       valueOf(writer, kind, cellName(writer, cell))});
}

std::string removeHtml(const Writer& writer, CellTable table, int row) {
    return buttonHtml(
        {"press", keyOf(PageRow{table, row, RowPress::Remove}), "",
         sayPlain(writer, phrase::kRemove),
         sayPlain(writer, phrase::kRemoveThat, {{"what", rowName(writer, table, row)}})});
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
        html += column == 0 && !isNew ? "<th scope=\"row\">" + inner + "</th>"
                                      : "<td>" + inner + "</td>";
    }
    if (!isNew) {
        html += "<td>" + removeHtml(writer, table, row) + "</td>";
    }
    return html + "</tr>\n";
}

std::string headingHtml(const Writer& writer, const CellColumn& column) {
    const std::string unit = symbolOf(writer.truss.units, column.unit);
    const RichLine name = say(writer, column.more.onPage.value_or(column.name));
    return "<th scope=\"col\">" +
           escapeHtml(unit.empty() ? plainText(name)
                                   : sayPlain(writer, phrase::kNameInUnit,
                                              {{"name", name}, {"unit", unit}})) +
           "</th>";
}

std::string tableOf(const Writer& writer, CellTable table) {
    const ModelTable& of = modelTable(table);
    std::string html = "<table class=\"model\">\n<caption>" +
                       escapeHtml(sayPlain(writer, of.name)) + "</caption>\n<thead><tr>";
    for (const CellColumn& column : of.columns) {
        html += column.more.isOnPage ? headingHtml(writer, column) : "";
    }
    html += "<td></td></tr></thead>\n<tbody>\n"; // the column of remove buttons needs no heading
    const int rows = rowsOf(writer.truss, table);
    const int shown = std::min(rows, kMostRows);
    for (int row = 0; row < shown; ++row) {
        html += rowHtml(writer, table, row);
    }
    html += rowHtml(writer, table, rows) + "</tbody>\n</table>\n";
    if (shown < rows) {
        html += "<p>" + escapeHtml(sayPlain(writer, phrase::kMoreRows, {{"n", rows - shown}})) +
                "</p>\n";
    }
    return html;
}

std::string titleHtml(const Writer& writer) {
    const std::string& title = writer.truss.title;
    const std::string look = title.empty() ? sayPlain(writer, phrase::kNone) : title;
    const std::string button =
        buttonHtml({"cell", keyOf(TitleField::Page), title, look,
                    valueOf(writer, look, sayPlain(writer, phrase::kTitle))});
    std::string html;
    forEachPiece(
        sentenceIn(writer.book, phrase::kTitleIs.english),
        [&](std::string_view words) { html += escapeHtml(words); },
        [&](std::string_view) { html += button; });
    return "<p>" + html + "</p>\n";
}

} // namespace

std::string modelTablesHtml(const Writer& writer) {
    std::string html = titleHtml(writer);
    for (std::size_t table = 0; table < kCellTables; ++table) {
        html += tableOf(writer, static_cast<CellTable>(table));
    }
    return html;
}

} // namespace gusset
