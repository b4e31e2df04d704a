#include "exchange/compact_model.hpp"

#include "core/number.hpp"
#include "exchange/compact_columns.hpp"
#include "exchange/json_text.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <unordered_map>

namespace gusset {

namespace {

using Kind = JsonValue::Kind;
using Rows = std::vector<JsonValue>;

JsonValue list() {
    JsonValue value;
    value.kind = Kind::Array;
    return value;
}

JsonValue numeral(double number) {
    JsonValue value;
    value.kind = Kind::Number;
    value.number = number;
    value.text = shortestNumber(number);
    return value;
}

// The value times 10^decimals, when it is a whole number from which the value comes back exactly.
std::optional<double> asWhole(double value, int decimals) {
    constexpr double kLargest = 1e15; // differences stay below 2^53
    const double scale = powerOfTen(decimals);
    const double whole = std::round(value * scale);
    return std::abs(whole) <= kLargest && whole / scale == value ? std::optional(whole)
                                                                 : std::nullopt;
}

class Compactor {
public:
    std::string compact(const JsonValue& model) {
        indexLabels(model);
        JsonValue top = list();
        JsonValue extras = list();
        for (const CompactList& it : kCompactLists) {
            const JsonValue* found = model.find(it.key);
            top.items.push_back(found ? columnsOf(found->items, it) : list());
            extras.items.push_back(found ? extrasOf(found->items, it) : list());
        }
        top.items.push_back(restOf(model));
        top.items.push_back(std::move(extras));
        trim(top.items.back());
        trim(top);
        return jsonText(top);
    }

private:
    static bool saysNothing(const JsonValue& value) {
        return value.kind == Kind::Null || (value.kind == Kind::Array && value.items.empty()) ||
               (value.kind == Kind::Object && value.members.empty());
    }

    // Drops what says nothing at the end of a list.
    static void trim(JsonValue& value) {
        while (!value.items.empty() && saysNothing(value.items.back())) {
            value.items.pop_back();
        }
    }

    void indexLabels(const JsonValue& model) {
        const Rows& joints = model.find("joints")->items;
        for (std::size_t i = 0; i < joints.size(); ++i) {
            indices_.emplace(joints[i].find("id")->text, static_cast<int>(i));
        }
    }

    [[nodiscard]] bool isJoint(const JsonValue& value) const {
        return value.kind == Kind::Text && indices_.contains(value.text);
    }

    // Whether the column gives back exactly this value; else it goes to the extras.
    [[nodiscard]] bool holds(const CompactColumn& column, const JsonValue& value) const {
        if (saysNothing(value)) {
            return false; // a column's end would be trimmed with it
        }
        switch (column.coding) {
        case ColumnCoding::Number:
            return value.kind == Kind::Number && shortestNumber(value.number) == value.text;
        case ColumnCoding::Joint:
        case ColumnCoding::EndJoint:
            return isJoint(value);
        case ColumnCoding::Path:
            if (value.kind != Kind::Array) {
                return false;
            }
            for (const JsonValue& item : value.items) {
                if (!isJoint(item)) {
                    return false;
                }
            }
            return true;
        case ColumnCoding::Label:
            return value.kind == Kind::Text;
        case ColumnCoding::Plain:
            return true;
        }
        return false;
    }

    [[nodiscard]] const JsonValue* held(const JsonValue& row, const CompactColumn& column) const {
        const JsonValue* value = row.find(column.key);
        return value && holds(column, *value) ? value : nullptr;
    }

    [[nodiscard]] int indexOf(const JsonValue& label) const { return indices_.at(label.text); }

    JsonValue columnsOf(const Rows& rows, const CompactList& spec) {
        JsonValue columns = list();
        for (const CompactColumn& column : spec.columns) {
            JsonValue cells = list();
            switch (column.coding) {
            case ColumnCoding::Number:
                cells = numberColumn(rows, column);
                break;
            case ColumnCoding::Joint:
                cells = jointColumn(rows, column);
                break;
            case ColumnCoding::EndJoint:
                cells = endColumn(rows, column, spec.columns[0]);
                break;
            default:
                cells = plainColumn(rows, column);
                break;
            }
            trim(cells);
            columns.items.push_back(std::move(cells));
        }
        trim(columns);
        for (JsonValue& cells : columns.items) {
            if (cells.items.empty()) {
                cells = numeral(0);
            }
        }
        return columns;
    }

    // The fewest decimals that tell every number exactly; none if those that a small number needs
    // are more than a large one beside it leaves room for.
    [[nodiscard]] int decimalsOf(const Rows& rows, const CompactColumn& column) const {
        int decimals = 0;
        for (const JsonValue& row : rows) {
            const JsonValue* value = held(row, column);
            while (value && !asWhole(value->number, decimals)) {
                if (++decimals > kMostDecimals) {
                    return kNotDecimal;
                }
            }
        }
        const bool all = std::all_of(rows.begin(), rows.end(), [&](const JsonValue& row) {
            const JsonValue* value = held(row, column);
            return !value || asWhole(value->number, decimals);
        });
        return all ? decimals : kNotDecimal;
    }

    JsonValue numberColumn(const Rows& rows, const CompactColumn& column) const {
        JsonValue cells = list();
        const int decimals = decimalsOf(rows, column);
        double before = 0;
        bool isEmpty = true;
        for (const JsonValue& row : rows) {
            const JsonValue* value = held(row, column);
            if (!value) {
                cells.items.emplace_back();
            } else if (decimals == kNotDecimal) {
                cells.items.push_back(*value);
            } else {
                const double whole = asWhole(value->number, decimals).value();
                cells.items.push_back(numeral(whole - before));
                before = whole;
            }
            isEmpty = isEmpty && !value;
        }
        if (isEmpty) {
            return list();
        }
        cells.items.insert(cells.items.begin(), numeral(decimals));
        return cells;
    }

    JsonValue jointColumn(const Rows& rows, const CompactColumn& column) const {
        JsonValue cells = list();
        int before = 0;
        for (const JsonValue& row : rows) {
            const JsonValue* value = held(row, column);
            cells.items.push_back(value ? numeral(indexOf(*value) - before) : JsonValue());
            before = value ? indexOf(*value) : before;
        }
        return cells;
    }

    JsonValue endColumn(const Rows& rows, const CompactColumn& column,
                        const CompactColumn& first) const {
        JsonValue cells = list();
        for (const JsonValue& row : rows) {
            const JsonValue* from = held(row, first);
            const JsonValue* to = held(row, column);
            cells.items.push_back(numeral(indexOf(*to) - indexOf(*from)));
        }
        return cells;
    }

    JsonValue plainColumn(const Rows& rows, const CompactColumn& column) const {
        JsonValue cells = list();
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const JsonValue* value = held(rows[i], column);
            if (!value || (column.coding == ColumnCoding::Label &&
                           value->text == defaultLabel(static_cast<int>(i)))) {
                cells.items.emplace_back();
            } else if (column.coding == ColumnCoding::Path) {
                JsonValue path = list();
                for (const JsonValue& label : value->items) {
                    path.items.push_back(numeral(indexOf(label)));
                }
                cells.items.push_back(std::move(path));
            } else {
                cells.items.push_back(*value);
            }
        }
        return cells;
    }

    JsonValue extrasOf(const Rows& rows, const CompactList& spec) const {
        JsonValue extras = list();
        for (const JsonValue& row : rows) {
            JsonValue left;
            for (const auto& [key, value] : row.members) {
                bool isHeld = false;
                for (const CompactColumn& column : spec.columns) {
                    isHeld = isHeld || (column.key == key && holds(column, value));
                }
                if (!isHeld) {
                    left.kind = Kind::Object;
                    left.members.emplace_back(key, value);
                }
            }
            extras.items.push_back(std::move(left));
        }
        trim(extras);
        return extras;
    }

    static JsonValue restOf(const JsonValue& model) {
        JsonValue rest;
        rest.kind = Kind::Object;
        for (const auto& [key, value] : model.members) {
            bool isElsewhere = key == "gusset";
            for (const CompactList& it : kCompactLists) {
                isElsewhere = isElsewhere || it.key == key;
            }
            if (!isElsewhere && !(key == "units" && isDefaultUnits(value))) {
                rest.members.emplace_back(key, value);
            }
        }
        return rest;
    }

    static bool isDefaultUnits(const JsonValue& units) {
        const std::string text = writeModel(Truss{}, Layout::Compact);
        return text.find("\"units\":" + jsonText(units)) != std::string::npos;
    }

    std::unordered_map<std::string, int> indices_;
};

} // namespace

std::string compactModel(const Truss& truss) {
    JsonBounds bounds;
    bounds.values = static_cast<std::size_t>(-1); // our own text
    return Compactor().compact(parseJson(writeModel(truss, Layout::Compact), bounds).value());
}

} // namespace gusset
