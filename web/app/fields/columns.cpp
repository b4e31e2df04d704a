#include "app/fields/columns.hpp"

#include "app/fields/cell_text.hpp"
#include "app/fields/column_access.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/columns.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/table_view.hpp"

namespace gusset {
namespace {

constexpr std::array kKindBeforeDirection{0, column::kSupportKind, column::kSupportDirection,
                                          column::kSupportSettle};

// Joints.

Outcome<Edit> readLabel(const Truss&, int row, const std::string& text) {
    return Edit(RenameJoint{JointId{row}, trimmed(text)});
}

template <double Vec2::*kPart>
CellValue writeCoordinate(const Truss& truss, std::size_t row) {
    return truss.joints[row].at.*kPart;
}

template <double Vec2::*kPart>
Outcome<Edit> readCoordinate(const Truss& truss, int row, const std::string& text) {
    const Outcome<double> number = readLength(text, truss.units.length);
    if (!number) {
        return number.issues();
    }
    Vec2 at = thingIn<&Truss::joints>(truss, row).at;
    at.*kPart = number.value();
    return row < countOf<&Truss::joints>(truss) ? Edit(MoveJoint{JointId{row}, at})
                                                : Edit(AddJoint{at});
}

constexpr std::array kJointColumns{
    wordColumn("label", phrase::kCellLabel, {phrase::kCellJoint, 64},
               writeWords<&Truss::joints, &Joint::label>, readLabel,
               {.onPage = phrase::kCellJoint}),
    numberColumn("x", phrase::kCellX, ColumnUnit::Length, {phrase::kCellX, 70},
                 writeCoordinate<&Vec2::x>, readCoordinate<&Vec2::x>,
                 {.hint = phrase::kCellX, .picked = phrase::kCellX}),
    numberColumn("y", phrase::kCellY, ColumnUnit::Length, {phrase::kCellY, 70},
                 writeCoordinate<&Vec2::y>, readCoordinate<&Vec2::y>,
                 {.hint = phrase::kCellY, .picked = phrase::kCellY}),
};

// Members.

CellValue writeEnds(const Truss& truss, std::size_t row) {
    return jointLabel(truss, truss.members[row].a) + "–" + jointLabel(truss, truss.members[row].b);
}

Outcome<Edit> readMemberEnds(const Truss& truss, int row, const std::string& text) {
    const auto ends = readEnds(truss, text);
    if (!ends) {
        return ends.issues();
    }
    const auto [a, b] = ends.value();
    const MemberId id{row};
    if (id.at() >= truss.members.size()) {
        return Edit(DrawMember{{a, {}}, {b, {}}});
    }
    Member member = truss.members[id.at()];
    member.a = a;
    member.b = b;
    return Edit(SetMember{id, member});
}

Outcome<Edit> readMemberSection(const Truss& truss, int row, const std::string& text) {
    const MemberId id{row};
    Member member = truss.members[id.at()];
    member.section = trimmed(text);
    return Edit(SetMember{id, member});
}

template <double Member::*kStrain>
CellValue writeStrain(const Truss& truss, std::size_t row) {
    const double value = truss.members[row].*kStrain;
    return value == 0 ? CellValue() : CellValue(value);
}

template <double Member::*kStrain>
Outcome<Edit> readStrain(const Truss& truss, int row, const std::string& text) {
    const bool isLength = kStrain == &Member::misfit;
    const MemberId id{row};
    Member member = truss.members[id.at()];
    member.*kStrain = 0;
    if (!trimmed(text).empty()) {
        const Outcome<double> number =
            isLength ? readLength(text, truss.units.displacement) : readNumber(text);
        if (!number) {
            return number.issues();
        }
        member.*kStrain = number.value();
    }
    return Edit(SetMember{id, member});
}

constexpr std::array kMemberColumns{
    wordColumn("ends", phrase::kCellEnds, {phrase::kCellMember, 70, 1.2}, writeEnds, readMemberEnds,
               {.hint = phrase::kEndsHint, .onPage = phrase::kCellMember}),
    wordColumn("section", phrase::kCellSection, {phrase::kCellSection, 74, 1.2},
               writeWords<&Truss::members, &Member::section>, readMemberSection,
               {.mayBeEmpty = true}),
    numberColumn("warming", phrase::kCellWarming, ColumnUnit::Kelvin,
                 {phrase::kWarmingSign, 52, 0.8}, writeStrain<&Member::warming>,
                 readStrain<&Member::warming>, {.mayBeEmpty = true}),
    numberColumn("misfit", phrase::kCellMisfit, ColumnUnit::Displacement,
                 {phrase::kCellMisfit, 74, 0.8}, writeStrain<&Member::misfit>,
                 readStrain<&Member::misfit>, {.mayBeEmpty = true}),
};

// Supports.

bool isRoller(const Truss& truss, std::size_t row) {
    return truss.supports[row].kind == SupportKind::Roller;
}

Outcome<Edit> readSupportJoint(const Truss& truss, int row, const std::string& text) {
    const Outcome<JointId> joint = readJoint(truss, text);
    if (!joint) {
        return joint.issues();
    }
    const SupportId id{row};
    if (id.at() >= truss.supports.size()) {
        return Edit(SetSupport{joint.value(), SupportKind::Pin, 90});
    }
    Support support = truss.supports[id.at()];
    support.joint = joint.value();
    return Edit(ChangeSupport{id, support});
}

Outcome<Edit> readDirection(const Truss& truss, int row, const std::string& text) {
    const Outcome<double> angle = readAngle(text);
    if (!angle) {
        return angle.issues();
    }
    const SupportId id{row};
    Support support = truss.supports[id.at()];
    support.reaction = angle.value();
    return Edit(ChangeSupport{id, support});
}

Outcome<Edit> readSettlement(const Truss& truss, int row, const std::string& text) {
    const SupportId id{row};
    const Outcome<Support> support = settled(truss, truss.supports[id.at()], text);
    return support ? Outcome<Edit>(ChangeSupport{id, support.value()})
                   : Outcome<Edit>(support.issues());
}

CellValue writeSupportJoint(const Truss& truss, std::size_t row) {
    return jointLabel(truss, truss.supports[row].joint);
}

CellValue writeDirection(const Truss& truss, std::size_t row) {
    return isRoller(truss, row) ? CellValue(truss.supports[row].reaction) : CellValue();
}

CellValue writeSettlement(const Truss& truss, std::size_t row) {
    return settleText(truss.supports[row]);
}

// As the page's scripts know it (finish_field); phrases say it to people.
CellValue writeKind(const Truss& truss, std::size_t row) {
    return isRoller(truss, row) ? "roller" : "pin";
}

constexpr std::array kSupportColumns{
    wordColumn("joint", phrase::kCellJoint, {phrase::kCellSupport, 58}, writeSupportJoint,
               readSupportJoint, {.hint = phrase::kCellJoint}),
    numberColumn("direction", phrase::kCellDirection, ColumnUnit::Degrees,
                 {.heading = phrase::kReactionAt, .least = 70, .namesUnit = false}, writeDirection,
                 readDirection, {.canType = isRoller}),
    numbersColumn("settle", phrase::kCellSettlement, ColumnUnit::Displacement,
                  {.heading = phrase::kSettles, .least = 76, .orders = false, .atRight = true},
                  writeSettlement, readSettlement, {.mayBeEmpty = true}),
    wordColumn("kind", phrase::kCellKind, {phrase::kCellKind, 88}, writeKind),
};

constexpr ModelTable kJoints{"joint",
                             phrase::kHeadJoints,
                             phrase::kRowOfJoint,
                             phrase::kNewJoint,
                             phrase::kFindJoint,
                             kJointColumns,
                             inOrder(kJointColumns),
                             countOf<&Truss::joints>,
                             removeThing<JointId>};
constexpr ModelTable kMembers{"member",
                              phrase::kHeadMembers,
                              phrase::kRowOfMember,
                              phrase::kNewMember,
                              phrase::kFindMemberOrSection,
                              kMemberColumns,
                              inOrder(kMemberColumns),
                              countOf<&Truss::members>,
                              removeThing<MemberId>};
constexpr ModelTable kSupports{"support",
                               phrase::kHeadSupports,
                               phrase::kRowOfSupport,
                               phrase::kNewSupport,
                               phrase::kFindJoint,
                               kSupportColumns,
                               kKindBeforeDirection,
                               countOf<&Truss::supports>,
                               removeThing<SupportId>};

// In the order of CellTable.
constexpr std::array kTables{&kJoints,    &kMembers,       &kSupports,
                             &kLoadTable, &kMaterialTable, &kSectionTable};

} // namespace

std::string symbolOf(const Units& units, ColumnUnit unit) {
    const std::string section = symbolOf(units.section);
    switch (unit) {
    case ColumnUnit::Length:
        return symbolOf(units.length);
    case ColumnUnit::Displacement:
        return symbolOf(units.displacement);
    case ColumnUnit::Force:
        return symbolOf(units.force);
    case ColumnUnit::Stress:
        return symbolOf(units.stress);
    case ColumnUnit::Area:
        return section.empty() ? section : section + "²";
    case ColumnUnit::Degrees:
        return "°";
    case ColumnUnit::Kelvin:
        return "K";
    case ColumnUnit::KilogramsPerCubicMetre:
        return "kg/m³";
    case ColumnUnit::MillionthsPerKelvin:
        return "10⁻⁶/K";
    case ColumnUnit::None:
        break;
    }
    return "";
}

const ModelTable& modelTable(CellTable table) { return *kTables[static_cast<std::size_t>(table)]; }

const CellColumn& columnOf(const Cell& cell) {
    return modelTable(cell.table).columns[static_cast<std::size_t>(cell.column)];
}

} // namespace gusset
