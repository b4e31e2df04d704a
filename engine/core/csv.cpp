#include "core/csv.hpp"

namespace gusset {

std::string csvHead(std::string_view columns) {
    return "\xEF\xBB\xBF" + std::string(columns) + "\r\n";
}

std::string csvTextCell(std::string_view text) {
    // OWASP ASVS 4.0.3, 5.3.10: a spreadsheet takes a cell that starts with one of these for a
    // formula.
    const bool runs = !text.empty() && std::string_view("=+-@\t\r").find(text[0]) != text.npos;
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

} // namespace gusset
