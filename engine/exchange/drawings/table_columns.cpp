#include "exchange/drawings/table_columns.hpp"

#include "core/index.hpp"
#include "model/quantity/quantity_reader.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace gusset {

namespace {

// "A" and "B" are joints, "a" and "b" headings.
constexpr std::array<std::string_view, 4> kLabelHeads{"joint", "label", "id", "name"};
constexpr std::array<std::string_view, 3> kFirstHeads{"from", "start", "first"};
constexpr std::array<std::string_view, 3> kSecondHeads{"to", "end", "second"};

// "x (mm)", "x [mm]", "x / mm", "x in mm", "x, mm"
struct Heading {
    std::string name;
    std::string unit;
};

std::string trimmedHead(const std::string& text) {
    constexpr const char* kAround = " \t()[]/,:";
    const std::size_t first = text.find_first_not_of(kAround);
    return first == text.npos ? std::string{}
                              : text.substr(first, text.find_last_not_of(kAround) - first + 1);
}

Heading headingOf(const std::string& cell) {
    const std::string text = lowered(cell);
    std::size_t end = text.find_first_of("([/,");
    const std::size_t in = text.find(" in ");
    const std::size_t unitStart = end != text.npos  ? end + 1
                                  : in != text.npos ? in + 4
                                                    : text.size();
    end = std::min(end, in);
    return {trimmedHead(text.substr(0, end)), trimmedHead(text.substr(unitStart))};
}

template <class List>
bool isHead(const List& list, const std::string& name) {
    return std::find(list.begin(), list.end(), name) != list.end();
}

} // namespace

TableColumns columnsOf(const CsvRow& row) {
    TableColumns columns;
    const auto take = [](int& column, std::size_t index) {
        column = column < 0 ? toInt(index) : column;
    };
    for (std::size_t i = 0; i < row.size(); ++i) {
        const Heading head = headingOf(row[i]);
        if (head.name == "x") {
            take(columns.x, i);
            columns.unitOfX = head.unit;
        } else if (head.name == "y") {
            take(columns.y, i);
            columns.unitOfY = head.unit;
        } else if (isHead(kLabelHeads, head.name)) {
            take(columns.label, i);
        } else if (row[i] == "a" || isHead(kFirstHeads, head.name)) {
            take(columns.a, i);
        } else if (row[i] == "b" || isHead(kSecondHeads, head.name)) {
            take(columns.b, i);
        } else if (head.name == "member") {
            take(columns.both, i);
        }
    }
    if (columns.x >= 0 && columns.y >= 0) {
        columns.kind = TableKind::Joints;
        columns.both = -1;
    } else if (columns.a >= 0 && columns.b >= 0) {
        columns.kind = TableKind::Members;
        columns.both = -1;
    } else if (columns.both >= 0) {
        columns.kind = TableKind::Members;
    }
    return columns;
}

} // namespace gusset
