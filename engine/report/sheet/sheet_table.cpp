#include "report/sheet/sheet_table.hpp"

#include "report/results/results_text.hpp"
#include "report/text/html.hpp"
#include "report/text/math_ml.hpp"

#include <algorithm>
#include <vector>

namespace gusset {
namespace {

constexpr std::size_t kRowsBeside = 24;   // a taller table stands alone
constexpr std::size_t kColumnsBeside = 6; // so does a wider one
constexpr std::size_t kLongestTail = 12;  // characters from the decimal sign on: sheet.css

// The decimal sign and what is behind it; for no number, nothing.
std::string tailOf(const std::string& text, char decimalSign) {
    const std::size_t sign = text.find(decimalSign);
    const bool isNumber = text.find_first_of("0123456789") != text.npos;
    return sign == text.npos || !isNumber ? std::string{} : text.substr(sign);
}

// Per column, how many characters its longest tail has.
std::vector<std::size_t> tailsOf(const TextTable& table, char decimalSign) {
    std::vector<std::size_t> tails(table.head.size());
    for (const auto& row : table.rows) {
        for (std::size_t c = 0; c < row.size(); ++c) {
            const std::string text = plainText(row[c].line);
            if (table.numeric[c]) {
                tails[c] = std::max(tails[c], tailOf(text, decimalSign).size());
            }
        }
    }
    return tails;
}

std::string numberHtml(const std::string& text, std::size_t tail, char decimalSign) {
    if (tail == 0 || tail > kLongestTail) {
        return "<td>" + escapeHtml(text) + "</td>";
    }
    const std::string behind = tailOf(text, decimalSign);
    return "<td>" + escapeHtml(text.substr(0, text.size() - behind.size())) +
           "<span class=\"tail t" + std::to_string(tail) + "\">" + escapeHtml(behind) +
           "</span></td>";
}

std::string rowHtml(const TextTable& table, const std::vector<Words>& row,
                    const std::vector<std::size_t>& tails, char decimalSign) {
    std::string html = "<tr><th scope=\"row\">" + htmlOf(row.front().line) + "</th>";
    for (std::size_t c = 1; c < row.size(); ++c) {
        html += table.numeric[c] ? numberHtml(plainText(row[c].line), tails[c], decimalSign)
                                 : "<td class=\"words\">" + htmlOf(row[c].line) + "</td>";
    }
    return html + "</tr>\n";
}

std::string headHtml(const TextTable& table) {
    std::string html = "<thead>\n<tr><th scope=\"colgroup\" class=\"caption\" colspan=\"" +
                       std::to_string(table.head.size()) + "\">" + escapeHtml(table.caption) +
                       "</th></tr>\n<tr>";
    for (std::size_t c = 0; c < table.head.size(); ++c) {
        html += (table.numeric[c] ? "<th scope=\"col\">" : "<th scope=\"col\" class=\"words\">") +
                htmlOf(table.head[c]) + "</th>";
    }
    return html + "</tr>\n</thead>\n<tbody>\n";
}

} // namespace

std::string sheetTableHtml(const Writer& writer, const TextTable& table, std::size_t narrow) {
    const char decimalSign = writer.truss.classSettings.decimalSign;
    const std::vector<std::size_t> tails = tailsOf(table, decimalSign);
    const bool beside = table.head.size() <= narrow;
    const std::size_t most = beside ? kRowsBeside : table.rows.size();
    std::string html;
    for (std::size_t from = 0; from < table.rows.size(); from += most) {
        html += (beside ? "<table class=\"beside\">\n" : "<table>\n") + headHtml(table);
        for (std::size_t i = from; i < std::min(table.rows.size(), from + most); ++i) {
            html += rowHtml(table, table.rows[i], tails, decimalSign);
        }
        html += "</tbody>\n</table>\n";
    }
    return html;
}

std::string sheetTablesHtml(const Writer& writer, const std::vector<TextTable>& tables,
                            std::size_t narrow) {
    std::string html;
    for (const TextTable& table : tables) {
        html += sheetTableHtml(writer, table, narrow);
    }
    return html;
}

std::string sheetHeading(const PhraseBook& book, Phrase<> phrase) {
    return "<h2>" + escapeHtml(sayPlain(book, phrase)) + "</h2>\n";
}

std::string sheetNumber(const Truss& truss, double value) {
    return formatNumber(value, typedStyleOf(truss));
}

std::string derivedNumber(const Truss& truss, double value) {
    constexpr int kFigures = 4;
    NumberStyle style = typedStyleOf(truss);
    style.digits = kFigures;
    return formatNumber(value, style);
}

} // namespace gusset
