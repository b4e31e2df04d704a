#pragma once
// The units of a model and their factors to SI. Factors are exact by definition: the international
// foot and pound (1959) and standard gravity (3rd CGPM, 1901); 1 lbf = 0.453 592 37 kg × 9.806 65
// m/s².

#include "core/outcome.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace gusset {

enum class ForceUnit { Plain, N, kN, MN, lbf, kip };
enum class LengthUnit { Plain, mm, cm, m, in, ft };
enum class StressUnit { Plain, MPa, GPa, psi, ksi, kPa, Pa };

struct Units {
    ForceUnit force = ForceUnit::kN;
    LengthUnit length = LengthUnit::m;
    LengthUnit section = LengthUnit::mm;
    StressUnit stress = StressUnit::MPa;
    LengthUnit displacement = LengthUnit::mm;
    std::string unknown; // unknown keys of "units", as JSON text

    friend bool operator==(const Units&, const Units&) = default;
};

// How many newtons, metres or pascals one unit is; 1 for Plain (numbers without a unit).
[[nodiscard]] double toNewton(ForceUnit);
[[nodiscard]] double toMetre(LengthUnit);
[[nodiscard]] double toPascal(StressUnit);

// The same quantity in another unit: 1500 mm is exactly 1.5 m. Plain counts as the SI unit.
[[nodiscard]] double converted(double value, ForceUnit from, ForceUnit to);
[[nodiscard]] double converted(double value, LengthUnit from, LengthUnit to);
[[nodiscard]] double converted(double value, StressUnit from, StressUnit to);

// As in a file: "kN"; "" for Plain.
[[nodiscard]] const char* symbolOf(ForceUnit);
[[nodiscard]] const char* symbolOf(LengthUnit);
[[nodiscard]] const char* symbolOf(StressUnit);
// Every symbol of a kind of unit, for messages: "N, kN, MN, lbf, kip". The argument selects the
// kind.
[[nodiscard]] std::string unitList(ForceUnit);
[[nodiscard]] std::string unitList(LengthUnit);
[[nodiscard]] std::string unitList(StressUnit);
[[nodiscard]] std::optional<ForceUnit> forceUnitNamed(std::string_view);
[[nodiscard]] std::optional<LengthUnit> lengthUnitNamed(std::string_view);
[[nodiscard]] std::optional<StressUnit> stressUnitNamed(std::string_view);

} // namespace gusset
