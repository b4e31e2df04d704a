#pragma once
// Numbers as in print: true minus sign, no trailing noise, a choice of decimal sign. The only place
// that formats floating point (with snprintf: the library of the older web toolchain has no
// to_chars).

#include <string>
#include <string_view>

namespace gusset {

enum class NumberForm { Exact, Decimals, Significant };

struct NumberStyle {
    NumberForm form = NumberForm::Decimals; // Exact has no digits of its own: written as Decimals
    int digits = 2;                         // decimals, or significant figures
    char decimalSign = '.';
    bool keepZeros = true; // 2.50 rather than 2.5
    int lastPlace = 17; // last significant decimal; 0: ones, −2: hundreds. Later digits are left
                        // out, or written as zeros
};

// For people to read: "−24.75" with the true minus U+2212; never "−0". Numbers too long for a line
// get a power of ten, "1.2e21"; NaN is "?".
[[nodiscard]] std::string formatNumber(double, const NumberStyle&);
// With a power of ten, to this many significant figures, without trailing zeros: "−7.245e5". For
// places too narrow for the number in full.
[[nodiscard]] std::string formatPowerOfTen(double, int significant, char decimalSign);
// A number that the user gave, a load or a length: with its own decimals (20, 2.75), up to six; one
// with more (a third) to two figures more than `style` asks for.
[[nodiscard]] std::string formatGiven(double, const NumberStyle&);
// Whether that is all of it.
[[nodiscard]] bool isGivenInFull(double);
// A length as on a drawing: three decimals, or more where that would leave fewer than three
// significant figures (0.0006), without trailing zeros.
[[nodiscard]] std::string formatMeasured(double, char decimalSign);
// "4.00 m", never broken between the two; only the number if there is no unit.
[[nodiscard]] std::string withUnit(const std::string& number, std::string_view unit);
// The shortest text that reads back as the same double, ASCII, for files and fields: "-0.1",
// "1e21".
[[nodiscard]] std::string shortestNumber(double);
// The shortest text to this many significant digits, for results in files: "17.5".
[[nodiscard]] std::string significantNumber(double, int digits);
// The same for a result: to kFileDigits, or fewer where lastPlace says so.
inline constexpr int kFileDigits = 12;
[[nodiscard]] std::string fileNumber(double, int lastPlace = NumberStyle{}.lastPlace);
// NumberStyle::lastPlace for numbers of which the largest has this size, each off by at most this
// fraction of it.
[[nodiscard]] int lastPlaceOf(double size, double error);
// What formatNumber shows, as a number.
[[nodiscard]] double roundedTo(double, const NumberStyle&);
// Whether formatNumber writes all of it.
[[nodiscard]] bool isWrittenInFull(double, const NumberStyle&);

} // namespace gusset
