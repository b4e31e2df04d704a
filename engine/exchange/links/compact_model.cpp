#include "exchange/links/compact_model.hpp"

#include "core/number.hpp"
#include "exchange/files/written_things.hpp"
#include "exchange/links/compact_columns.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

using Kind = JsonValue::Kind;
using Cells = std::vector<std::string>; // each is JSON, or empty if absent

std::string quotedText(std::string_view value) {
    JsonText text(Layout::Compact);
    text.text(value);
    return text.take();
}

// As a list without its empty cells at the end; "" if none is left. `nothing`: what is written for
// an empty cell.
std::string listText(Cells cells, const char* nothing) {
    while (!cells.empty() && cells.back().empty()) {
        cells.pop_back();
    }
    std::string text;
    for (const std::string& cell : cells) {
        text += (text.empty() ? '[' : ',') + (cell.empty() ? nothing : cell);
    }
    return text.empty() ? text : text + ']';
}

bool saysNothing(const JsonValue& value) {
    return value.kind == Kind::Null || (value.kind == Kind::Array && value.items.empty()) ||
           (value.kind == Kind::Object && value.members.empty());
}

// The value times 10^decimals, if that is a whole number that gives the value back exactly.
std::optional<double> asWhole(double value, int decimals) {
    constexpr double kLargest = 1e15; // differences stay below 2^53
    const double scale = powerOfTen(decimals);
    const double whole = std::round(value * scale);
    return std::abs(whole) <= kLargest && whole / scale == value ? std::optional(whole)
                                                                 : std::nullopt;
}

using Numbers = std::vector<std::optional<double>>; // joints are given by their index

struct Column {
    CompactColumn is;
    Numbers numbers; // of numbers and joints, one per row
    Cells texts;     // of anything else

    [[nodiscard]] bool hasJoints() const {
        return is.coding == ColumnCoding::Joint || is.coding == ColumnCoding::EndJoint;
    }
};

// The fewest decimals that represent every number exactly; kNotDecimal if there is no such count,
// as when a small number needs more than a large one in the same column leaves room for.
int decimalsOf(const Numbers& numbers) {
    int decimals = 0;
    for (const std::optional<double>& value : numbers) {
        while (value && !asWhole(*value, decimals)) {
            if (++decimals > kMostDecimals) {
                return kNotDecimal;
            }
        }
    }
    const bool all = std::all_of(numbers.begin(), numbers.end(), [&](const auto& value) {
        return !value || asWhole(*value, decimals);
    });
    return all ? decimals : kNotDecimal;
}

Cells numberCells(const Numbers& numbers) {
    const int decimals = decimalsOf(numbers);
    Cells cells{shortestNumber(decimals)};
    double before = 0;
    for (const std::optional<double>& value : numbers) {
        if (value && decimals != kNotDecimal) {
            const double whole = asWhole(*value, decimals).value();
            cells.push_back(shortestNumber(whole - before));
            before = whole;
        } else {
            cells.push_back(value ? shortestNumber(*value) : "");
        }
    }
    const bool any = std::any_of(numbers.begin(), numbers.end(), [](auto it) { return !!it; });
    return any ? cells : Cells{};
}

Cells jointCells(const Numbers& joints) {
    Cells cells;
    double before = 0;
    for (const std::optional<double>& index : joints) {
        cells.push_back(index ? shortestNumber(*index - before) : "");
        before = index.value_or(before);
    }
    return cells;
}

Cells endCells(const Numbers& ends, const Numbers& starts) {
    Cells cells;
    for (std::size_t i = 0; i < ends.size(); ++i) {
        cells.push_back(shortestNumber(ends[i].value() - starts[i].value()));
    }
    return cells;
}

// One of the four lists: puts its things key by key (written_things) into columns. What no column
// can reproduce exactly becomes an extra.
class CompactRows {
public:
    CompactRows(const Truss& truss, const CompactList& list, std::size_t rows)
        : truss_(truss), extras_(rows) {
        for (const CompactColumn& column : list.columns) {
            columns_.push_back({column, Numbers(rows), Cells(rows)});
        }
    }

    template <class Thing>
    void add(const Thing& thing) {
        putThing(*this, thing);
        if (!thing.unknown.empty()) {
            addUnknown(thing.unknown);
        }
        ++row_;
    }

    void number(std::string_view key, double value) {
        Column* column = find(key);
        if (column && column->is.coding == ColumnCoding::Number) {
            column->numbers[row_] = value;
        } else {
            put(column, key, shortestNumber(value));
        }
    }
    void joint(std::string_view key, JointId joint) {
        Column* column = find(key);
        if (column && column->hasJoints()) {
            column->numbers[row_] = joint.index;
        } else {
            put(column, key, quotedText(truss_.joints[joint.at()].label));
        }
    }
    void text(std::string_view key, std::string_view value) {
        Column* column = find(key);
        if (!column || column->is.coding != ColumnCoding::Label ||
            value != defaultLabel(static_cast<int>(row_))) {
            put(column, key, quotedText(value));
        }
    }
    void path(std::string_view key, const std::vector<JointId>& joints) {
        Column* column = find(key);
        Cells cells;
        for (const JointId joint : joints) {
            cells.push_back(column ? std::to_string(joint.index)
                                   : quotedText(truss_.joints[joint.at()].label));
        }
        put(column, key, listText(cells, ""));
    }
    void yes(std::string_view key) { put(find(key), key, "true"); }
    template <class Write>
    void nested(std::string_view key, const UnknownKeys& unknown, const Write& write) {
        JsonText text(Layout::Compact);
        text.beginObject();
        write(text);
        text.members(unknown);
        text.endObject();
        put(find(key), key, text.take());
    }

    [[nodiscard]] std::string columns() const {
        Cells columns;
        for (const Column& column : columns_) {
            columns.push_back(listText(cellsOf(column), "null"));
        }
        return listText(columns, "0");
    }
    [[nodiscard]] std::string extras() const { return listText(extras_, "null"); }

private:
    Column* find(std::string_view key) {
        for (Column& column : columns_) {
            if (column.is.key == key) {
                return &column;
            }
        }
        return nullptr;
    }

    void put(Column* column, std::string_view key, std::string json) {
        if (column) {
            column->texts[row_] = std::move(json);
            return;
        }
        std::string& extra = extras_[row_];
        extra = extra.empty() ? "{" : extra.substr(0, extra.size() - 1) + ",";
        extra += quotedText(key) + ":" + json + "}";
    }

    [[nodiscard]] Cells cellsOf(const Column& column) const {
        switch (column.is.coding) {
        case ColumnCoding::Number:
            return numberCells(column.numbers);
        case ColumnCoding::Joint:
            return jointCells(column.numbers);
        case ColumnCoding::EndJoint:
            return endCells(column.numbers, columns_[0].numbers);
        default:
            return column.texts;
        }
    }

    void addUnknown(const UnknownKeys& unknown) {
        JsonBounds bounds;
        bounds.values = static_cast<std::size_t>(-1); // our own text needs no bound
        const Outcome<JsonValue> object = parseJson(unknown, bounds);
        for (const auto& [key, value] : object.value().members) {
            Column* column = find(key);
            if (!column || saysNothing(value) || !takes(*column, value)) {
                put(nullptr, key, jsonText(value));
            }
        }
    }

    // An unknown key with the name of a column goes into it, if the column can reproduce the value.
    bool takes(Column& column, const JsonValue& value) {
        std::optional<double>& number = column.numbers[row_];
        std::string& text = column.texts[row_];
        if (column.hasJoints()) {
            const JointId joint = jointNamed(value);
            number = joint.valid() ? std::optional<double>(joint.index) : std::nullopt;
        } else if (column.is.coding == ColumnCoding::Number) {
            const bool isPlain =
                value.kind == Kind::Number && shortestNumber(value.number) == value.text;
            number = isPlain ? std::optional(value.number) : std::nullopt;
        } else {
            text = column.is.coding == ColumnCoding::Path ? pathText(value) : jsonText(value);
        }
        return number || !text.empty();
    }

    [[nodiscard]] JointId jointNamed(const JsonValue& label) const {
        return label.kind == Kind::Text ? findJoint(truss_, label.text) : JointId{};
    }
    [[nodiscard]] std::string pathText(const JsonValue& labels) const {
        Cells indices;
        for (const JsonValue& label : labels.items) {
            const JointId joint = jointNamed(label);
            if (!joint.valid()) {
                return "";
            }
            indices.push_back(std::to_string(joint.index));
        }
        return listText(indices, "");
    }

    const Truss& truss_;
    std::vector<Column> columns_;
    Cells extras_; // one object per row
    std::size_t row_ = 0;
};

} // namespace

std::string compactModel(const Truss& truss) {
    Cells parts;
    Cells extras;
    const auto add = [&](const auto& things) {
        CompactRows rows(truss, kCompactLists[parts.size()], things.size());
        for (const auto& thing : things) {
            rows.add(thing);
        }
        parts.push_back(rows.columns());
        extras.push_back(rows.extras());
    };
    add(truss.joints);
    add(truss.members);
    add(truss.supports);
    add(truss.loads);
    const std::string rest = writeRest(truss);
    const std::string allExtras = listText(extras, "[]");
    parts.push_back(rest == "{}" && allExtras.empty() ? "" : rest);
    parts.push_back(allExtras);
    const std::string whole = listText(parts, "[]");
    return whole.empty() ? "[]" : whole;
}

} // namespace gusset
