#include "report/results/table.hpp"

#include "phrases/results/lists.hpp"
#include "report/results/results_text.hpp"
#include "report/text/html.hpp"
#include "report/text/math_ml.hpp"

#include <algorithm>
#include <string_view>
#include <utility>

namespace gusset {
namespace {

// How many characters wide a text is in a fixed-width table.
std::size_t width(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
    }));
}

std::string padded(const std::string& text, std::size_t columns, bool right) {
    const std::string space(columns - std::min(columns, width(text)), ' ');
    return right ? space + text : text + space;
}

} // namespace

RichLine headed(const PhraseBook& book, RichLine name, const std::string& unit) {
    return unit.empty() ? std::move(name)
                        : say(book, phrase::kColumnWithUnit, {{"name", name}, {"unit", unit}});
}

std::string tableText(const TextTable& table) {
    std::vector<std::vector<std::string>> lines(1);
    for (const RichLine& cell : table.head) {
        lines.front().push_back(plainText(cell));
    }
    for (const auto& row : table.rows) {
        lines.emplace_back();
        for (const Words& cell : row) {
            lines.back().push_back(plainText(cell.line));
        }
    }
    std::vector<std::size_t> columns;
    for (std::size_t c = 0; c < table.head.size(); ++c) {
        std::size_t widest = 0;
        for (const auto& cells : lines) {
            widest = std::max(widest, width(cells[c]));
        }
        columns.push_back(widest);
    }
    const auto line = [&](const std::vector<std::string>& cells) {
        std::string text;
        for (std::size_t c = 0; c < cells.size(); ++c) {
            text += (c == 0 ? "  " : "   ") + padded(cells[c], columns[c], table.numeric[c]);
        }
        return text.substr(0, text.find_last_not_of(' ') + 1) + '\n';
    };
    std::string text = table.caption + '\n';
    for (const auto& cells : lines) {
        text += line(cells);
    }
    return text;
}

std::string tableHtml(const TextTable& table) {
    std::string html = "<table>\n<caption>" + escapeHtml(table.caption) + "</caption>\n<thead><tr>";
    for (std::size_t c = 0; c < table.head.size(); ++c) {
        html += (table.numeric[c] ? "<th scope=\"col\">" : "<th scope=\"col\" class=\"words\">") +
                htmlOf(table.head[c]) + "</th>";
    }
    html += "</tr></thead>\n<tbody>\n";
    for (const auto& row : table.rows) {
        const std::string name = htmlOf(row.front().line);
        html += name.empty() ? "<tr><td></td>" : "<tr><th scope=\"row\">" + name + "</th>";
        for (std::size_t c = 1; c < row.size(); ++c) {
            html += (table.numeric[c] ? "<td>" : "<td class=\"words\">") + htmlOf(row[c].line) +
                    "</td>";
        }
        html += "</tr>\n";
    }
    return html + "</tbody>\n</table>\n";
}

} // namespace gusset
