#include "core/number.hpp"
#include "exchange/compact_columns.hpp"
#include "exchange/compact_model.hpp"
#include "exchange/json_text.hpp"

#include <algorithm>

namespace gusset {

namespace {

using Kind = JsonValue::Kind;

JsonValue textValue(std::string text) {
    JsonValue value;
    value.kind = Kind::Text;
    value.text = std::move(text);
    return value;
}

JsonValue numberValue(double number) {
    JsonValue value;
    value.kind = Kind::Number;
    value.number = number;
    value.text = shortestNumber(number);
    return value;
}

class Expander {
public:
    Outcome<JsonValue> expand(const JsonValue& compact) {
        model_.kind = Kind::Object;
        model_.members.emplace_back("gusset", numberValue(1));
        constexpr std::size_t kParts = kCompactLists.size() + 2;
        if (compact.kind != Kind::Array || compact.items.size() > kParts) {
            fail("the whole");
        }
        for (std::size_t i = 0; i < kCompactLists.size() && !issue_; ++i) {
            model_.members.emplace_back(kCompactLists[i].key, rowsOf(partOf(compact, i), i));
        }
        if (!issue_) {
            addRest(partOf(compact, kCompactLists.size()));
            addExtras(partOf(compact, kCompactLists.size() + 1));
        }
        if (issue_) {
            return std::move(*issue_);
        }
        return std::move(model_);
    }

private:
    void fail(std::string_view where) {
        if (!issue_) {
            issue_ = Issue{IssueCode::Damaged, "the link",
                           "opens, and makes no sense (" + std::string(where) +
                               "): it was not written by Gusset, or by a later version"};
        }
    }

    static const JsonValue& partOf(const JsonValue& compact, std::size_t i) {
        static const JsonValue kNothing = [] {
            JsonValue value;
            value.kind = Kind::Array;
            return value;
        }();
        return i < compact.items.size() ? compact.items[i] : kNothing;
    }

    // How many rows the columns of a list make together.
    static std::size_t countRows(const JsonValue& columns, const CompactList& spec) {
        std::size_t count = 0;
        for (std::size_t i = 0; i < columns.items.size(); ++i) {
            const bool hasHead = spec.columns[i].coding == ColumnCoding::Number;
            const std::size_t size = columns.items[i].items.size();
            count = std::max(count, hasHead && size > 0 ? size - 1 : size);
        }
        return count;
    }

    JsonValue rowsOf(const JsonValue& columns, std::size_t which) {
        const CompactList& spec = kCompactLists[which];
        JsonValue rows;
        rows.kind = Kind::Array;
        if (columns.kind != Kind::Array || columns.items.size() > spec.columns.size()) {
            fail(spec.key);
            return rows;
        }
        const std::size_t count = countRows(columns, spec);
        if (count > kMostInLink) {
            issue_ = Issue{IssueCode::TooLarge, "the link",
                           "holds " + std::to_string(count) + " " + std::string(spec.key) +
                               ", and a link may hold " + std::to_string(kMostInLink) +
                               ": ask for the model as a file"};
            return rows;
        }
        rows.items.resize(count);
        for (JsonValue& row : rows.items) {
            row.kind = Kind::Object;
        }
        for (std::size_t i = 0; i < columns.items.size() && !issue_; ++i) {
            addColumn(rows.items, spec.columns[i], columns.items[i]);
        }
        if (spec.key == "joints") {
            nameJoints(rows.items);
        }
        return rows;
    }

    void addColumn(std::vector<JsonValue>& rows, const CompactColumn& column,
                   const JsonValue& cells) {
        if (cells.kind == Kind::Number && cells.number == 0) {
            return;
        }
        if (cells.kind != Kind::Array) {
            fail(column.key);
            return;
        }
        switch (column.coding) {
        case ColumnCoding::Number:
            addNumbers(rows, column, cells.items);
            break;
        case ColumnCoding::Joint:
        case ColumnCoding::EndJoint:
            addJoints(rows, column, cells.items);
            break;
        default:
            addPlain(rows, column, cells.items);
            break;
        }
    }

    void addNumbers(std::vector<JsonValue>& rows, const CompactColumn& column,
                    const std::vector<JsonValue>& cells) {
        if (cells.empty() || !cells[0].isWhole() || cells[0].number < kNotDecimal ||
            cells[0].number > kMostDecimals) {
            return fail(column.key);
        }
        const bool isDecimal = cells[0].number != kNotDecimal;
        const double scale = isDecimal ? powerOfTen(static_cast<int>(cells[0].number)) : 1;
        double whole = 0;
        for (std::size_t i = 1; i < cells.size(); ++i) {
            const JsonValue& cell = cells[i];
            if (cell.kind == Kind::Null) {
                continue;
            }
            if (cell.kind != Kind::Number || (isDecimal && !cell.isWhole())) {
                return fail(column.key);
            }
            whole += cell.number;
            rows[i - 1].members.emplace_back(column.key,
                                             isDecimal ? numberValue(whole / scale) : cell);
        }
    }

    // The label of a joint by its index; "" and a fault when there is no such joint.
    std::string labelAt(double index, const CompactColumn& column) {
        if (!(index >= 0 && index < static_cast<double>(labels_.size()))) {
            fail(column.key);
            return "";
        }
        return labels_[static_cast<std::size_t>(index)];
    }

    void addJoints(std::vector<JsonValue>& rows, const CompactColumn& column,
                   const std::vector<JsonValue>& cells) {
        const bool isEnd = column.coding == ColumnCoding::EndJoint;
        double index = 0;
        std::vector<double> indices(rows.size(), 0);
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (cells[i].kind == Kind::Null) {
                continue;
            }
            if (!cells[i].isWhole() || (isEnd && i >= starts_.size())) {
                return fail(column.key);
            }
            index = cells[i].number + (isEnd ? starts_[i] : index);
            indices[i] = index;
            rows[i].members.emplace_back(column.key, textValue(labelAt(index, column)));
        }
        starts_ = std::move(indices);
    }

    void addPlain(std::vector<JsonValue>& rows, const CompactColumn& column,
                  const std::vector<JsonValue>& cells) {
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (cells[i].kind == Kind::Null) {
                continue;
            }
            if (column.coding != ColumnCoding::Path) {
                rows[i].members.emplace_back(column.key, cells[i]);
                continue;
            }
            JsonValue path;
            path.kind = Kind::Array;
            for (const JsonValue& item : cells[i].items) {
                if (!item.isWhole()) {
                    return fail(column.key);
                }
                path.items.push_back(textValue(labelAt(item.number, column)));
            }
            rows[i].members.emplace_back(column.key, std::move(path));
        }
    }

    void nameJoints(std::vector<JsonValue>& joints) {
        for (std::size_t i = 0; i < joints.size(); ++i) {
            if (!joints[i].find("id")) {
                joints[i].members.emplace_back("id", textValue(defaultLabel(static_cast<int>(i))));
            }
            labels_.push_back(joints[i].find("id")->text);
        }
    }

    void addRest(const JsonValue& rest) {
        if (rest.kind == Kind::Array && rest.items.empty()) {
            return;
        }
        if (rest.kind != Kind::Object) {
            return fail("the rest");
        }
        if (!addMembers(model_, rest)) {
            fail("the rest");
        }
    }

    void addExtras(const JsonValue& extras) {
        if (extras.kind != Kind::Array || extras.items.size() > kCompactLists.size()) {
            return fail("the extras");
        }
        for (std::size_t i = 0; i < extras.items.size(); ++i) {
            std::vector<JsonValue>& rows = model_.members[i + 1].second.items;
            const std::vector<JsonValue>& additions = extras.items[i].items;
            if (additions.size() > rows.size()) {
                return fail("the extras");
            }
            for (std::size_t k = 0; k < additions.size(); ++k) {
                if (!addMembers(rows[k], additions[k])) {
                    return fail("the extras");
                }
            }
        }
    }

    // False when a key is there already.
    static bool addMembers(JsonValue& to, const JsonValue& from) {
        const std::size_t count = to.members.size(); // those of `from` differ among themselves
        for (const auto& [key, value] : from.members) {
            for (std::size_t i = 0; i < count; ++i) {
                if (to.members[i].first == key) {
                    return false;
                }
            }
            to.members.emplace_back(key, value);
        }
        return true;
    }

    JsonValue model_;
    std::vector<std::string> labels_;
    std::vector<double> starts_; // of the last column of joints, for that of the ends
    std::optional<Issue> issue_;
};

} // namespace

Outcome<JsonValue> expandModel(const JsonValue& compact) { return Expander().expand(compact); }

} // namespace gusset
