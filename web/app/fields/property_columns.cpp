// The tables of what members are made of: materials and sections.
#include "app/fields/cell_text.hpp"
#include "app/fields/columns.hpp"
#include "model/catalogue/section_properties.hpp"
#include "model/quantity/quantity_input.hpp"

#include <array>
#include <optional>

namespace gusset {
namespace {

constexpr std::array kPropertiesInOrder{0, 1, 2, 3, 4};
constexpr double kMillion = 1e6;

// The one in that row; in the row at the end a new one.
template <class Thing>
Thing thingIn(const std::vector<Thing>& things, int row) {
    const auto at = static_cast<std::size_t>(row);
    return at < things.size() ? things[at] : Thing{};
}

Outcome<Edit> readMaterialId(const Truss& truss, int row, const std::string& text) {
    Material material = thingIn(truss.materials, row);
    material.id = trimmed(text);
    return Edit(SetMaterial{row, material});
}

template <std::optional<double> Material::*kValue>
CellValue writeProperty(const Truss& truss, std::size_t row) {
    const std::optional<double> value = truss.materials[row].*kValue;
    const double shown = kValue == &Material::alpha ? kMillion : 1;
    return value ? CellValue(*value * shown) : CellValue();
}

template <std::optional<double> Material::*kValue>
Outcome<Edit> readProperty(const Truss& truss, int row, const std::string& text) {
    constexpr bool kStress = kValue == &Material::E || kValue == &Material::strength;
    Material material = thingIn(truss.materials, row);
    material.*kValue = std::nullopt;
    if (!trimmed(text).empty()) {
        const Outcome<double> number =
            kStress ? readStress(text, truss.units.stress) : readNumber(text);
        if (!number) {
            return number.issues();
        }
        const bool millionths = kValue == &Material::alpha;
        material.*kValue = millionths ? number.value() / kMillion : number.value();
    }
    return Edit(SetMaterial{row, material});
}

constexpr std::array kMaterialColumns{
    CellColumn{.key = "id",
               .name = "name",
               .hint = "name",
               .pageHeading = "material",
               .notebook = {"material", 58},
               .write = [](const Truss& truss, std::size_t row) -> CellValue {
                   return truss.materials[row].id;
               },
               .read = readMaterialId},
    CellColumn{.key = "E",
               .name = "E",
               .unit = ColumnUnit::Stress,
               .form = CellForm::Number,
               .mayBeEmpty = true,
               .pageHeading = "E",
               .notebook = {"E", 72},
               .write = writeProperty<&Material::E>,
               .read = readProperty<&Material::E>},
    CellColumn{.key = "strength",
               .name = "strength",
               .unit = ColumnUnit::Stress,
               .form = CellForm::Number,
               .mayBeEmpty = true,
               .pageHeading = "strength",
               .notebook = {.heading = "strength", .least = 60, .namesUnit = false},
               .write = writeProperty<&Material::strength>,
               .read = readProperty<&Material::strength>},
    CellColumn{.key = "density",
               .name = "density",
               .unit = ColumnUnit::KilogramsPerCubicMetre,
               .form = CellForm::Number,
               .mayBeEmpty = true,
               .pageHeading = "density",
               .notebook = {.heading = "kg/m³", .least = 50, .namesUnit = false},
               .write = writeProperty<&Material::density>,
               .read = readProperty<&Material::density>},
    CellColumn{.key = "alpha",
               .name = "α",
               .unit = ColumnUnit::MillionthsPerKelvin,
               .form = CellForm::Number,
               .mayBeEmpty = true,
               .pageHeading = "α",
               .notebook = {"α", 70},
               .write = writeProperty<&Material::alpha>,
               .read = readProperty<&Material::alpha>},
};

Outcome<Edit> readSectionId(const Truss& truss, int row, const std::string& text) {
    Section section = thingIn(truss.sections, row);
    section.id = trimmed(text);
    return Edit(SetSection{row, section});
}

Outcome<Edit> readSectionMaterial(const Truss& truss, int row, const std::string& text) {
    Section section = thingIn(truss.sections, row);
    section.material = trimmed(text);
    return Edit(SetSection{row, section});
}

Outcome<Edit> readMake(const Truss& truss, int row, const std::string& text) {
    Outcome<Section> made = madeOf(thingIn(truss.sections, row), text);
    return made ? Outcome<Edit>(SetSection{row, std::move(made).value()})
                : Outcome<Edit>(made.issues());
}

CellValue writeArea(const Truss& truss, std::size_t row) {
    const std::optional<double> area = propertiesOf(truss.sections[row]).area;
    return area ? CellValue(*area) : CellValue();
}

constexpr std::array kSectionColumns{
    CellColumn{.key = "id",
               .name = "name",
               .hint = "name",
               .pageHeading = "section",
               .notebook = {"section", 58},
               .write = [](const Truss& truss, std::size_t row) -> CellValue {
                   return truss.sections[row].id;
               },
               .read = readSectionId},
    CellColumn{.key = "material",
               .name = "material",
               .mayBeEmpty = true,
               .pageHeading = "material",
               .notebook = {"material", 60},
               .write = [](const Truss& truss, std::size_t row) -> CellValue {
                   return truss.sections[row].material;
               },
               .read = readSectionMaterial},
    CellColumn{.key = "make",
               .name = "made as",
               .form = CellForm::Numbers,
               .pageHeading = "made as",
               .notebook = {"made as", 118, 3},
               .write = [](const Truss& truss, std::size_t row) -> CellValue {
                   return makeText(truss.sections[row]);
               },
               .read = readMake},
    CellColumn{.key = "area", // which follows from how it is made
               .name = "area",
               .unit = ColumnUnit::Area,
               .form = CellForm::Number,
               .notebook = {"A", 62, 0.6},
               .write = writeArea},
};

constexpr ModelTable kMaterials{
    .one = "material",
    .plural = "Materials",
    .find = "find a material",
    .columns = kMaterialColumns,
    .inNotebook = {kPropertiesInOrder.data(), kMaterialColumns.size()},
    .rows = [](const Truss& truss) { return static_cast<int>(truss.materials.size()); },
    .remove = [](int row) { return Edit(RemoveMaterial{row}); }};
constexpr ModelTable kSections{
    .one = "section",
    .plural = "Sections",
    .find = "find a section",
    .columns = kSectionColumns,
    .inNotebook = {kPropertiesInOrder.data(), kSectionColumns.size()},
    .rows = [](const Truss& truss) { return static_cast<int>(truss.sections.size()); },
    .remove = [](int row) { return Edit(RemoveSection{row}); }};

} // namespace

const ModelTable& materialTable() { return kMaterials; }
const ModelTable& sectionTable() { return kSections; }

} // namespace gusset
