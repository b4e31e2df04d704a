#include "app/fields/columns.hpp"
#include "app/fields/field.hpp"

namespace gusset {
namespace {

ExtraKeys keysOfCell(const Cell& cell) {
    switch (columnOf(cell).unit) {
    case ColumnUnit::Length:
    case ColumnUnit::Displacement:
    case ColumnUnit::Degrees:
    case ColumnUnit::Kelvin:
        return {.sign = true};
    case ColumnUnit::Force:
        return {.sign = true, .angle = cell.table == CellTable::Loads};
    case ColumnUnit::None:
    case ColumnUnit::Stress:
    case ColumnUnit::Area:
    case ColumnUnit::KilogramsPerCubicMetre:
    case ColumnUnit::MillionthsPerKelvin:
        break;
    }
    return {};
}

struct KeysOf {
    ExtraKeys operator()(const Cell& cell) const { return keysOfCell(cell); }
    ExtraKeys operator()(const PickedCell& picked) const { return keysOfCell(picked.cell); }
    ExtraKeys operator()(const LoadField&) const { return {.sign = true, .angle = true}; }
    ExtraKeys operator()(const ListField& field) const {
        return {.sign = field.kind == ListFieldKind::Factor};
    }
    ExtraKeys operator()(SeveralKind kind) const { return {.sign = kind == SeveralKind::Warm}; }
    template <class Other>
    ExtraKeys operator()(const Other&) const {
        return {};
    }
};

} // namespace

ExtraKeys extraKeys(const FieldId& field) { return std::visit(KeysOf{}, field); }

} // namespace gusset
