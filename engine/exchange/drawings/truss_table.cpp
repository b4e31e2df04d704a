#include "exchange/drawings/truss_table.hpp"

#include "core/csv.hpp"
#include "core/index.hpp"
#include "core/number.hpp"
#include "exchange/drawings/drawn_number.hpp"
#include "exchange/drawings/some_of_each.hpp"
#include "exchange/drawings/table_columns.hpp"
#include "model/quantity/quantity_input.hpp"
#include "model/validate/characters.hpp"
#include "model/validate/findings.hpp"
#include "model/validate/name_look.hpp"
#include "model/validate/validate.hpp"
#include "phrases/faults/drawings.hpp"
#include "phrases/faults/reading.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace gusset {

namespace {

constexpr std::size_t kQuotedCell = 60;
constexpr std::size_t kMostTableRows = 20'000; // of joints, or of members

struct JointRow {
    std::size_t row = 0;
    std::string label;
    std::string x;
    std::string y;
};
struct MemberRow {
    std::size_t row = 0;
    std::string a;
    std::string b;
    std::string both; // in one cell, instead of the two
};

bool isPlainNumber(const std::string& cell) {
    return cell.find_first_of("0123456789") != cell.npos &&
           cell.find_first_not_of("0123456789+-.,") == cell.npos;
}

std::string cellAt(const CsvRow& row, int column) {
    return column >= 0 && column < toInt(row.size()) ? row[at(column)] : std::string{};
}

class TableReader {
public:
    TableReader(std::string_view text, const DrawingWishes& wishes)
        : rows_(csvRows(asUtf8(text))), wishes_(wishes) {
        const bool hasPoint = std::any_of(rows_.begin(), rows_.end(), [](const CsvRow& row) {
            return std::any_of(row.begin(), row.end(), [](const std::string& cell) {
                return isPlainNumber(cell) && cell.find('.') != cell.npos;
            });
        });
        for (CsvRow& row : rows_) {
            for (std::string& cell : row) {
                if (!hasPoint && isPlainNumber(cell) &&
                    std::count(cell.begin(), cell.end(), ',') == 1) {
                    std::replace(cell.begin(), cell.end(), ',', '.');
                }
            }
        }
    }

    Outcome<Traced> read() {
        for (std::size_t i = 0; i < rows_.size(); ++i) {
            if (!isBlankRow(rows_[i])) {
                sort(i + 1, rows_[i]);
            }
        }
        if (const std::size_t count = std::max(joints_.size(), members_.size());
            count > kMostTableRows) {
            return Issue{IssueCode::TooLarge, phrase::kPlaceFile,
                         statement(phrase::kTooManyRows, {{"n", count}, {"most", kMostTableRows}})};
        }
        if (joints_.empty() && members_.empty()) {
            return Issue{IssueCode::WrongType, phrase::kPlaceFile, phrase::kNotADrawing};
        }
        Traced traced;
        tellUnit(unit_, wishes_.unit, kUnstatedUnit, traced.notes);
        drawn_ = wishes_.unit.value_or(unit_.value_or(kUnstatedUnit));
        truss_.units.length = keptUnit(drawn_);
        addJoints();
        addMembers();
        if (outside_ > 0) {
            notes_.add(
                {IssueCode::NotComputed, phrase::kPlaceFile,
                 statement(phrase::kRowsOfNothing, {{"n", outside_}, {"row", firstOutside_}})});
        }
        tellUnlikelySize(truss_, traced.notes);
        for (Issue& note : notes_.take()) {
            traced.notes.push_back(std::move(note));
        }
        return finished(std::move(traced));
    }

private:
    void note(IssueCode code, std::size_t row, Statement says) {
        notes_.add({code, statement(phrase::kPlaceTableRow, {{"row", row}}), std::move(says)});
    }

    Outcome<Traced> finished(Traced traced) {
        const bool hasJoints = !truss_.joints.empty();
        if (!hasJoints || truss_.members.empty()) {
            Issues faults{{IssueCode::Missing, phrase::kPlaceFile,
                           hasJoints ? phrase::kTableWithoutMembers : phrase::kTableWithoutJoints}};
            faults.insert(faults.end(), traced.notes.begin(), traced.notes.end());
            return faults;
        }
        Findings findings = validate(truss_);
        if (!findings.errors.empty()) {
            return findings.errors;
        }
        for (Issue& issue : findings.notes) {
            traced.notes.push_back(std::move(issue));
        }
        tellNoSupports(traced.notes);
        traced.truss = std::move(truss_);
        return traced;
    }

    // What a row is: headings, a joint, a member, or none of these.
    void sort(std::size_t number, const CsvRow& row) {
        const auto filled = row.size() - static_cast<std::size_t>(
                                             std::count(row.begin(), row.end(), std::string{}));
        if (const TableColumns columns = columnsOf(row);
            columns.kind != TableKind::Neither && !namesAMember(row, columns)) {
            columns_ = columns;
            hasHeadings_ = true;
            takeUnit(number, columns);
        } else if (filled == 1 && columns_.both < 0) { // a caption: another table begins
            columns_ = {};
        } else if (columns_.kind == TableKind::Joints) {
            const std::string label = columns_.label < 0 ? defaultLabel(toInt(joints_.size()))
                                                         : cellAt(row, columns_.label);
            addJoint({number, label, cellAt(row, columns_.x), cellAt(row, columns_.y)});
        } else if (columns_.kind == TableKind::Members) {
            members_.push_back({number, cellAt(row, columns_.a), cellAt(row, columns_.b),
                                cellAt(row, columns_.both)});
        } else if (hasHeadings_) {
            firstOutside_ = outside_++ == 0 ? number : firstOutside_;
        } else if (filled >= 3 && row.size() >= 3 && isCoordinate(row[1]) && isCoordinate(row[2])) {
            addJoint({number, row[0], row[1], row[2]});
        } else if (filled == 2 && row.size() >= 2 && !row[0].empty() && !row[1].empty()) {
            members_.push_back({number, row[0], row[1], {}});
        } else {
            note(IssueCode::WrongType, number, phrase::kRowNotUnderstood);
        }
    }

    void addJoint(JointRow row) {
        labels_.insert(row.label);
        joints_.push_back(std::move(row));
    }

    // "a" and "b" may be joints as well as headings.
    [[nodiscard]] bool namesAMember(const CsvRow& row, const TableColumns& columns) const {
        const auto isJoint = [&](int column) { return labels_.count(cellAt(row, column)) > 0; };
        return columns.kind == TableKind::Members && columns.both < 0 && isJoint(columns.a) &&
               isJoint(columns.b);
    }

    void takeUnit(std::size_t number, const TableColumns& columns) {
        const auto unitIn = [&](const std::string& name) {
            const std::optional<LengthUnit> unit = lengthUnitNamed(name);
            if (!name.empty() && !unit) {
                note(IssueCode::UnknownName, number,
                     statement(phrase::kHeadUnitUnknown,
                               {{"unit", spelled(name.substr(0, kQuotedCell))},
                                {"units", unitList(LengthUnit::m)}}));
            }
            return name.empty() ? std::nullopt : unit;
        };
        const std::optional<LengthUnit> x = unitIn(columns.unitOfX);
        const std::optional<LengthUnit> y = unitIn(columns.unitOfY);
        if (x && y && *x != *y) {
            note(IssueCode::Suspicious, number,
                 statement(phrase::kHeadUnits,
                           {{"x", std::string(symbolOf(*x))}, {"y", std::string(symbolOf(*y))}}));
        }
        unit_ = x ? x : y ? y : unit_;
    }

    [[nodiscard]] static bool isCoordinate(const std::string& cell) {
        return readLength(cell, LengthUnit::m).ok();
    }

    std::optional<double> coordinate(const JointRow& row, const std::string& cell) {
        const Outcome<double> read = readLength(cell, drawn_);
        if (!read || std::abs(read.value()) > kLargestDrawn) {
            note(IssueCode::NotFinite, row.row,
                 statement(phrase::kJointCoordinate,
                           {{"joint", spelled(row.label)},
                            {"text", spelled(cell.substr(0, kQuotedCell))}}));
            return std::nullopt;
        }
        return converted(read.value(), drawn_, truss_.units.length);
    }

    void addJoints() {
        std::map<std::string, std::size_t> rowOf;
        for (const JointRow& row : joints_) {
            const auto x = coordinate(row, row.x);
            const auto y = x ? coordinate(row, row.y) : std::nullopt;
            if (!y) {
                continue;
            }
            if (const auto fault = faultOfName(row.label, kLongestLabel)) {
                note(IssueCode::OutOfRange, row.row,
                     statement(phrase::kJointLabel,
                               {{"joint", spelled(row.label.substr(0, kQuotedCell))},
                                {"fault", *fault}}));
                continue;
            }
            const auto [known, isNew] = rowOf.try_emplace(lookOf(row.label), row.row);
            if (!isNew) {
                note(IssueCode::Duplicate, row.row,
                     statement(phrase::kJointTwice,
                               {{"joint", spelled(row.label)}, {"row", known->second}}));
                continue;
            }
            jointOf_[row.label] = toInt(truss_.joints.size());
            truss_.joints.push_back({row.label, {*x, *y}, {}});
        }
    }

    [[nodiscard]] int jointNamed(const std::string& label) const {
        const auto found = jointOf_.find(label);
        return found == jointOf_.end() ? -1 : found->second;
    }

    // "AB", "A1–B2": the one way to divide it into two labels.
    bool divide(MemberRow& row) {
        constexpr std::string_view kDash = "\u2013";
        int ways = 0;
        const std::string whole = row.both;
        for (std::size_t i = 1; i < whole.size(); ++i) {
            const std::string a = whole.substr(0, i);
            std::string_view rest = std::string_view(whole).substr(i);
            if (rest.starts_with(kDash)) {
                rest.remove_prefix(kDash.size());
            } else if (rest.starts_with('-')) {
                rest.remove_prefix(1);
            }
            if (const std::string b(rest); jointNamed(a) >= 0 && jointNamed(b) >= 0) {
                row.a = a;
                row.b = b;
                ++ways;
            }
        }
        if (ways != 1) {
            note(IssueCode::UnknownName, row.row,
                 statement(phrase::kMemberUnnamed,
                           {{"member", spelled(whole.substr(0, kQuotedCell))}}));
        }
        return ways == 1;
    }

    void addMembers() {
        std::map<std::pair<int, int>, std::size_t> rowOf;
        for (MemberRow& row : members_) {
            if (!row.both.empty() && !divide(row)) {
                continue;
            }
            const std::string first = spelled(row.a.substr(0, kQuotedCell));
            const std::string second = spelled(row.b.substr(0, kQuotedCell));
            const int a = jointNamed(row.a);
            const int b = jointNamed(row.b);
            if (a < 0 || b < 0) {
                note(IssueCode::UnknownName, row.row,
                     statement(phrase::kMemberLacksJoint,
                               {{"a", first}, {"b", second}, {"joint", a < 0 ? first : second}}));
                continue;
            }
            if (a == b || truss_.joints[at(a)].at == truss_.joints[at(b)].at) {
                const auto says = a == b ? phrase::kMemberAtOneJoint : phrase::kMemberWithoutLength;
                note(IssueCode::ZeroLength, row.row,
                     statement(says, {{"a", first}, {"b", second}}));
                continue;
            }
            const auto [known, isNew] = rowOf.try_emplace(std::minmax(a, b), row.row);
            if (!isNew) {
                note(IssueCode::Duplicate, row.row,
                     statement(phrase::kMemberTwice,
                               {{"a", first}, {"b", second}, {"row", known->second}}));
                continue;
            }
            truss_.members.push_back({JointId{a}, JointId{b}, {}, 0, 0, {}});
        }
    }

    std::vector<CsvRow> rows_;
    const DrawingWishes& wishes_;
    TableColumns columns_;
    bool hasHeadings_ = false;
    std::size_t outside_ = 0;
    std::size_t firstOutside_ = 0;
    std::optional<LengthUnit> unit_;
    LengthUnit drawn_ = kUnstatedUnit;
    std::vector<JointRow> joints_;
    std::vector<MemberRow> members_;
    std::set<std::string> labels_; // of joints_
    std::map<std::string, int> jointOf_;
    Truss truss_;
    SomeOfEach notes_;
};

} // namespace

Outcome<Traced> readTrussTable(std::string_view text, const DrawingWishes& wishes) {
    return TableReader(text, wishes).read();
}

std::string trussTable(const Truss& truss) {
    const std::string unit = symbolOf(truss.units.length);
    const std::string in = unit.empty() ? "" : " (" + unit + ")";
    std::string text = csvHead("joint,x" + in + ",y" + in);
    for (const Joint& joint : truss.joints) {
        text += csvTextCell(joint.label) + "," + shortestNumber(joint.at.x) + "," +
                shortestNumber(joint.at.y) + "\r\n";
    }
    text += ",,\r\na,b,\r\n";
    for (const Member& member : truss.members) {
        text += csvTextCell(truss.joints[member.a.at()].label) + "," +
                csvTextCell(truss.joints[member.b.at()].label) + ",\r\n";
    }
    return text;
}

} // namespace gusset
