// The table of loads, which holds loads of every kind.
#include "app/fields/cell_text.hpp"
#include "app/fields/column_access.hpp"
#include "app/fields/load_text.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/columns.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/table_view.hpp"

#include <cmath>

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

const Load& loadIn(const Truss& truss, std::size_t row) { return truss.loads[row]; }

CellValue writeFirst(const Truss& truss, std::size_t row) {
    const Load& load = loadIn(truss, row);
    if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
        return std::abs(chord->perLength);
    }
    if (std::holds_alternative<SelfWeight>(load.what)) {
        return weightOf(truss);
    }
    return isByParts(load) ? std::abs(arrowForce(load)->x) : forceSizeOf(load);
}

CellValue writeSecond(const Truss& truss, std::size_t row) {
    const Load& load = loadIn(truss, row);
    return isByParts(load) ? CellValue(std::abs(arrowForce(load)->y))
                           : numberOrNothing(degreesOf(load));
}

std::string lookOfFirst(const Truss& truss, std::size_t row) {
    const Load& load = loadIn(truss, row);
    if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
        return perLengthText(truss, chord->perLength);
    }
    return isByParts(load) ? partLook(truss, load, false) : "";
}

std::string lookOfSecond(const Truss& truss, std::size_t row) {
    const Load& load = loadIn(truss, row);
    return isByParts(load) ? partLook(truss, load, true) : directionLook(truss, load);
}

bool isOnJoint(const Truss& truss, std::size_t row) { return jointOf(loadIn(truss, row)).valid(); }
bool hasSize(const Truss& truss, std::size_t row) { return canTypeFigure(loadIn(truss, row)); }
bool hasDirection(const Truss& truss, std::size_t row) {
    return arrowForce(loadIn(truss, row)).has_value();
}

Outcome<Edit> readFirst(const Truss& truss, int row, const std::string& text) {
    const LoadId id{row};
    const Load& load = truss.loads[id.at()];
    const Outcome<double> number = readForce(text, truss.units.force);
    if (number && isByParts(load)) {
        return Edit(SetLoad{id, withPart(load, false, number.value())});
    }
    const Outcome<Load> typed = withTypedForce(truss, load, text);
    return typed ? Outcome<Edit>(SetLoad{id, typed.value()}) : typed.issues();
}

// "5 @ 30°" or "3, -4" in either cell sets the whole force.
Outcome<Edit> readSecond(const Truss& truss, int row, const std::string& text) {
    const LoadId id{row};
    const Load& load = truss.loads[id.at()];
    const bool part = isByParts(load);
    const Outcome<double> number = part ? readForce(text, truss.units.force) : readAngle(text);
    if (number) {
        return Edit(SetLoad{id, part ? withPart(load, true, number.value())
                                     : withDirection(load, number.value())});
    }
    const Outcome<TypedVector> whole = readForceVector(text, truss.units.force);
    return whole ? readFirst(truss, row, text) : number.issues();
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
    load.caseId = caseIdOf(name);
    return Edit(SetLoad{id, load});
}

CellValue writeLoadJoint(const Truss& truss, std::size_t row) {
    return jointLabel(truss, jointOf(truss.loads[row]));
}

CellValue writeCase(const Truss& truss, std::size_t row) {
    return std::string(caseNameOf(truss.loads[row].caseId));
}

constexpr std::array kLoadColumns{
    wordColumn("joint", phrase::kCellJoint, {phrase::kLoadAt, 80}, writeLoadJoint, readLoadJoint,
               {.hint = phrase::kCellJoint, .canType = isOnJoint}),
    numberColumn("first", phrase::kCellSize, ColumnUnit::Force, {phrase::kCellSize, 72}, writeFirst,
                 readFirst, {.picked = phrase::kCellSize, .canType = hasSize, .look = lookOfFirst}),
    numberColumn("second", phrase::kCellDirection, ColumnUnit::None, {phrase::kCellDirection, 72},
                 writeSecond, readSecond,
                 {.picked = phrase::kAtSign, .canType = hasDirection, .look = lookOfSecond}),
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
