#include "exchange/exercises/class_list.hpp"

#include "classroom/exercise/typed_answer.hpp"
#include "core/csv.hpp"
#include "exchange/exercises/class_columns.hpp"
#include "exchange/exercises/handed_in.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/faults/class_lists.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace gusset {

namespace {

constexpr double kLargestDegree = 1e6;

// A comma in a number of a table is the decimal sign, whatever stands behind it.
std::string numberIn(const std::string& cell) {
    std::string plain = withPlainNumbers(cell);
    std::replace(plain.begin(), plain.end(), ',', '.');
    return plain;
}

bool isBlankSheet(const Answers& given) {
    const auto isBlankForce = [](const WrittenForce& force) { return isBlank(force); };
    const auto isNone = [](const auto& value) { return !value; };
    return std::all_of(given.reactions.begin(), given.reactions.end(), isBlankForce) &&
           std::all_of(given.forces.begin(), given.forces.end(), isBlankForce) &&
           std::all_of(given.zeros.begin(), given.zeros.end(), isNone) &&
           std::all_of(given.values.begin(), given.values.end(), isNone) && !given.degree;
}

class ClassReader {
public:
    ClassReader(const Truss& truss, const Exercise& exercise, const std::string& mark,
                ClassRows which)
        : truss_(truss), exercise_(exercise), mark_(mark), which_(which),
          structure_(structureOf(truss)), names_(truss, exercise, structure_) {}

    Outcome<ClassList> read(std::string_view table) {
        const std::vector<CsvRow> rows = csvRows(table);
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
    void note(Statement place, Statement says) {
        list_.notes.push_back({IssueCode::OutOfRange, std::move(place), std::move(says)});
    }
    template <class Says>
    void noteCell(std::size_t row, std::size_t column, Says says, const std::string& text) {
        note(statement(phrase::kPlaceCell,
                       {{"row", std::to_string(row)}, {"column", headings_[column]}}),
             statement(says, {{"text", text}}));
    }

    void readHeadings() {
        bool hasCode = false;
        for (const std::string& heading : headings_) {
            ColumnPlace place = names_.placeOf(heading);
            const Statement at = statement(phrase::kPlaceColumn, {{"column", heading}});
            if (place.kind == ClassColumn::Other) {
                const bool isAnswer = ColumnNames::looksLikeAnswer(heading);
                if (isAnswer && which_ == ClassRows::All) {
                    note(at, phrase::kNoSuchColumn);
                } else if (!isAnswer && !hasCode && !heading.empty()) {
                    place.kind = ClassColumn::Code;
                    list_.codeHeading = heading;
                    hasCode = true;
                }
            } else if (std::find(places_.begin(), places_.end(), place) != places_.end()) {
                note(at, phrase::kColumnTwice);
                place = {};
            }
            hasAnswers_ = hasAnswers_ || place.kind >= ClassColumn::Reaction;
            places_.push_back(place);
        }
    }

    bool isOfThis(const CsvRow& cells) const {
        const auto column =
            std::find(places_.begin(), places_.end(), ColumnPlace{ClassColumn::Exercise, 0});
        const auto at = static_cast<std::size_t>(column - places_.begin());
        return at < cells.size() && cells[at] == mark_;
    }

    void readRow(std::size_t number, const CsvRow& cells) {
        if (which_ == ClassRows::OfThisExercise && !isOfThis(cells)) {
            return;
        }
        list_.read.push_back(number);
        ClassRow row{number, {}, blankAnswers(truss_, exercise_)};
        bool isOfAnother = false;
        for (std::size_t i = 0; i < cells.size() && i < places_.size(); ++i) {
            const std::string& cell = cells[i];
            if (places_[i].kind == ClassColumn::Code) {
                row.code = cell;
            } else if (places_[i].kind == ClassColumn::Variant) {
                isOfAnother =
                    isOfAnother || (!cell.empty() && cell != std::to_string(exercise_.variant));
            } else if (places_[i].kind == ClassColumn::Exercise) {
                isOfAnother = isOfAnother || (!cell.empty() && cell != mark_);
            } else if (!isOfAnother && withPlainNumbers(cell) != "-" && !cell.empty()) {
                readAnswer(row.answers, number, i, cell);
            }
        }
        if (cells.size() > places_.size()) {
            note(placeOfRow(number), phrase::kRowTooLong);
        }
        row.answers.code = row.code;
        keep(std::move(row), isOfAnother);
    }

    void readAnswer(Answers& answers, std::size_t row, std::size_t column,
                    const std::string& cell) {
        const ColumnPlace& place = places_[column];
        switch (place.kind) {
        case ClassColumn::Reaction:
            answers.reactions[place.index] = forceIn(cell, row, column);
            break;
        case ClassColumn::Force:
            answers.forces[place.index] = forceIn(cell, row, column);
            break;
        case ClassColumn::Zeros:
            readZeros(answers, row, column, cell);
            break;
        case ClassColumn::Degree: {
            const Outcome<double> degree = readNumber(numberIn(cell));
            if (degree && std::abs(degree.value()) < kLargestDegree &&
                degree.value() == std::floor(degree.value())) {
                answers.degree = static_cast<int>(degree.value());
            } else {
                noteCell(row, column, phrase::kCellNotWhole, cell);
            }
            break;
        }
        case ClassColumn::Value:
            answers.values[place.index] = valueIn(cell, row, column);
            break;
        default:
            break;
        }
    }

    WrittenForce forceIn(const std::string& cell, std::size_t row, std::size_t column) {
        SenseRule rule{SenseRule::Words::OfMember, {}, true};
        if (places_[column].kind == ClassColumn::Reaction) {
            rule.words = SenseRule::Words::OfReaction;
            rule.along = structure_.restraints[places_[column].index].along;
        }
        const Outcome<WrittenForce> force = readWritten(numberIn(cell), truss_.units.force, rule);
        if (!force) {
            noteCell(row, column, phrase::kCellNotForce, cell);
        }
        return force ? force.value() : WrittenForce{};
    }

    // Members with spaces, commas or semicolons between them.
    void readZeros(Answers& answers, std::size_t row, std::size_t column, const std::string& cell) {
        constexpr std::string_view kBetween = " ,;\t\n";
        for (std::size_t at = cell.find_first_not_of(kBetween); at != cell.npos;) {
            const std::size_t end = std::min(cell.find_first_of(kBetween, at), cell.size());
            const std::string name = cell.substr(at, end - at);
            if (const std::optional<std::size_t> member = names_.memberNamed(name)) {
                answers.zeros[*member] = true;
            } else {
                noteCell(row, column, phrase::kCellNoMember, name);
            }
            at = cell.find_first_not_of(kBetween, end);
        }
    }

    std::optional<double> valueIn(const std::string& cell, std::size_t row, std::size_t column) {
        const std::string plain = numberIn(cell);
        const bool isLength = std::holds_alternative<AskDisplacement>(
            exercise_.questions[places_[column].index].what);
        const Outcome<double> value =
            isLength ? readLength(plain, truss_.units.displacement) : readNumber(plain);
        if (!value) {
            noteCell(row, column, phrase::kCellNotNumber, cell);
        }
        return value ? std::optional(value.value()) : std::nullopt;
    }

    void keep(ClassRow row, bool isOfAnother) {
        if (isOfAnother) {
            return note(placeOfRow(row.number), phrase::kRowOfAnother);
        }
        if (isBlankSheet(row.answers)) {
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

    const Truss& truss_;
    const Exercise& exercise_;
    const std::string& mark_;
    ClassRows which_;
    Structure structure_;
    ColumnNames names_;
    CsvRow headings_;
    std::vector<ColumnPlace> places_; // of each heading
    bool hasAnswers_ = false;
    std::map<std::string, std::size_t> rowOfCode_;
    ClassList list_;
};

} // namespace

Outcome<ClassList> readClassList(const Truss& truss, const Exercise& exercise,
                                 const std::string& mark, std::string_view table, ClassRows which) {
    return ClassReader(truss, exercise, mark, which).read(table);
}

} // namespace gusset
