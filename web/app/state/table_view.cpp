#include "app/state/table_view.hpp"

#include <algorithm>

namespace gusset {
namespace {

bool isDigit(char c) { return c >= '0' && c <= '9'; }

// Removes the leading digits from the text and returns them without leading zeros.
std::string_view takeFigures(std::string_view& text) {
    std::size_t end = 0;
    while (end < text.size() && isDigit(text[end])) {
        ++end;
    }
    std::string_view figures = text.substr(0, end);
    text.remove_prefix(end);
    figures.remove_prefix(std::min(figures.find_first_not_of('0'), figures.size()));
    return figures;
}

// The part of a text that is compared: lower case, without blanks or the dashes that join names.
std::string bare(std::string_view text) {
    constexpr std::string_view kDashes[] = {"–", "−", "-", " ", "\u2009"};
    std::string kept;
    while (!text.empty()) {
        const auto* dash = std::find_if(std::begin(kDashes), std::end(kDashes),
                                        [&](auto sign) { return text.starts_with(sign); });
        if (dash != std::end(kDashes)) {
            text.remove_prefix(dash->size());
            continue;
        }
        const char c = text.front();
        kept += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        text.remove_prefix(1);
    }
    return kept;
}

bool isNothing(const SortKey& key) { return !key.number && key.words.empty(); }

bool comesBefore(const SortKey& one, const SortKey& other, bool falling) {
    if (isNothing(one) || isNothing(other)) {
        return !isNothing(one) && isNothing(other);
    }
    const SortKey& low = falling ? other : one;
    const SortKey& high = falling ? one : other;
    if (low.number && high.number) {
        return *low.number < *high.number;
    }
    return low.number.has_value() != high.number.has_value() ? low.number.has_value()
                                                             : namesBefore(low.words, high.words);
}

bool isWanted(const TableView& tableView, const OrderedRows& rows, int row) {
    if (rows.wanted && !rows.wanted(row)) {
        return false;
    }
    return tableView.words.empty() || row == rows.kept ||
           std::any_of(rows.named.begin(), rows.named.end(), [&](int column) {
               return holdsWords(rows.key(row, column).words, tableView.words);
           });
}

} // namespace

bool namesBefore(std::string_view one, std::string_view other) {
    while (!one.empty() && !other.empty()) {
        if (isDigit(one.front()) && isDigit(other.front())) {
            const std::string_view first = takeFigures(one);
            const std::string_view second = takeFigures(other);
            if (first.size() != second.size()) {
                return first.size() < second.size();
            }
            if (first != second) {
                return first < second;
            }
            continue;
        }
        if (one.front() != other.front()) {
            return static_cast<unsigned char>(one.front()) <
                   static_cast<unsigned char>(other.front());
        }
        one.remove_prefix(1);
        other.remove_prefix(1);
    }
    return one.size() < other.size();
}

bool holdsWords(std::string_view text, std::string_view words) {
    return bare(text).find(bare(words)) != std::string::npos;
}

std::vector<int> listed(const TableView& tableView, const OrderedRows& rows) {
    std::vector<int> shown;
    for (int row = 0; row < rows.count; ++row) {
        if (isWanted(tableView, rows, row)) {
            shown.push_back(row);
        }
    }
    if (!tableView.column) {
        return shown;
    }
    std::vector<SortKey> keys(static_cast<std::size_t>(rows.count));
    for (const int row : shown) {
        keys[static_cast<std::size_t>(row)] = rows.key(row, *tableView.column);
    }
    std::stable_sort(shown.begin(), shown.end(), [&](int one, int other) {
        return comesBefore(keys[static_cast<std::size_t>(one)],
                           keys[static_cast<std::size_t>(other)], tableView.falling);
    });
    return shown;
}

TableView withHeadingPressed(TableView tableView, int column, bool fallsFirst) {
    if (tableView.column != column) {
        tableView.column = column;
        tableView.falling = fallsFirst;
    } else if (tableView.falling == fallsFirst) {
        tableView.falling = !fallsFirst;
    } else {
        tableView.column.reset();
        tableView.falling = false;
    }
    return tableView;
}

} // namespace gusset
