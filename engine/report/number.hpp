#pragma once
// Numbers as in print: true minus sign, no trailing noise, decimal sign by choice. The one place
// that formats floating point (snprintf: the library of the older web toolchain has no to_chars).

#include "model/class_settings.hpp"

#include <string>

namespace gusset {

struct NumberStyle {
    NumberForm form = NumberForm::Decimals;
    int digits = 2;
    char decimalSign = '.';
    bool keepZeros = true; // 2.50 rather than 2.5
};

[[nodiscard]] std::string formatNumber(double, const NumberStyle&);
// The shortest text that reads back as the same double, ASCII, for files and fields: "-0.1",
// "1e21".
[[nodiscard]] std::string shortestNumber(double);
// To so many significant digits, shortest: "17.5", for results in files.
[[nodiscard]] std::string significantNumber(double, int digits);
[[nodiscard]] double roundedTo(double, const NumberStyle&); // what formatNumber shows, as a number

} // namespace gusset
