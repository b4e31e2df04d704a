#include "model/catalogue/grades.hpp"

#include "core/number.hpp"

#include <algorithm>
#include <array>
#include <iterator>

namespace gusset {

namespace {

constexpr double kAnyThickness = 1e3; // mm: far beyond what is rolled

constexpr std::array<StrengthBand, 2> kS235{{{40, 235, 360}, {80, 215, 360}}};
constexpr std::array<StrengthBand, 2> kS275{{{40, 275, 430}, {80, 255, 410}}};
constexpr std::array<StrengthBand, 2> kS355{{{40, 355, 490}, {80, 335, 470}}};
constexpr std::array<StrengthBand, 2> kS420{{{40, 420, 520}, {80, 390, 520}}};
constexpr std::array<StrengthBand, 2> kS460{{{40, 460, 540}, {80, 430, 540}}};
constexpr std::array<StrengthBand, 1> kA36{{{kAnyThickness, 36, 58}}};
constexpr std::array<StrengthBand, 1> kA992{{{kAnyThickness, 50, 65}}};
constexpr std::array<StrengthBand, 1> kA500B{{{kAnyThickness, 46, 58}}};
constexpr std::array<StrengthBand, 1> kA500BRound{{{kAnyThickness, 42, 58}}};
constexpr std::array<StrengthBand, 1> kA500C{{{kAnyThickness, 50, 62}}};
constexpr std::array<StrengthBand, 1> kA500CRound{{{kAnyThickness, 46, 62}}};
constexpr std::array<StrengthBand, 1> kA53{{{kAnyThickness, 35, 60}}};

constexpr std::array<SteelGrade, 12> kSteels{{
    {"S235", false, kS235},
    {"S275", false, kS275},
    {"S355", false, kS355},
    {"S420N", false, kS420},
    {"S460N", false, kS460},
    {"A36", true, kA36},
    {"A992", true, kA992},
    {"A500 Gr. B", true, kA500B},
    {"A500 Gr. B round", true, kA500BRound},
    {"A500 Gr. C", true, kA500C},
    {"A500 Gr. C round", true, kA500CRound},
    {"A53 Gr. B", true, kA53},
}};

constexpr std::array<TimberClass, 12> kTimbers{{
    {"C16", 8.5, 17, 8, 5.4, 370},
    {"C18", 10, 18, 9, 6, 380},
    {"C20", 11.5, 19, 9.5, 6.4, 400},
    {"C22", 13, 20, 10, 6.7, 410},
    {"C24", 14.5, 21, 11, 7.4, 420},
    {"C27", 16.5, 22, 11.5, 7.7, 430},
    {"C30", 19, 24, 12, 8, 460},
    {"C35", 22.5, 25, 13, 8.7, 470},
    {"C40", 26, 27, 14, 9.4, 480},
    {"GL24h", 19.2, 24, 11.5, 9.6, 420},
    {"GL28h", 22.3, 28, 12.6, 10.5, 460},
    {"GL30h", 24, 30, 13.6, 11.3, 480},
}};

template <class Grades>
auto findIn(const Grades& grades, std::string_view name) {
    const auto found = std::find_if(grades.begin(), grades.end(),
                                    [&](const auto& grade) { return grade.name == name; });
    return found == grades.end() ? nullptr : &*found;
}

} // namespace

std::span<const SteelGrade> steelGrades() { return kSteels; }
std::span<const TimberClass> timberClasses() { return kTimbers; }

const SteelGrade* findSteelGrade(std::string_view name) { return findIn(kSteels, name); }
const TimberClass* findTimberClass(std::string_view name) { return findIn(kTimbers, name); }

std::optional<Material> steelOf(const SteelGrade& grade, double thickness, const Units& units) {
    const auto band =
        std::find_if(grade.bands.begin(), grade.bands.end(),
                     [&](const StrengthBand& it) { return thickness <= it.thickest; });
    if (band == grade.bands.end()) {
        return std::nullopt;
    }
    const StressUnit unit = grade.inKsi ? StressUnit::ksi : StressUnit::MPa;
    Material steel;
    steel.id = grade.name;
    if (band != grade.bands.begin()) {
        steel.id += " over " + shortestNumber(std::prev(band)->thickest) + " mm";
    }
    steel.E = converted(grade.inKsi ? 29000 : 210000, unit, units.stress);
    steel.strength = converted(band->yield, unit, units.stress);
    steel.ultimate = converted(band->ultimate, unit, units.stress);
    steel.density = 7850; // EN 1991-1-1:2002, table A.4; AISC: 490 lb/ft³
    steel.alpha = 12e-6;  // EN 1993-1-1, 3.2.6; AISC: 6.5e-6 per °F
    return steel;
}

Material timberOf(const TimberClass& it, const Units& units) {
    Material timber;
    timber.id = it.name;
    timber.E = converted(it.modulus, StressUnit::GPa, units.stress);
    timber.density = it.density;
    timber.alpha = 5e-6; // along the grain, common practice
    timber.tension = converted(it.tension, StressUnit::MPa, units.stress);
    timber.compression = converted(it.compression, StressUnit::MPa, units.stress);
    timber.E05 = converted(it.modulus05, StressUnit::GPa, units.stress);
    return timber;
}

} // namespace gusset
