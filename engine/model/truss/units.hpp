#pragma once
// The units a model is written in, their factors to SI, and typed input such as `4 ft 6 in` or
// `2*1.5 kN`. Factors are exact by definition: the international foot and pound (1959) and standard
// gravity (3rd CGPM, 1901); 1 lbf = 0.453 592 37 kg × 9.806 65 m/s².

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

// How many newtons, metres, pascals one unit is; 1 for Plain (no unit written: numbers only).
[[nodiscard]] double toNewton(ForceUnit);
[[nodiscard]] double toMetre(LengthUnit);
[[nodiscard]] double toPascal(StressUnit);

// The same quantity in another unit: 1500 mm are exactly 1.5 m. Plain counts as the SI unit.
[[nodiscard]] double converted(double value, ForceUnit from, ForceUnit to);
[[nodiscard]] double converted(double value, LengthUnit from, LengthUnit to);
[[nodiscard]] double converted(double value, StressUnit from, StressUnit to);

// As in a file: "kN"; "" for Plain.
[[nodiscard]] const char* symbolOf(ForceUnit);
[[nodiscard]] const char* symbolOf(LengthUnit);
[[nodiscard]] const char* symbolOf(StressUnit);
// Every symbol of a kind of unit, for messages: "N, kN, MN, lbf, kip". The argument tells the kind.
[[nodiscard]] std::string unitList(ForceUnit);
[[nodiscard]] std::string unitList(LengthUnit);
[[nodiscard]] std::string unitList(StressUnit);
[[nodiscard]] std::optional<ForceUnit> forceUnitNamed(std::string_view);
[[nodiscard]] std::optional<LengthUnit> lengthUnitNamed(std::string_view);
[[nodiscard]] std::optional<StressUnit> stressUnitNamed(std::string_view);

} // namespace gusset
