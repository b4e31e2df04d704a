#include "app/page/page_tables.hpp"

#include "app/fields/cells.hpp"
#include "canvas/scene/pick.hpp"
#include "report/results/results_text.hpp"
#include "report/text/html.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <optional>
#include <string_view>
#include <vector>

namespace gusset {
namespace {

constexpr std::string_view kPagePrefix = "page.";
constexpr std::string_view kRemove = "remove";
constexpr std::string_view kKind = "kind";

struct Heading {
    std::string caption;
    std::string one;                  // "joint": what a row is
    std::vector<std::string> columns; // as columnsOf
};

std::string withUnit(std::string_view what, std::string_view unit) {
    return unit.empty() ? std::string(what) : std::string(what) + " (" + std::string(unit) + ")";
}

Heading headingOf(const Truss& truss, CellTable table) {
    const Units& units = truss.units;
    const std::string force = symbolOf(units.force);
    const std::string length = symbolOf(units.length);
    const std::string shift = symbolOf(units.displacement);
    switch (table) {
    case CellTable::Joints:
        return {"Joints", "joint", {"joint", withUnit("x", length), withUnit("y", length)}};
    case CellTable::Members:
        return {
            "Members", "member", {"member", "section", "warming (K)", withUnit("misfit", shift)}};
    case CellTable::Supports:
        return {"Supports", "support", {"joint", "reaction at (°)", withUnit("settlement", shift)}};
    case CellTable::Loads:
        return {"Loads",
                "load",
                {"joint", withUnit("to the right, or size", force),
                 withUnit("up, or @ angle", force), "case"}};
    case CellTable::Materials:
        return {"Materials",
                "material",
                {"material", withUnit("E", symbolOf(units.stress)),
                 withUnit("strength", symbolOf(units.stress)), "density (kg/m³)", "α (10⁻⁶/K)"}};
    case CellTable::Sections:
        return {"Sections", "section", {"section", "material", "made as"}};
    }
    return {};
}

// A browser lays out this many within a second; hundreds of thousands would stop the page for a
// minute.
constexpr int kMostRows = 5000;

// What the row is called in the names of its buttons: "joint C", "load 2".
std::string rowName(const Truss& truss, CellTable table, int row, const std::string& one) {
    if (row == rowsOf(truss, table)) {
        return "a new " + one;
    }
    const std::string first = cellText(truss, {table, row, 0});
    const bool byNumber = table == CellTable::Loads || first.empty();
    return one + " " + (byNumber ? std::to_string(row + 1) : first);
}

struct PageButton {
    std::string_view does; // "cell": becomes an input; "press": acts at once
    std::string key;
    std::string text; // what it holds or sends
    std::string look;
    std::string name; // for those who hear it
};

std::string buttonHtml(const PageButton& button) {
    return "<button type=\"button\" data-" + std::string(button.does) + "=\"" +
           escapeHtml(button.key) + "\" data-text=\"" + escapeHtml(button.text) +
           "\" aria-label=\"" + escapeHtml(button.name) + "\">" + escapeHtml(button.look) +
           "</button>";
}

std::string cellHtml(const Truss& truss, const Cell& cell, const Heading& heading) {
    const std::string look = cellLook(truss, cell);
    if (!canType(truss, cell)) {
        return escapeHtml(look);
    }
    const std::string& column = heading.columns[static_cast<std::size_t>(cell.column)];
    const std::string where =
        ": " + column + " of " + rowName(truss, cell.table, cell.row, heading.one);
    if (cell.row == rowsOf(truss, cell.table)) {
        return buttonHtml({"cell", keyOf(cell), "", "Add", "Add" + where});
    }
    const std::string said = look.empty() ? "empty" : look;
    return buttonHtml({"cell", keyOf(cell), cellText(truss, cell), look, said + where});
}

std::string keyOfPress(const Heading& heading, int row, std::string_view what) {
    return heading.one + "." + std::to_string(row) + "." + std::string(what);
}

// What a row has besides its cells: whether a support is a pin or a roller, and the way out.
std::string pressesHtml(const Truss& truss, CellTable table, int row, const Heading& heading) {
    const std::string name = rowName(truss, table, row, heading.one);
    std::string html;
    if (table == CellTable::Supports) {
        const bool pin = truss.supports[static_cast<std::size_t>(row)].kind == SupportKind::Pin;
        const std::string kind = pin ? "pin" : "roller";
        html = "<td>" +
               buttonHtml({"press", keyOfPress(heading, row, kKind), pin ? "roller" : "pin", kind,
                           kind + ": kind of " + name}) +
               "</td>";
    }
    return html + "<td>" +
           buttonHtml(
               {"press", keyOfPress(heading, row, kRemove), "", "Remove", "Remove " + name}) +
           "</td>";
}

std::string rowHtml(const Truss& truss, CellTable table, int row, const Heading& heading) {
    const bool isNew = row == rowsOf(truss, table);
    std::string html = isNew ? "<tr class=\"new\">" : "<tr>";
    for (int column = 0; column < columnsOf(table); ++column) {
        const std::string cell = cellHtml(truss, {table, row, column}, heading);
        html +=
            column == 0 && !isNew ? "<th scope=\"row\">" + cell + "</th>" : "<td>" + cell + "</td>";
    }
    if (!isNew) {
        html += pressesHtml(truss, table, row, heading);
    }
    return html + "</tr>\n";
}

std::string tableOf(const Truss& truss, CellTable table) {
    const Heading heading = headingOf(truss, table);
    std::string html =
        "<table class=\"model\">\n<caption>" + heading.caption + "</caption>\n<thead><tr>";
    for (const std::string& column : heading.columns) {
        html += "<th scope=\"col\">" + escapeHtml(column) + "</th>";
    }
    html += table == CellTable::Supports ? "<th scope=\"col\">kind</th>" : "";
    html += "<td></td></tr></thead>\n<tbody>\n"; // the buttons that remove need no heading
    const int rows = rowsOf(truss, table);
    const int shown = std::min(rows, kMostRows);
    for (int row = 0; row < shown; ++row) {
        html += rowHtml(truss, table, row, heading);
    }
    html += rowHtml(truss, table, rows, heading) + "</tbody>\n</table>\n";
    if (shown < rows) {
        html += "<p>" + std::to_string(rows - shown) +
                " more rows are too many for this page: the notebook lists them, and the file "
                "holds them.</p>\n";
    }
    return html;
}

Edit removal(CellTable table, int row) {
    switch (table) {
    case CellTable::Joints:
        return Remove{thingsOf({HitKind::Joint, row, 0})};
    case CellTable::Members:
        return Remove{thingsOf({HitKind::Member, row, 0})};
    case CellTable::Supports:
        return Remove{thingsOf({HitKind::Support, row, 0})};
    case CellTable::Loads:
        return Remove{thingsOf({HitKind::Load, row, 0})};
    case CellTable::Materials:
        return RemoveMaterial{row};
    case CellTable::Sections:
        break;
    }
    return RemoveSection{row};
}

struct Press {
    CellTable table = CellTable::Joints;
    int row = 0;
    bool removes = false; // else the support changes its kind
};

constexpr std::array kTables{CellTable::Joints, CellTable::Members,   CellTable::Supports,
                             CellTable::Loads,  CellTable::Materials, CellTable::Sections};

std::optional<Press> pressOf(const Truss& truss, std::string_view key) {
    for (const CellTable table : kTables) {
        const std::string start = headingOf(truss, table).one + ".";
        if (!key.starts_with(start)) {
            continue;
        }
        const std::string rest(key.substr(start.size()));
        const int row = std::atoi(rest.c_str());
        const bool removes = rest.ends_with("." + std::string(kRemove));
        const bool turns = table == CellTable::Supports && rest.ends_with("." + std::string(kKind));
        if ((removes || turns) && row >= 0 && row < rowsOf(truss, table)) {
            return Press{table, row, removes};
        }
    }
    return std::nullopt;
}

Edit editOf(const Truss& truss, const Press& press, const std::string& text) {
    if (press.removes) {
        return removal(press.table, press.row);
    }
    Support support = truss.supports[static_cast<std::size_t>(press.row)];
    support.kind = text == "pin" ? SupportKind::Pin : SupportKind::Roller;
    return ChangeSupport{SupportId{press.row}, support};
}

} // namespace

std::string modelTablesHtml(const Truss& truss) {
    const std::string title = truss.title.empty() ? "none" : truss.title;
    std::string html =
        "<p>Title: " + buttonHtml({"cell", kTitleKey, truss.title, title, title + ": title"}) +
        "</p>\n";
    for (const CellTable table : kTables) {
        html += tableOf(truss, table);
    }
    return html;
}

bool isPageField(const std::string& key) { return key.starts_with(kPagePrefix); }

void finishPageField(const AppState& state, const FieldDone& done, Actions& actions) {
    const std::string key = done.key.substr(kPagePrefix.size());
    if (const std::optional<Press> press = pressOf(state.truss, key)) {
        actions.push_back(Commit{editOf(state.truss, *press, done.text)});
        return;
    }
    // The page itself finds the next cell.
    finishCell(state, {key, done.text, FieldEnd::Kept}, actions, TypedIn::Page);
}

} // namespace gusset
