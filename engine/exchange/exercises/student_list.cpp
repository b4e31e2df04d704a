#include "exchange/exercises/student_list.hpp"

#include <algorithm>
#include <array>
#include <cctype>

namespace gusset {

namespace {

constexpr std::array<std::string_view, 18> kColumnNames{
    "name",  "names",      "first name", "firstname", "given name", "last name",
    "email", "surname",    "lastname",   "student",   "students",   "e-mail",
    "id",    "student id", "id number",  "username",  "user",       "email address"};

using Line = std::vector<std::string>;

char separatorOf(std::string_view text) {
    text.remove_prefix(std::min(text.find_first_not_of("\r\n"), text.size()));
    const std::string_view first = text.substr(0, text.find_first_of("\r\n"));
    char best = ',';
    for (const char candidate : {';', '\t'}) {
        const auto count = [&](char c) { return std::count(first.begin(), first.end(), c); };
        best = count(candidate) > count(best) ? candidate : best;
    }
    return best;
}

std::string trimmed(const std::string& cell) {
    const std::size_t first = cell.find_first_not_of(" \t");
    return first == std::string::npos
               ? std::string()
               : cell.substr(first, cell.find_last_not_of(" \t") - first + 1);
}

class ListReader {
public:
    explicit ListReader(char separator) : separator_(separator) {}

    void take(char c) {
        if (c == '"' && (quoted_ || wasQuote_ || trimmed(cell_).empty())) {
            cell_ += wasQuote_ ? "\"" : ""; // a doubled one within quotes is meant
            quoted_ = !quoted_;
            wasQuote_ = !quoted_;
            return;
        }
        wasQuote_ = false;
        if (!quoted_ && c == separator_) {
            endCell();
        } else if (!quoted_ && (c == '\n' || c == '\r')) {
            endLine();
        } else {
            cell_ += c == '\n' || c == '\r' ? ' ' : c;
        }
    }
    std::vector<Line> finish() {
        endLine();
        return std::move(lines_);
    }

private:
    void endCell() {
        line_.push_back(trimmed(cell_));
        cell_.clear();
    }
    void endLine() {
        endCell();
        const auto isEmpty = [](const std::string& cell) { return cell.empty(); };
        if (!std::all_of(line_.begin(), line_.end(), isEmpty)) {
            lines_.push_back(line_);
        }
        line_.clear();
        quoted_ = false;
        wasQuote_ = false;
    }

    char separator_;
    bool quoted_ = false;
    bool wasQuote_ = false;
    std::string cell_;
    Line line_;
    std::vector<Line> lines_;
};

bool isColumnName(std::string cell) {
    for (char& c : cell) {
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    }
    return std::find(kColumnNames.begin(), kColumnNames.end(), cell) != kColumnNames.end();
}

} // namespace

std::vector<std::string> studentsOf(std::string_view text) {
    constexpr std::string_view kMark = "\xEF\xBB\xBF";
    text.remove_prefix(text.starts_with(kMark) ? kMark.size() : 0);
    ListReader reader(separatorOf(text));
    for (const char c : text) {
        reader.take(c);
    }
    std::vector<Line> lines = reader.finish();
    if (!lines.empty() && std::any_of(lines[0].begin(), lines[0].end(), isColumnName)) {
        lines.erase(lines.begin());
    }
    std::vector<std::string> students;
    for (const Line& line : lines) {
        std::string student;
        for (const std::string& cell : line) {
            student += (student.empty() || cell.empty() ? "" : " ") + cell;
        }
        students.push_back(student);
    }
    return students;
}

} // namespace gusset
