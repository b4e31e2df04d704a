#include "exchange/json/json_text.hpp"
#include "exchange/links/compact_columns.hpp"
#include "exchange/links/compact_model.hpp"
#include "phrases/faults/links.hpp"

#include <algorithm>
#include <array>

namespace gusset {

namespace {

using Kind = JsonValue::Kind;
using Rows = std::vector<JsonValue>;

// In the order of kCompactLists.
constexpr std::array kTooManyRows{phrase::kLinkJoints, phrase::kLinkMembers, phrase::kLinkSupports,
                                  phrase::kLinkLoads};
static_assert(kTooManyRows.size() == kCompactLists.size());

class Expander {
public:
    Outcome<JsonValue> expand(const JsonValue& compact) {
        JsonValue model{.kind = Kind::Object};
        model.members.emplace_back("gusset", numberValue(1));
        constexpr std::size_t kLists = kCompactLists.size();
        if (compact.kind != Kind::Array || compact.items.size() > kLists + 2) {
            fail(phrase::kPartWhole);
        }
        const JsonValue none{.kind = Kind::Array};
        const auto part = [&](std::size_t i) -> const JsonValue& {
            return i < compact.items.size() ? compact.items[i] : none;
        };
        for (std::size_t i = 0; i < kLists && !issue_; ++i) {
            model.members.emplace_back(kCompactLists[i].key, rowsOf(part(i), i));
        }
        if (!issue_) {
            addRest(model, part(kLists));
            addExtras(model, part(kLists + 1));
        }
        if (issue_) {
            return std::move(*issue_);
        }
        return model;
    }

private:
    void fail(const Statement& part) {
        if (!issue_) {
            issue_ = Issue{IssueCode::Damaged, phrase::kPlaceLink,
                           statement(phrase::kLinkMakesNoSense, {{"part", part}})};
        }
    }

    // The number of rows that the columns of a list amount to.
    static std::size_t countRows(const JsonValue& columns, const CompactList& list) {
        std::size_t count = 0;
        for (std::size_t i = 0; i < columns.items.size(); ++i) {
            const bool hasHead = list.columns[i].coding == ColumnCoding::Number;
            const std::size_t size = columns.items[i].items.size();
            count = std::max(count, hasHead && size > 0 ? size - 1 : size);
        }
        return count;
    }

    JsonValue rowsOf(const JsonValue& columns, std::size_t which) {
        const CompactList& list = kCompactLists[which];
        JsonValue rows{.kind = Kind::Array};
        if (columns.kind != Kind::Array || columns.items.size() > list.columns.size()) {
            fail(list.key);
            return rows;
        }
        const std::size_t count = countRows(columns, list);
        if (count > kMostInLink) {
            issue_ = Issue{IssueCode::TooLarge, phrase::kPlaceLink,
                           statement(kTooManyRows[which], {{"n", count}, {"most", kMostInLink}})};
            return rows;
        }
        rows.items.resize(count, JsonValue{.kind = Kind::Object});
        for (std::size_t i = 0; i < columns.items.size() && !issue_; ++i) {
            addColumn(rows.items, list.columns[i], columns.items[i]);
        }
        if (list.key == "joints") {
            nameJoints(rows.items);
        }
        return rows;
    }

    void addColumn(Rows& rows, const CompactColumn& column, const JsonValue& cells) {
        if (cells.kind == Kind::Number && cells.number == 0) {
            return;
        }
        const bool isSound =
            cells.kind == Kind::Array &&
            (column.coding == ColumnCoding::Number ? addNumbers(rows, column, cells.items)
             : column.coding == ColumnCoding::Joint || column.coding == ColumnCoding::EndJoint
                 ? addJoints(rows, column, cells.items)
                 : addPlain(rows, column, cells.items));
        if (!isSound) {
            fail(column.key);
        }
    }

    // These return false if the cells make no sense.
    static bool addNumbers(Rows& rows, const CompactColumn& column, const Rows& cells) {
        if (cells.empty() || !cells[0].isWhole() || cells[0].number < kNotDecimal ||
            cells[0].number > kMostDecimals) {
            return false;
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
                return false;
            }
            whole += cell.number;
            rows[i - 1].members.emplace_back(column.key,
                                             isDecimal ? numberValue(whole / scale) : cell);
        }
        return true;
    }

    bool addJoints(Rows& rows, const CompactColumn& column, const Rows& cells) {
        const bool isEnd = column.coding == ColumnCoding::EndJoint;
        double index = 0;
        std::vector<double> indices(rows.size(), 0);
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (cells[i].kind == Kind::Null) {
                continue;
            }
            if (!cells[i].isWhole() || (isEnd && i >= starts_.size())) {
                return false;
            }
            index = cells[i].number + (isEnd ? starts_[i] : index);
            if (!isJoint(index)) {
                return false;
            }
            indices[i] = index;
            rows[i].members.emplace_back(column.key, labelAt(index));
        }
        starts_ = std::move(indices);
        return true;
    }

    bool addPlain(Rows& rows, const CompactColumn& column, const Rows& cells) const {
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (cells[i].kind == Kind::Null) {
                continue;
            }
            JsonValue& value = rows[i].members.emplace_back(column.key, cells[i]).second;
            if (column.coding != ColumnCoding::Path) {
                continue;
            }
            value = JsonValue{.kind = Kind::Array};
            for (const JsonValue& item : cells[i].items) {
                if (!item.isWhole() || !isJoint(item.number)) {
                    return false;
                }
                value.items.push_back(labelAt(item.number));
            }
        }
        return true;
    }

    [[nodiscard]] bool isJoint(double index) const {
        return index >= 0 && index < static_cast<double>(labels_.size());
    }
    [[nodiscard]] JsonValue labelAt(double index) const {
        return {.kind = Kind::Text, .text = labels_[static_cast<std::size_t>(index)]};
    }

    void nameJoints(Rows& joints) {
        for (std::size_t i = 0; i < joints.size(); ++i) {
            if (!joints[i].find("id")) {
                joints[i].members.emplace_back(
                    "id", JsonValue{.kind = Kind::Text, .text = defaultLabel(static_cast<int>(i))});
            }
            labels_.push_back(joints[i].find("id")->text);
        }
    }

    void addRest(JsonValue& model, const JsonValue& rest) {
        const bool isNone = rest.kind == Kind::Array && rest.items.empty();
        if (!isNone && (rest.kind != Kind::Object || !addMembers(model, rest))) {
            fail(phrase::kPartRest);
        }
    }

    void addExtras(JsonValue& model, const JsonValue& extras) {
        bool isSound = extras.kind == Kind::Array && extras.items.size() <= kCompactLists.size();
        for (std::size_t i = 0; isSound && i < extras.items.size(); ++i) {
            Rows& rows = model.members[i + 1].second.items;
            const Rows& additions = extras.items[i].items;
            isSound = additions.size() <= rows.size();
            for (std::size_t k = 0; isSound && k < additions.size(); ++k) {
                isSound = addMembers(rows[k], additions[k]);
            }
        }
        if (!isSound) {
            fail(phrase::kPartExtras);
        }
    }

    // False if a key is already there.
    static bool addMembers(JsonValue& to, const JsonValue& from) {
        const std::size_t count = to.members.size(); // the keys of `from` are unique
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

    std::vector<std::string> labels_;
    std::vector<double> starts_; // values of the last Joint column, for the EndJoint column
    std::optional<Issue> issue_;
};

} // namespace

Outcome<JsonValue> expandModel(const JsonValue& compact) { return Expander().expand(compact); }

} // namespace gusset
