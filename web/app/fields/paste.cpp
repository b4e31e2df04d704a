#include "app/fields/paste.hpp"

#include "app/fields/typed_text.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/messages.hpp"

#include <algorithm>
#include <utility>
#include <vector>

namespace gusset {
namespace {

std::vector<std::string> parted(const std::string& text, char sign) {
    std::vector<std::string> parts(1);
    for (const char c : text) {
        if (c == sign) {
            parts.emplace_back();
        } else if (c != '\r') {
            parts.back() += c;
        }
    }
    return parts;
}

// The two numbers of a load are its parts, to the right and up, as in other programs' tables,
// unless the row holds a size and an angle.
void joinParts(const Truss& truss, const Cell& from, std::vector<std::string>& texts) {
    const int first = column::kLoadFirst - from.column;
    const auto row = static_cast<std::size_t>(from.row);
    const bool angled =
        row < truss.loads.size() && std::holds_alternative<AngledForce>(truss.loads[row].what);
    if (from.table != CellTable::Loads || angled || first < 0 ||
        first + 1 >= static_cast<int>(texts.size())) {
        return;
    }
    std::string& across = texts[static_cast<std::size_t>(first)];
    std::string& upright = texts[static_cast<std::size_t>(first) + 1];
    const ForceUnit unit = truss.units.force;
    if (readForce(withPoints(truss, across), unit) && readForce(withPoints(truss, upright), unit)) {
        across += "; " + std::exchange(upright, "");
    }
}

// A row starts with the name, except for a new joint: that starts with its position and is named
// afterwards.
Outcome<Truss> pasteRow(Truss truss, const Cell& from, const std::string& line) {
    std::vector<std::string> texts = parted(line, '\t');
    std::vector<int> columns;
    for (int i = 0; i < static_cast<int>(texts.size()); ++i) {
        columns.push_back(i);
    }
    if (from.table == CellTable::Joints && from.column == column::kJointLabel) {
        std::rotate(columns.begin(), columns.begin() + 1, columns.end());
    }
    joinParts(truss, from, texts);
    for (const int i : columns) {
        const Cell cell{from.table, from.row, from.column + i};
        const std::string& text = texts[static_cast<std::size_t>(i)];
        if (text.empty() || !canType(truss, cell)) {
            continue;
        }
        const Outcome<Edit> edit = cellEdit(truss, cell, text);
        if (!edit) {
            return edit.issues();
        }
        Outcome<Truss> after = gusset::apply(truss, edit.value());
        if (!after) {
            return after;
        }
        truss = std::move(after).value();
    }
    return truss;
}

// The rows shown from there on.
std::vector<int> rowsFrom(const RowOrder& order, int row) {
    return {std::find(order.begin(), order.end(), row), order.end()};
}

// Three columns pasted on x, where a new joint begins, are name, x and y.
Cell firstOf(const Cell& cell, const std::vector<std::string>& lines) {
    const bool onX = cell.table == CellTable::Joints && cell.column == column::kJointX;
    const bool named = std::all_of(lines.begin(), lines.end(), [](const std::string& line) {
        return parted(line, '\t').size() > 2;
    });
    return onX && named ? Cell{cell.table, cell.row, column::kJointLabel} : cell;
}

Issue moreThanShown() { return {IssueCode::OutOfRange, {}, phrase::kMoreRowsThanShown}; }

} // namespace

bool looksLikeRows(const std::string& text) {
    return text.find_first_of("\t\n") != std::string::npos;
}

Outcome<Truss> pasteRows(Truss truss, const Cell& from, const std::string& text,
                         const RowOrder& order) {
    std::vector<std::string> lines = parted(text, '\n');
    std::erase(lines, std::string());
    std::vector<int> rows = rowsFrom(order, from.row);
    const bool hidesSome = order.size() < asDrawn(truss, from.table).size();
    Cell at = firstOf(from, lines);
    std::size_t laid = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (laid == rows.size()) {
            rows.push_back(rowsOf(truss, from.table));
        }
        at.row = rows[laid];
        if (hidesSome && from.row != order.back() && at.row >= order.back()) {
            return moreThanShown();
        }
        Outcome<Truss> after = pasteRow(truss, at, lines[i]);
        if (!after && i == 0 && lines.size() > 1) {
            continue; // headings
        }
        if (!after) {
            Issue issue = after.issues().front();
            issue.says = statement(phrase::kPastedRowFault, {{"n", i + 1}, {"fault", issue.says}});
            return issue;
        }
        truss = std::move(after).value();
        ++laid;
    }
    return truss;
}

} // namespace gusset
