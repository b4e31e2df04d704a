#pragma once
// Numbers as in print: true minus sign, no trailing noise, decimal sign by choice. The one place
// that formats floating point (snprintf: the library of the older web toolchain has no to_chars).

#include <string>

namespace gusset {

enum class NumberForm { Exact, Decimals, Significant };

struct NumberStyle {
    NumberForm form = NumberForm::Decimals; // Exact has no digits of its own: written as Decimals
    int digits = 2;                         // decimals, or significant figures
    char decimalSign = '.';
    bool keepZeros = true; // 2.50 rather than 2.5
    int lastPlace = 17; // the last decimal that means something; 0: ones, −2: hundreds. Figures
                        // behind it are not written, or are zeros
};

// As read by people: "−24.75" with the true minus U+2212; never "−0". Numbers too long for a line
// stand with a power of ten, "1.2e21"; what is no number is "?".
[[nodiscard]] std::string formatNumber(double, const NumberStyle&);
// With a power of ten, to so many significant figures, without zeros at the end: "−7.245e5". For
// places too narrow for the number as it is.
[[nodiscard]] std::string formatPowerOfTen(double, int significant, char decimalSign);
// A number that somebody gave, a load or a length: with the decimals that it has (20, 2.75), up to
// six; one that has more (a third) to two figures more than `style` has digits.
[[nodiscard]] std::string formatGiven(double, const NumberStyle&);
// A length as a drawing has it: three decimals, more where that would leave fewer than three
// figures of it (0.0006), no zeros at the end.
[[nodiscard]] std::string formatMeasured(double, char decimalSign);
// The shortest text that reads back as the same double, ASCII, for files and fields: "-0.1",
// "1e21".
[[nodiscard]] std::string shortestNumber(double);
// To so many significant digits, shortest: "17.5", for results in files.
[[nodiscard]] std::string significantNumber(double, int digits);
// The same of a result: to kFileDigits, fewer where the last place that means something leaves
// fewer.
inline constexpr int kFileDigits = 12;
[[nodiscard]] std::string fileNumber(double, int lastPlace = NumberStyle{}.lastPlace);
// NumberStyle::lastPlace of numbers of which the largest has this size, and which are off by no
// more than such a share of it.
[[nodiscard]] int lastPlaceOf(double size, double error);
// What formatNumber shows, as a number.
[[nodiscard]] double roundedTo(double, const NumberStyle&);

} // namespace gusset
