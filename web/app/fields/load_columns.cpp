// The table of loads, which holds loads of every kind.
#include "app/fields/cell_text.hpp"
#include "app/fields/column_access.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/columns.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/table_view.hpp"

namespace gusset {
namespace {

double sizeToBeginWith(const Truss& truss) {
    for (auto load = truss.loads.rbegin(); load != truss.loads.rend(); ++load) {
        if (const std::optional<Vec2> force = forceOf(*load); force && length(*force) > 0) {
            return length(*force);
        }
    }
    return 10;
}

// The number of a load in that column; null: none.
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
    return numberOrNothing(number ? std::optional(*number) : std::nullopt);
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
    // "5 @ 30°" or "3, -4" in either cell sets the whole force.
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

CellValue writeLoadJoint(const Truss& truss, std::size_t row) {
    return jointLabel(truss, jointOf(truss.loads[row]));
}

CellValue writeCase(const Truss& truss, std::size_t row) {
    const std::string& id = truss.loads[row].caseId;
    return id.empty() ? kDefaultCase : id;
}

constexpr std::array kLoadColumns{
    wordColumn("joint", phrase::kCellJoint, {phrase::kLoadAt, 64}, writeLoadJoint, readLoadJoint,
               {.hint = phrase::kCellJoint, .canType = isOnJoint}),
    numberColumn("first", phrase::kForceRight, ColumnUnit::Force, {phrase::kRightOrSize, 80},
                 writeLoadNumber<column::kLoadFirst>, readLoadNumber<column::kLoadFirst>,
                 {.onPage = phrase::kRightOrSizeInWords,
                  .picked = phrase::kRightSign,
                  .canType = hasNumber<column::kLoadFirst>}),
    numberColumn("second", phrase::kForceUp, ColumnUnit::Force, {phrase::kUpOrAngle, 80},
                 writeLoadNumber<column::kLoadSecond>, readLoadNumber<column::kLoadSecond>,
                 {.onPage = phrase::kUpOrAngleInWords,
                  .picked = phrase::kUpSign,
                  .canType = hasNumber<column::kLoadSecond>}),
    wordColumn("case", phrase::kCellCase, {phrase::kCellCase, 60}, writeCase, readCase),
};

} // namespace

const ModelTable kLoadTable{"load",
                            phrase::kHeadLoads,
                            phrase::kRowOfLoad,
                            phrase::kNewLoad,
                            phrase::kFindJointOrCase,
                            kLoadColumns,
                            inOrder(kLoadColumns),
                            countOf<&Truss::loads>,
                            removeThing<LoadId>};

} // namespace gusset
