// The tables of materials and sections.
#include "app/fields/cell_text.hpp"
#include "app/fields/column_access.hpp"
#include "model/catalogue/section_properties.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/columns.hpp"
#include "phrases/results/checks.hpp"
#include "phrases/table_view.hpp"

namespace gusset {
namespace {

constexpr double kMillion = 1e6;

Outcome<Edit> readMaterialId(const Truss& truss, int row, const std::string& text) {
    Material material = thingIn<&Truss::materials>(truss, row);
    material.id = trimmed(text);
    return Edit(SetMaterial{row, material});
}

template <std::optional<double> Material::*kValue>
CellValue writeProperty(const Truss& truss, std::size_t row) {
    const std::optional<double> value = truss.materials[row].*kValue;
    const bool millionths = value && kValue == &Material::alpha;
    return numberOrNothing(millionths ? *value * kMillion : value);
}

template <std::optional<double> Material::*kValue>
Outcome<Edit> readProperty(const Truss& truss, int row, const std::string& text) {
    constexpr bool kStress = kValue == &Material::E || kValue == &Material::strength;
    Material material = thingIn<&Truss::materials>(truss, row);
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
    wordColumn("id", phrase::kCellName, {phrase::kCellMaterial, 58},
               writeWords<&Truss::materials, &Material::id>, readMaterialId,
               {.hint = phrase::kCellName, .onPage = phrase::kCellMaterial}),
    numberColumn("E", phrase::kModulusSign, ColumnUnit::Stress, {phrase::kModulusSign, 72},
                 writeProperty<&Material::E>, readProperty<&Material::E>, {.mayBeEmpty = true}),
    numberColumn("strength", phrase::kWordStrength, ColumnUnit::Stress,
                 {.heading = phrase::kWordStrength, .least = 60, .namesUnit = false},
                 writeProperty<&Material::strength>, readProperty<&Material::strength>,
                 {.mayBeEmpty = true}),
    numberColumn("density", phrase::kCellDensity, ColumnUnit::KilogramsPerCubicMetre,
                 {.heading = phrase::kDensityUnit, .least = 50, .namesUnit = false},
                 writeProperty<&Material::density>, readProperty<&Material::density>,
                 {.mayBeEmpty = true}),
    numberColumn("alpha", phrase::kExpansionSign, ColumnUnit::MillionthsPerKelvin,
                 {phrase::kExpansionSign, 70}, writeProperty<&Material::alpha>,
                 readProperty<&Material::alpha>, {.mayBeEmpty = true}),
};

template <std::string Section::*kWords>
Outcome<Edit> readSectionWords(const Truss& truss, int row, const std::string& text) {
    Section section = thingIn<&Truss::sections>(truss, row);
    section.*kWords = trimmed(text);
    return Edit(SetSection{row, section});
}

Outcome<Edit> readMake(const Truss& truss, int row, const std::string& text) {
    Outcome<Section> made = madeOf(thingIn<&Truss::sections>(truss, row), text);
    return made ? Outcome<Edit>(SetSection{row, std::move(made).value()})
                : Outcome<Edit>(made.issues());
}

CellValue writeMake(const Truss& truss, std::size_t row) { return makeText(truss.sections[row]); }

CellValue writeArea(const Truss& truss, std::size_t row) {
    return numberOrNothing(propertiesOf(truss.sections[row]).area);
}

constexpr std::array kSectionColumns{
    wordColumn("id", phrase::kCellName, {phrase::kCellSection, 58},
               writeWords<&Truss::sections, &Section::id>, readSectionWords<&Section::id>,
               {.hint = phrase::kCellName, .onPage = phrase::kCellSection}),
    wordColumn("material", phrase::kCellMaterial, {phrase::kCellMaterial, 60},
               writeWords<&Truss::sections, &Section::material>,
               readSectionWords<&Section::material>, {.mayBeEmpty = true}),
    numbersColumn("make", phrase::kCellMadeAs, ColumnUnit::None, {phrase::kCellMadeAs, 118, 3},
                  writeMake, readMake),
    // Follows from the dimensions.
    numberColumn("area", phrase::kLackArea, ColumnUnit::Area, {phrase::kAreaSign, 62, 0.6},
                 writeArea, nullptr, {.isOnPage = false}),
};

Edit removeMaterial(int row) { return RemoveMaterial{row}; }
Edit removeSection(int row) { return RemoveSection{row}; }

} // namespace

const ModelTable kMaterialTable{"material",
                                phrase::kHeadMaterials,
                                phrase::kRowOfMaterial,
                                phrase::kNewMaterial,
                                phrase::kFindMaterial,
                                kMaterialColumns,
                                inOrder(kMaterialColumns),
                                countOf<&Truss::materials>,
                                removeMaterial};
const ModelTable kSectionTable{"section",
                               phrase::kHeadSections,
                               phrase::kRowOfSection,
                               phrase::kNewSection,
                               phrase::kFindSection,
                               kSectionColumns,
                               inOrder(kSectionColumns),
                               countOf<&Truss::sections>,
                               removeSection};

} // namespace gusset
