#pragma once
// Numbers as people type them: 12 kip · 4 ft 6 in · 4' 6" · 3/4 · 1 3/4 · 2*1.5 · (3+1)/2 · −5 ·
// 2,5 · sqrt(2). A unit is converted to that of the field; a number without one is in the field's
// unit. A decimal comma and the true minus sign are accepted. Fails with one sentence that names
// what could not be read.

#include "core/outcome.hpp"
#include "model/truss/units.hpp"

#include <string_view>

namespace gusset {

[[nodiscard]] Outcome<double> readNumber(std::string_view text);
[[nodiscard]] Outcome<double> readForce(std::string_view text, ForceUnit field);
[[nodiscard]] Outcome<double> readLength(std::string_view text, LengthUnit field);
[[nodiscard]] Outcome<double> readStress(std::string_view text, StressUnit field);
[[nodiscard]] Outcome<double> readAngle(std::string_view text); // degrees; "30°", "atan(3/4)"

// `5 @ 30°` by size and angle, or `3, -4` by components (with a semicolon if commas are decimal).
struct TypedVector {
    bool angled = false;
    double first = 0;  // along x, or the size
    double second = 0; // along y, or the angle in degrees
};
[[nodiscard]] Outcome<TypedVector> readForceVector(std::string_view text, ForceUnit field);
[[nodiscard]] Outcome<TypedVector> readLengthVector(std::string_view text, LengthUnit field);
[[nodiscard]] bool isVector(std::string_view text); // any two numbers

} // namespace gusset
