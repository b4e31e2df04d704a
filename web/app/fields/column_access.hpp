#pragma once
// The parts that the tables of columns are built from, for the files that define them.

#include "app/fields/columns.hpp"
#include "app/state/thing.hpp"

#include <array>
#include <optional>

namespace gusset {

inline constexpr std::array kInOrder{0, 1, 2, 3, 4};
constexpr std::span<const int> inOrder(std::span<const CellColumn> columns) {
    return std::span(kInOrder).first(columns.size());
}

constexpr CellColumn wordColumn(std::string_view key, Phrase<> name, NotebookLook notebook,
                                WriteCell write, ReadCell read = nullptr, ColumnMore more = {}) {
    return {key, name, CellForm::Words, ColumnUnit::None, notebook, write, read, more};
}
constexpr CellColumn numberColumn(std::string_view key, Phrase<> name, ColumnUnit unit,
                                  NotebookLook notebook, WriteCell write, ReadCell read,
                                  ColumnMore more = {}) {
    return {key, name, CellForm::Number, unit, notebook, write, read, more};
}
constexpr CellColumn numbersColumn(std::string_view key, Phrase<> name, ColumnUnit unit,
                                   NotebookLook notebook, WriteCell write, ReadCell read,
                                   ColumnMore more = {}) {
    return {key, name, CellForm::Numbers, unit, notebook, write, read, more};
}

template <auto kList>
int countOf(const Truss& truss) {
    return static_cast<int>((truss.*kList).size());
}

// The item in that row; in the row past the end, a new one.
template <auto kList>
auto thingIn(const Truss& truss, int row) {
    const auto& things = truss.*kList;
    const auto at = static_cast<std::size_t>(row);
    return at < things.size() ? things[at] : typename std::decay_t<decltype(things)>::value_type{};
}

template <auto kList, auto kWords>
CellValue writeWords(const Truss& truss, std::size_t row) {
    return (truss.*kList)[row].*kWords;
}

template <class Id>
Edit removeThing(int row) {
    return Remove{thingsOf(Id{row})};
}

inline CellValue numberOrNothing(std::optional<double> number) {
    return number ? CellValue(*number) : CellValue();
}

extern const ModelTable kLoadTable;
extern const ModelTable kMaterialTable;
extern const ModelTable kSectionTable;

} // namespace gusset
