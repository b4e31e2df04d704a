#pragma once
// In what masses, lengths and movements are told of a truss: in pounds, feet and inches where its
// lengths are in feet or inches, else in kilograms, metres and millimetres.

#include "model/truss/truss.hpp"

#include <string>

namespace gusset {

struct Measures {
    const char* mass;
    const char* length;
    const char* movement;
    const char* massPerLength;
    double perKilogram = 1; // units of mass
    double perMetre = 1;    // units of length
    double movementPerMetre = 1000;
    int movementDecimals = 1;
};
[[nodiscard]] const Measures& measuresOf(const Truss&);

// With the truss's decimal sign.
[[nodiscard]] std::string decimals(const Truss&, double, int digits);
// "141.3 kg", "311 lb": with a decimal below 100.
[[nodiscard]] std::string massText(const Truss&, double kilograms);
[[nodiscard]] std::string movementText(const Truss&, double metres);  // "33.3 mm", "1.31 in"
[[nodiscard]] std::string lengthSumText(const Truss&, double metres); // "19.7 m"

} // namespace gusset
