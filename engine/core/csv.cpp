#include "core/csv.hpp"

#include <algorithm>
#include <array>

namespace gusset {

namespace {

// OWASP ASVS 4.0.3, 5.3.10: a spreadsheet takes a cell that starts with one of these for a formula.
constexpr std::string_view kFormulaStarts = "=+-@\t\r";
constexpr std::string_view kSpaces = " \t\r\n";

std::string_view trimmedCell(std::string_view text) {
    const std::size_t first = text.find_first_not_of(kSpaces);
    return first == text.npos ? std::string_view()
                              : text.substr(first, text.find_last_not_of(kSpaces) - first + 1);
}

char separatorIn(std::string_view table) {
    constexpr std::string_view kSeparators = "\t;,";
    table.remove_prefix(std::min(table.find_first_not_of("\r\n"), table.size()));
    std::array<std::size_t, 3> counts{};
    bool isQuoted = false;
    for (const char c : table) {
        isQuoted = c == '"' ? !isQuoted : isQuoted;
        const std::size_t at = kSeparators.find(c);
        if (!isQuoted && (c == '\n' || c == '\r')) {
            break;
        }
        if (!isQuoted && at != kSeparators.npos) {
            ++counts[at];
        }
    }
    const auto most = std::max_element(counts.begin(), counts.end());
    return *most == 0 ? ',' : kSeparators[static_cast<std::size_t>(most - counts.begin())];
}

class CsvReader {
public:
    explicit CsvReader(std::string_view table)
        : rest_(table), separator_(separatorIn(table)), lastQuote_(table.rfind('"')) {}

    std::vector<CsvRow> read() {
        rows_.emplace_back();
        while (at_ < rest_.size()) {
            const char c = rest_[at_];
            if (c == '"' && trimmedCell(cell_).empty() && at_ < lastQuote_) {
                readQuoted();
            } else if (c == separator_) {
                endCell();
                ++at_;
            } else if (c == '\n' || c == '\r') {
                endCell();
                rows_.emplace_back();
                at_ += rest_.substr(at_).starts_with("\r\n") ? 2 : 1;
            } else {
                cell_ += c;
                ++at_;
            }
        }
        endCell();
        return std::move(rows_);
    }

private:
    // From a quote to the one that closes it; of the table's last quotes, one may close nothing.
    void readQuoted() {
        for (++at_; at_ < rest_.size(); ++at_) {
            if (rest_[at_] != '"') {
                cell_ += rest_[at_];
            } else if (at_ + 1 < rest_.size() && rest_[at_ + 1] == '"') {
                cell_ += rest_[at_++];
            } else {
                ++at_;
                return;
            }
        }
    }
    void endCell() {
        std::string_view cell = trimmedCell(cell_);
        if (cell.size() > 1 && cell[0] == '\'' && kFormulaStarts.find(cell[1]) != cell.npos) {
            cell.remove_prefix(1);
        }
        rows_.back().emplace_back(cell);
        cell_.clear();
    }

    std::string_view rest_;
    char separator_;
    std::size_t lastQuote_;
    std::size_t at_ = 0;
    std::string cell_;
    std::vector<CsvRow> rows_;
};

} // namespace

std::string csvHead(std::string_view columns) {
    return "\xEF\xBB\xBF" + std::string(columns) + "\r\n";
}

std::string csvTextCell(std::string_view text) {
    const bool runs = !text.empty() && kFormulaStarts.find(text[0]) != text.npos;
    std::string cell = runs ? "'" : "";
    cell += text;
    if (cell.find_first_of(",\"\r\n") == std::string::npos) {
        return cell;
    }
    std::string quoted = "\"";
    for (const char c : cell) {
        quoted += c == '"' ? "\"\"" : std::string(1, c);
    }
    return quoted + '"';
}

std::vector<CsvRow> csvRows(std::string_view table) {
    constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
    table.remove_prefix(table.starts_with(kByteOrderMark) ? kByteOrderMark.size() : 0);
    return CsvReader(table).read();
}

bool isBlankRow(const CsvRow& row) {
    return std::all_of(row.begin(), row.end(),
                       [](const std::string& cell) { return cell.empty(); });
}

} // namespace gusset
