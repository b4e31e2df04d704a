#include "app/fields/columns.hpp"

#include "app/fields/cell_text.hpp"
#include "model/quantity/quantity_input.hpp"

#include <array>

namespace gusset {
namespace {

constexpr std::array kInOrder{0, 1, 2, 3, 4};
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
    const JointId joint{row};
    const bool isNew = joint.at() >= truss.joints.size();
    Vec2 at = isNew ? Vec2{} : truss.joints[joint.at()].at;
    at.*kPart = number.value();
    return isNew ? Edit(AddJoint{at}) : Edit(MoveJoint{joint, at});
}

constexpr std::array kJointColumns{
    CellColumn{.key = "label",
               .name = "label",
               .pageHeading = "joint",
               .notebook = {"joint", 64},
               .write = [](const Truss& truss, std::size_t row) -> CellValue {
                   return truss.joints[row].label;
               },
               .read = readLabel},
    CellColumn{.key = "x",
               .name = "x",
               .unit = ColumnUnit::Length,
               .form = CellForm::Number,
               .hint = "x",
               .pageHeading = "x",
               .notebook = {"x", 70},
               .picked = "x",
               .write = writeCoordinate<&Vec2::x>,
               .read = readCoordinate<&Vec2::x>},
    CellColumn{.key = "y",
               .name = "y",
               .unit = ColumnUnit::Length,
               .form = CellForm::Number,
               .hint = "y",
               .pageHeading = "y",
               .notebook = {"y", 70},
               .picked = "y",
               .write = writeCoordinate<&Vec2::y>,
               .read = readCoordinate<&Vec2::y>},
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
    CellColumn{.key = "ends",
               .name = "ends",
               .hint = "A–B",
               .pageHeading = "member",
               .notebook = {"member", 70, 1.2},
               .write = writeEnds,
               .read = readMemberEnds},
    CellColumn{.key = "section",
               .name = "section",
               .mayBeEmpty = true,
               .pageHeading = "section",
               .notebook = {"section", 74, 1.2},
               .write = [](const Truss& truss, std::size_t row) -> CellValue {
                   return truss.members[row].section;
               },
               .read = readMemberSection},
    CellColumn{.key = "warming",
               .name = "warming",
               .unit = ColumnUnit::Kelvin,
               .form = CellForm::Number,
               .mayBeEmpty = true,
               .pageHeading = "warming",
               .notebook = {"ΔT", 52, 0.8},
               .write = writeStrain<&Member::warming>,
               .read = readStrain<&Member::warming>},
    CellColumn{.key = "misfit",
               .name = "misfit",
               .unit = ColumnUnit::Displacement,
               .form = CellForm::Number,
               .mayBeEmpty = true,
               .pageHeading = "misfit",
               .notebook = {"misfit", 74, 0.8},
               .write = writeStrain<&Member::misfit>,
               .read = readStrain<&Member::misfit>},
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

constexpr std::array kSupportColumns{
    CellColumn{.key = "joint",
               .name = "joint",
               .hint = "joint",
               .pageHeading = "joint",
               .notebook = {"support", 58},
               .write = [](const Truss& truss, std::size_t row) -> CellValue {
                   return jointLabel(truss, truss.supports[row].joint);
               },
               .read = readSupportJoint},
    CellColumn{.key = "direction",
               .name = "direction",
               .unit = ColumnUnit::Degrees,
               .form = CellForm::Number,
               .pageHeading = "reaction at",
               .notebook = {.heading = "pushes at", .least = 70, .namesUnit = false},
               .picked = "pushes at",
               .write = [](const Truss& truss, std::size_t row) -> CellValue {
                   return isRoller(truss, row) ? CellValue(truss.supports[row].reaction)
                                               : CellValue();
               },
               .read = readDirection,
               .canType = isRoller},
    CellColumn{.key = "settle",
               .name = "settlement",
               .unit = ColumnUnit::Displacement,
               .form = CellForm::Numbers,
               .mayBeEmpty = true,
               .pageHeading = "settlement",
               .notebook = {.heading = "settles", .least = 76, .orders = false, .atRight = true},
               .write = [](const Truss& truss, std::size_t row) -> CellValue {
                   return settleText(truss.supports[row]);
               },
               .read = readSettlement},
    CellColumn{.key = "kind",
               .name = "kind",
               .pageHeading = "kind",
               .notebook = {"kind", 88},
               .write = [](const Truss& truss, std::size_t row) -> CellValue {
                   return isRoller(truss, row) ? "roller" : "pin";
               }},
};

constexpr ModelTable kJoints{
    .one = "joint",
    .plural = "Joints",
    .find = "find a joint",
    .columns = kJointColumns,
    .inNotebook = {kInOrder.data(), kJointColumns.size()},
    .rows = [](const Truss& truss) { return static_cast<int>(truss.joints.size()); },
    .remove = [](int row) { return Edit(Remove{Things{.joints = {JointId{row}}}}); }};
constexpr ModelTable kMembers{
    .one = "member",
    .plural = "Members",
    .find = "find a member or a section",
    .columns = kMemberColumns,
    .inNotebook = {kInOrder.data(), kMemberColumns.size()},
    .rows = [](const Truss& truss) { return static_cast<int>(truss.members.size()); },
    .remove = [](int row) { return Edit(Remove{Things{.members = {MemberId{row}}}}); }};
constexpr ModelTable kSupports{
    .one = "support",
    .plural = "Supports",
    .find = "find a joint",
    .columns = kSupportColumns,
    .inNotebook = kKindBeforeDirection,
    .rows = [](const Truss& truss) { return static_cast<int>(truss.supports.size()); },
    .remove = [](int row) { return Edit(Remove{Things{.supports = {SupportId{row}}}}); }};

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

const ModelTable& jointTable() { return kJoints; }
const ModelTable& memberTable() { return kMembers; }
const ModelTable& supportTable() { return kSupports; }

const ModelTable& modelTable(CellTable table) {
    switch (table) {
    case CellTable::Joints:
        return kJoints;
    case CellTable::Members:
        return kMembers;
    case CellTable::Supports:
        return kSupports;
    case CellTable::Loads:
        return loadTable();
    case CellTable::Materials:
        return materialTable();
    case CellTable::Sections:
        break;
    }
    return sectionTable();
}

const CellColumn& columnOf(const Cell& cell) {
    return modelTable(cell.table).columns[static_cast<std::size_t>(cell.column)];
}

} // namespace gusset
