// The table of loads, which holds loads of every kind.
#include "app/fields/cell_text.hpp"
#include "app/fields/columns.hpp"
#include "model/quantity/quantity_input.hpp"

#include <array>
#include <optional>

namespace gusset {
namespace {

constexpr std::array kFirstToCase{0, column::kLoadFirst, column::kLoadSecond, column::kLoadCase};

double sizeToBeginWith(const Truss& truss) {
    for (auto load = truss.loads.rbegin(); load != truss.loads.rend(); ++load) {
        if (const std::optional<Vec2> force = forceOf(*load); force && length(*force) > 0) {
            return length(*force);
        }
    }
    return 10;
}

// The number of a load that stands in that column; null: none does.
template <class AnyLoad>
auto numberIn(AnyLoad& load, int column) -> decltype(&std::get<JointForce>(load.what).fx) {
    const bool first = column == column::kLoadFirst;
    if (auto* force = std::get_if<JointForce>(&load.what)) {
        return first ? &force->fx : &force->fy;
    }
    if (auto* angled = std::get_if<AngledForce>(&load.what)) {
        return first ? &angled->size : &angled->angle;
    }
    auto* chord = std::get_if<ChordLoad>(&load.what);
    return chord && !first ? &chord->perLength : nullptr;
}

template <int kColumn>
CellValue writeLoadNumber(const Truss& truss, std::size_t row) {
    const double* number = numberIn(truss.loads[row], kColumn);
    return number ? CellValue(*number) : CellValue();
}

bool isOnJoint(const Truss& truss, std::size_t row) { return jointOf(truss.loads[row]).valid(); }

template <int kColumn>
bool hasNumber(const Truss& truss, std::size_t row) {
    return isOnJoint(truss, row) || numberIn(truss.loads[row], kColumn) != nullptr;
}

Load withForce(Load load, JointId joint, const TypedVector& typed) {
    if (typed.angled) {
        load.what = AngledForce{joint, typed.first, typed.second};
    } else {
        load.what = JointForce{joint, typed.first, typed.second};
    }
    return load;
}

template <int kColumn>
Outcome<Edit> readLoadNumber(const Truss& truss, int row, const std::string& text) {
    const LoadId id{row};
    Load load = truss.loads[id.at()];
    const bool angle =
        std::holds_alternative<AngledForce>(load.what) && kColumn == column::kLoadSecond;
    const Outcome<double> number = angle ? readAngle(text) : readForce(text, truss.units.force);
    if (number) {
        *numberIn(load, kColumn) = number.value();
        return Edit(SetLoad{id, load});
    }
    // "5 @ 30°" or "3, -4" in either cell gives the whole force.
    const Outcome<TypedVector> whole = readForceVector(text, truss.units.force);
    if (!whole || !jointOf(load).valid()) {
        return number.issues();
    }
    return Edit(SetLoad{id, withForce(load, jointOf(load), whole.value())});
}

Outcome<Edit> readLoadJoint(const Truss& truss, int row, const std::string& text) {
    const Outcome<JointId> joint = readJoint(truss, text);
    if (!joint) {
        return joint.issues();
    }
    const LoadId id{row};
    if (id.at() >= truss.loads.size()) {
        Load load;
        load.what = JointForce{joint.value(), 0, -sizeToBeginWith(truss)};
        return Edit(AddLoad{load});
    }
    Load load = truss.loads[id.at()];
    if (auto* force = std::get_if<JointForce>(&load.what)) {
        force->joint = joint.value();
    } else if (auto* angled = std::get_if<AngledForce>(&load.what)) {
        angled->joint = joint.value();
    }
    return Edit(SetLoad{id, load});
}

Outcome<Edit> readCase(const Truss& truss, int row, const std::string& text) {
    const LoadId id{row};
    Load load = truss.loads[id.at()];
    const std::string name = trimmed(text);
    load.caseId = name == kDefaultCase ? "" : name;
    return Edit(SetLoad{id, load});
}

constexpr std::array kLoadColumns{
    CellColumn{.key = "joint",
               .name = "joint",
               .hint = "joint",
               .pageHeading = "joint",
               .notebook = {"load at", 64},
               .write = [](const Truss& truss, std::size_t row) -> CellValue {
                   return jointLabel(truss, jointOf(truss.loads[row]));
               },
               .read = readLoadJoint,
               .canType = isOnJoint},
    CellColumn{.key = "first",
               .name = "force to the right",
               .unit = ColumnUnit::Force,
               .form = CellForm::Number,
               .pageHeading = "to the right, or size",
               .notebook = {"→ or size", 80},
               .picked = "→",
               .write = writeLoadNumber<column::kLoadFirst>,
               .read = readLoadNumber<column::kLoadFirst>,
               .canType = hasNumber<column::kLoadFirst>},
    CellColumn{.key = "second",
               .name = "force upwards",
               .unit = ColumnUnit::Force,
               .form = CellForm::Number,
               .pageHeading = "up, or @ angle",
               .notebook = {"↑ or angle", 80},
               .picked = "↑",
               .write = writeLoadNumber<column::kLoadSecond>,
               .read = readLoadNumber<column::kLoadSecond>,
               .canType = hasNumber<column::kLoadSecond>},
    CellColumn{.key = "case",
               .name = "case",
               .pageHeading = "case",
               .notebook = {"case", 60},
               .write = [](const Truss& truss, std::size_t row) -> CellValue {
                   const std::string& id = truss.loads[row].caseId;
                   return id.empty() ? kDefaultCase : id;
               },
               .read = readCase},
};

constexpr ModelTable kLoads{
    .one = "load",
    .plural = "Loads",
    .find = "find a joint or a case",
    .columns = kLoadColumns,
    .inNotebook = kFirstToCase,
    .rows = [](const Truss& truss) { return static_cast<int>(truss.loads.size()); },
    .remove = [](int row) { return Edit(Remove{Things{.loads = {LoadId{row}}}}); }};

} // namespace

const ModelTable& loadTable() { return kLoads; }

} // namespace gusset
