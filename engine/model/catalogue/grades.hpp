#pragma once
// Grades of steel and strength classes of timber as materials of a model. Nominal values from
// standards, from memory; the material actually used has its own certificate. Anything else, such
// as aluminium, is typed.

#include "model/truss/truss.hpp"

#include <optional>
#include <span>
#include <string_view>

namespace gusset {

struct StrengthBand {
    double thickest = 0; // mm, up to and including
    double yield = 0;    // MPa, or ksi
    double ultimate = 0;
};
// S235 to S460N: EN 1993-1-1:2005 with AC:2009, table 3.1 (EN 10025-2, -3), E = 210 GPa; the
// others: AISC Steel Construction Manual, 15th ed., tables 2-4 and 2-5, E = 29,000 ksi.
struct SteelGrade {
    std::string_view name;
    bool inKsi = false;
    std::span<const StrengthBand> bands; // by rising thickness
};
[[nodiscard]] std::span<const SteelGrade> steelGrades();
[[nodiscard]] const SteelGrade* findSteelGrade(std::string_view name); // null: no such grade
// For the largest thickness of the elements of a section, mm; nothing beyond the table's. Where the
// strength is that of a thicker band, the name says so: "S355 over 40 mm".
[[nodiscard]] std::optional<Material> steelOf(const SteelGrade&, double thickness, const Units&);

// EN 338:2016, table 1 (C), and EN 14080:2013, table 5 (GL, homogeneous).
struct TimberClass {
    std::string_view name;
    double tension = 0;     // f_t,0,k, MPa
    double compression = 0; // f_c,0,k, MPa
    double modulus = 0;     // E_0,mean, GPa
    double modulus05 = 0;   // E_0,05, GPa
    double density = 0;     // mean, kg/m³
};
[[nodiscard]] std::span<const TimberClass> timberClasses();
[[nodiscard]] const TimberClass* findTimberClass(std::string_view name); // null: no such class
[[nodiscard]] Material timberOf(const TimberClass&, const Units&);

} // namespace gusset
