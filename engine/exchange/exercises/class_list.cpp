#include "exchange/exercises/class_list.hpp"

#include "core/utf8.hpp"
#include "phrases/faults/class_lists.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <map>
#include <optional>
#include <utility>

namespace gusset {

namespace {

using Cells = std::vector<std::string>;
constexpr double kLargestAnswer = 1e15; // beyond it a number is no force

std::string trimmed(std::string_view text) {
    const auto isSpace = [](char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; };
    while (!text.empty() && isSpace(text.front())) {
        text.remove_prefix(1);
    }
    while (!text.empty() && isSpace(text.back())) {
        text.remove_suffix(1);
    }
    return std::string(text);
}

std::string inLowerCase(std::string text) {
    for (char& c : text) {
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return text;
}

// What stands between the cells, by the row of headings.
char separatorIn(std::string_view table) {
    std::array<std::size_t, 3> counts{};
    constexpr std::string_view kSeparators = "\t;,";
    bool isQuoted = false;
    for (const char c : table) {
        isQuoted = c == '"' ? !isQuoted : isQuoted;
        if (c == '\n' && !isQuoted) {
            break;
        }
        const std::size_t at = kSeparators.find(c);
        if (!isQuoted && at != kSeparators.npos) {
            ++counts[at];
        }
    }
    return kSeparators[static_cast<std::size_t>(std::max_element(counts.begin(), counts.end()) -
                                                counts.begin())];
}

std::vector<Cells> rowsOf(std::string_view table) {
    const char separator = separatorIn(table);
    std::vector<Cells> rows(1, Cells(1));
    bool isQuoted = false;
    for (std::size_t i = 0; i < table.size(); ++i) {
        const char c = table[i];
        if (isQuoted && c == '"' && i + 1 < table.size() && table[i + 1] == '"') {
            rows.back().back() += c;
            ++i;
        } else if (c == '"' && (isQuoted || trimmed(rows.back().back()).empty())) {
            isQuoted = !isQuoted;
        } else if (!isQuoted && c == separator) {
            rows.back().emplace_back();
        } else if (!isQuoted &&
                   (c == '\n' || (c == '\r' && (i + 1 == table.size() || table[i + 1] != '\n')))) {
            rows.emplace_back(1);
        } else {
            rows.back().back() += c;
        }
    }
    for (Cells& row : rows) {
        for (std::string& cell : row) {
            cell = trimmed(cell);
        }
    }
    return rows;
}

// With ASCII hyphens, without spaces of any kind; arrows are letters of their own.
std::string plainly(const std::string& text) {
    constexpr std::array<char32_t, 7> kDashes{0x2010, 0x2011, 0x2012, 0x2013,
                                              0x2014, 0x2212, 0xFE63};
    constexpr std::array<char32_t, 4> kSpaces{0x00A0, 0x2007, 0x2009, 0x202F};
    constexpr std::array<char32_t, 4> kArrows{0x2190, 0x2191, 0x2192, 0x2193};
    constexpr std::string_view kArrowLetters = "<^>_";
    std::string plain;
    for (std::string_view rest = text; !rest.empty();) {
        const Character next = firstCharacter(rest);
        rest.remove_prefix(next.bytes);
        const auto is = [&](const auto& list) {
            return std::find(list.begin(), list.end(), next.code) != list.end();
        };
        if (is(kDashes)) {
            plain += '-';
        } else if (is(kArrows)) {
            plain += kArrowLetters[static_cast<std::size_t>(
                std::find(kArrows.begin(), kArrows.end(), next.code) - kArrows.begin())];
        } else if (!is(kSpaces) && next.code != ' ') {
            appendCharacter(plain, next.code);
        }
    }
    return plain;
}

struct ColumnPlace {
    enum class Kind { Other, Code, Variant, Exercise, Reaction, Force } kind = Kind::Other;
    std::size_t index = 0;
};

class ClassReader {
public:
    ClassReader(const Truss& truss, const Exercise& exercise, const std::string& mark)
        : truss_(truss), exercise_(exercise), mark_(mark), structure_(structureOf(truss)) {
        nameAnswers();
    }

    Outcome<ClassList> read(std::string_view table) {
        if (table.starts_with("\xEF\xBB\xBF")) {
            table.remove_prefix(3);
        }
        const std::vector<Cells> rows = rowsOf(table);
        if (isBlankRow(rows.front())) {
            return Issue{IssueCode::Missing, placeOfRow(1), phrase::kListEmpty};
        }
        headings_ = rows.front();
        readHeadings();
        if (!hasAnswers_) {
            return Issue{IssueCode::Missing, placeOfRow(1), phrase::kNoAnswerColumns};
        }
        for (std::size_t i = 1; i < rows.size(); ++i) {
            if (!isBlankRow(rows[i])) {
                readRow(i + 1, rows[i]);
            }
        }
        return std::move(list_);
    }

private:
    static bool isBlankRow(const Cells& row) {
        return std::all_of(row.begin(), row.end(),
                           [](const std::string& cell) { return cell.empty(); });
    }
    static Statement placeOfRow(std::size_t row) {
        return statement(phrase::kPlaceRow, {{"row", std::to_string(row)}});
    }
    Statement placeOfCell(std::size_t row, std::size_t column) const {
        return statement(phrase::kPlaceCell,
                         {{"row", std::to_string(row)}, {"column", headings_[column]}});
    }
    void note(Statement place, Statement says) {
        list_.notes.push_back({IssueCode::OutOfRange, std::move(place), std::move(says)});
    }

    void nameAnswers() {
        using Kind = ColumnPlace::Kind;
        for (std::size_t i = 0; i < truss_.members.size(); ++i) {
            const std::string& a = truss_.joints[truss_.members[i].a.at()].label;
            const std::string& b = truss_.joints[truss_.members[i].b.at()].label;
            for (const std::string& name : {a + b, b + a, a + "-" + b, b + "-" + a}) {
                names_.try_emplace(plainly(name), ColumnPlace{Kind::Force, i});
                names_.try_emplace("F_" + plainly(name), ColumnPlace{Kind::Force, i});
            }
        }
        std::map<int, std::size_t> atJoint;
        for (const Restraint& restraint : structure_.restraints) {
            ++atJoint[restraint.joint.index];
        }
        for (std::size_t i = 0; i < structure_.restraints.size(); ++i) {
            const Restraint& restraint = structure_.restraints[i];
            const std::string joint = plainly(truss_.joints[restraint.joint.at()].label);
            const ColumnPlace place{Kind::Reaction, i};
            if (atJoint[restraint.joint.index] == 1) {
                names_.try_emplace("R_" + joint, place);
                names_.try_emplace(joint, place);
            }
            const std::string axis = restraint.along.y == 0   ? "x"
                                     : restraint.along.x == 0 ? "y"
                                                              : "";
            for (const char* between : {"_", ":", ""}) {
                if (!axis.empty()) {
                    names_.try_emplace(joint + between + axis, place);
                }
            }
        }
    }

    // Whether a heading is meant as a member or a reaction, though the truss has none such.
    static bool looksLikeAnswer(const std::string& name) {
        const auto isCapital = [](char c) { return c >= 'A' && c <= 'Z'; };
        return name.starts_with("F_") || name.starts_with("R_") || name.ends_with("_x") ||
               name.ends_with("_y") ||
               (name.size() == 2 && isCapital(name[0]) && isCapital(name[1]) && name != "ID") ||
               (name.size() == 3 && name[1] == '-' && isCapital(name[0]) && isCapital(name[2]));
    }

    void readHeadings() {
        using Kind = ColumnPlace::Kind;
        bool hasCode = false;
        for (const std::string& heading : headings_) {
            const std::string name = plainly(heading);
            ColumnPlace place;
            const auto found = names_.find(name);
            if (found != names_.end()) {
                place = found->second;
                hasAnswers_ = true;
                if (isTaken(place)) {
                    note(statement(phrase::kPlaceColumn, {{"column", heading}}),
                         phrase::kColumnTwice);
                    place = {};
                }
            } else if (inLowerCase(name) == "variant") {
                place.kind = Kind::Variant;
            } else if (inLowerCase(name) == "exercise") {
                place.kind = Kind::Exercise;
            } else if (looksLikeAnswer(name)) {
                note(statement(phrase::kPlaceColumn, {{"column", heading}}), phrase::kNoSuchColumn);
            } else if (!hasCode && !name.empty()) {
                place.kind = Kind::Code;
                list_.codeHeading = heading;
                hasCode = true;
            }
            places_.push_back(place);
        }
    }
    bool isTaken(const ColumnPlace& place) const {
        return std::any_of(places_.begin(), places_.end(), [&](const ColumnPlace& other) {
            return other.kind == place.kind && other.index == place.index;
        });
    }

    void readRow(std::size_t number, const Cells& cells) {
        using Kind = ColumnPlace::Kind;
        ClassRow row{number, {}, blankAnswers(truss_, exercise_)};
        bool isOfAnother = false;
        for (std::size_t i = 0; i < cells.size() && i < places_.size(); ++i) {
            switch (places_[i].kind) {
            case Kind::Code:
                row.code = cells[i];
                break;
            case Kind::Variant:
                isOfAnother = isOfAnother ||
                              (!cells[i].empty() && cells[i] != std::to_string(exercise_.variant));
                break;
            case Kind::Exercise:
                isOfAnother = isOfAnother || (!cells[i].empty() && cells[i] != mark_);
                break;
            case Kind::Reaction:
                row.answers.reactions[places_[i].index] = forceIn(cells[i], number, i);
                break;
            case Kind::Force:
                row.answers.forces[places_[i].index] = forceIn(cells[i], number, i);
                break;
            case Kind::Other:
                break;
            }
        }
        if (cells.size() > places_.size()) {
            note(placeOfRow(number), phrase::kRowTooLong);
        }
        row.answers.code = row.code;
        keep(std::move(row), isOfAnother);
    }

    void keep(ClassRow row, bool isOfAnother) {
        if (isOfAnother) {
            return note(placeOfRow(row.number), phrase::kRowOfAnother);
        }
        const auto isBlankForce = [](const WrittenForce& force) { return isBlank(force); };
        const Answers& given = row.answers;
        if (std::all_of(given.reactions.begin(), given.reactions.end(), isBlankForce) &&
            std::all_of(given.forces.begin(), given.forces.end(), isBlankForce)) {
            note(placeOfRow(row.number), phrase::kRowBlank);
        }
        const auto before = row.code.empty() ? rowOfCode_.end() : rowOfCode_.find(row.code);
        if (before != rowOfCode_.end()) {
            const ClassRow& other = list_.rows[before->second];
            const Statement where = std::to_string(other.number);
            if (other.answers == row.answers) {
                return note(placeOfRow(row.number), statement(phrase::kRowTwice, {{"row", where}}));
            }
            note(placeOfRow(row.number),
                 statement(phrase::kCodeTwice, {{"code", row.code}, {"row", where}}));
        }
        rowOfCode_.try_emplace(row.code, list_.rows.size());
        list_.rows.push_back(std::move(row));
    }

    WrittenForce forceIn(const std::string& cell, std::size_t row, std::size_t column) {
        if (plainly(cell).empty() || plainly(cell) == "-") {
            return {};
        }
        const std::optional<WrittenForce> force = readForce(plainly(cell), places_[column]);
        if (!force) {
            note(placeOfCell(row, column), statement(phrase::kCellNotForce, {{"text", cell}}));
        }
        return force.value_or(WrittenForce{});
    }

    // The sign that a letter or an arrow gives; none if it has no meaning here.
    std::optional<int> senseOf(const std::string& word, const ColumnPlace& place) const {
        if (place.kind == ColumnPlace::Kind::Force) {
            const std::string lower = inLowerCase(word);
            return lower == "t" || lower == "tension"       ? std::optional(1)
                   : lower == "c" || lower == "compression" ? std::optional(-1)
                                                            : std::nullopt;
        }
        constexpr std::string_view kArrowLetters = "<^>_";
        constexpr std::array<Vec2, 4> kWays{{{-1, 0}, {0, 1}, {1, 0}, {0, -1}}};
        if (word.size() != 1 || kArrowLetters.find(word[0]) == kArrowLetters.npos) {
            return std::nullopt;
        }
        const double along =
            dot(kWays[kArrowLetters.find(word[0])], structure_.restraints[place.index].along);
        return along > 0 ? std::optional(1) : along < 0 ? std::optional(-1) : std::nullopt;
    }

    // "12,5kNT": a sense or a unit before and after a number.
    std::optional<WrittenForce> readForce(const std::string& text, const ColumnPlace& place) const {
        const std::size_t start = text.find_first_of("0123456789.,+-");
        if (start == text.npos) {
            return std::nullopt;
        }
        std::size_t end = text.find_first_not_of("0123456789.,+-", start);
        end = end == text.npos ? text.size() : end;
        const std::optional<double> number = numberIn(text.substr(start, end - start));
        if (!number) {
            return std::nullopt;
        }
        double value = *number;
        std::optional<int> sense;
        for (std::string word : {text.substr(0, start), text.substr(end)}) {
            while (!word.empty()) {
                const std::size_t size = wordAt(word, place, sense, value);
                if (size == 0) {
                    return std::nullopt;
                }
                word.erase(0, size);
            }
        }
        return WrittenForce{std::abs(value), value == 0 ? 0 : sense ? *sense : value > 0 ? 1 : -1};
    }

    // How long the longest unit or sense is that a word begins with; 0 if it begins with none.
    std::size_t wordAt(const std::string& word, const ColumnPlace& place, std::optional<int>& sense,
                       double& value) const {
        for (std::size_t size = word.size(); size > 0; --size) {
            const std::string part = word.substr(0, size);
            if (const std::optional<int> found = senseOf(part, place)) {
                sense = found;
                return size;
            }
            if (const std::optional<ForceUnit> unit = forceUnitNamed(part)) {
                value = converted(value, *unit, truss_.units.force);
                return size;
            }
        }
        return 0;
    }

    // With a point or a comma; both: the last of them is the decimal sign.
    static std::optional<double> numberIn(std::string text) {
        const std::size_t last = text.find_last_of(".,");
        const bool hasBoth = text.find('.') != text.npos && text.find(',') != text.npos;
        std::string plain;
        for (std::size_t i = 0; i < text.size(); ++i) {
            if (text[i] != '.' && text[i] != ',') {
                plain += text[i];
            } else if (i == last || !hasBoth) {
                plain += '.';
            }
        }
        char* end = nullptr;
        const double value = std::strtod(plain.c_str(), &end);
        const bool isWhole = end == plain.c_str() + plain.size();
        return isWhole && std::abs(value) < kLargestAnswer ? std::optional(value) : std::nullopt;
    }

    const Truss& truss_;
    const Exercise& exercise_;
    const std::string& mark_;
    Structure structure_;
    std::map<std::string, ColumnPlace> names_;
    Cells headings_;
    std::vector<ColumnPlace> places_; // of each heading
    bool hasAnswers_ = false;
    std::map<std::string, std::size_t> rowOfCode_;
    ClassList list_;
};

} // namespace

Outcome<ClassList> readClassList(const Truss& truss, const Exercise& exercise,
                                 const std::string& mark, std::string_view table) {
    return ClassReader(truss, exercise, mark).read(table);
}

} // namespace gusset
