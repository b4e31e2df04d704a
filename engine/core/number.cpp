#include "core/number.hpp"

#include "core/signs.hpp"
#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <optional>

namespace gusset {
namespace {

constexpr const char* kInfinity = "\u221E";
constexpr int kMostDigits = 17; // a double has no more
// Outside this range a number gets a power of ten: a long row of zeros can't be read.
constexpr double kLargestWritten = 1e15;
constexpr double kSmallestWritten = 1e-6;

struct Printed {
    char text[400]; // the longest double without an exponent has 309 digits before the point
};

Printed printFixed(double value, int decimals) {
    Printed out;
    std::snprintf(out.text, sizeof out.text, "%.*f", decimals, value);
    return out;
}

Printed printScientific(double value, int significant) {
    Printed out;
    std::snprintf(out.text, sizeof out.text, "%.*e", significant - 1, value);
    return out;
}

double toSignificant(double value, int significant) {
    return std::strtod(printScientific(value, significant).text, nullptr);
}

// The decimal exponent of a value after rounding: 9.96 to two digits is 10, exponent 1.
int exponentOf(double value, int significant) {
    const std::string text = printScientific(value, significant).text;
    return std::atoi(text.c_str() + text.find('e') + 1);
}

void dropTrailingZeros(std::string& text) {
    if (text.find('.') == std::string::npos) {
        return;
    }
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') {
        text.pop_back();
    }
}

bool isZeroText(const std::string& text) {
    return text.find_first_of("123456789") == std::string::npos;
}

// "1.5e+21" → "1.5e21", "2e-07" → "2e-7".
std::string tidyExponent(const std::string& text) {
    const auto e = text.find('e');
    std::string mantissa = text.substr(0, e);
    dropTrailingZeros(mantissa);
    return mantissa + 'e' + std::to_string(std::atoi(text.c_str() + e + 1));
}

// Drops the digits after the last significant place.
void keepMeant(double& size, NumberStyle& style) {
    if (style.lastPlace >= kMostDigits || !(size > 0)) {
        return;
    }
    const int meant = exponentOf(size, kMostDigits) + 1 + style.lastPlace;
    size = meant > 0 ? toSignificant(size, std::min(meant, kMostDigits)) : 0;
    const int most =
        style.form == NumberForm::Significant ? std::max(meant, 1) : std::max(style.lastPlace, 0);
    style.digits = std::min(style.digits, most);
}

std::string withoutSign(double size, NumberStyle style) {
    keepMeant(size, style);
    const int digits = std::clamp(style.digits, 0, kMostDigits);
    if (size >= kLargestWritten) {
        return tidyExponent(printScientific(size, std::max(digits, 1)).text);
    }
    if (style.form != NumberForm::Significant) {
        std::string text = printFixed(size, digits).text;
        if (!style.keepZeros) {
            dropTrailingZeros(text);
        }
        return text;
    }
    const int significant = std::max(digits, 1);
    if (size > 0 && size < kSmallestWritten) {
        return tidyExponent(printScientific(size, significant).text);
    }
    const int exponent = size > 0 ? exponentOf(size, significant) : 0;
    std::string text =
        printFixed(toSignificant(size, significant), std::max(significant - 1 - exponent, 0)).text;
    if (!style.keepZeros) {
        dropTrailingZeros(text);
    }
    return text;
}

std::string printed(std::string text, bool negative, char decimalSign) {
    const bool hasMinus = negative && !isZeroText(text);
    std::replace(text.begin(), text.end(), '.', decimalSign);
    return hasMinus ? kMinus + text : text;
}

} // namespace

std::string formatNumber(double value, const NumberStyle& style) {
    if (std::isnan(value)) {
        return "?";
    }
    if (std::isinf(value)) {
        return value < 0 ? std::string(kMinus) + kInfinity : kInfinity;
    }
    return printed(withoutSign(std::fabs(value), style), value < 0, style.decimalSign);
}

std::string formatPowerOfTen(double value, int significant, char decimalSign) {
    if (value == 0 || !std::isfinite(value)) {
        return formatNumber(value, {.digits = 0});
    }
    const int figures = std::clamp(significant, 1, kMostDigits);
    return printed(tidyExponent(printScientific(std::fabs(value), figures).text), value < 0,
                   decimalSign);
}

namespace {

// The fewest decimals that are all of it; none if those are too many.
std::optional<int> decimalsOfGiven(double value) {
    // Six decimals: what people type, and a thousandth of a millimetre in metres.
    constexpr int kMostDecimals = 6;
    for (int digits = 0; digits <= kMostDecimals; ++digits) {
        const NumberStyle style{.form = NumberForm::Decimals, .digits = digits};
        if (std::fabs(roundedTo(value, style) - value) <= kSameNumber * std::fabs(value)) {
            return digits;
        }
    }
    return std::nullopt;
}

} // namespace

bool isGivenInFull(double value) { return decimalsOfGiven(value).has_value(); }

std::string formatGiven(double value, const NumberStyle& style) {
    NumberStyle given = style;
    given.form = NumberForm::Decimals;
    given.keepZeros = false;
    if (const auto decimals = decimalsOfGiven(value)) {
        given.digits = *decimals;
        return formatNumber(value, given);
    }
    given.form = NumberForm::Significant;
    given.digits = std::max(style.digits + 2, 4);
    return formatNumber(value, given);
}

std::string formatMeasured(double value, char decimalSign) {
    constexpr int kMostDecimals = 8; // anything smaller is rounding noise from a sum
    int decimals = 3;
    for (double least = 0.1; decimals < kMostDecimals && std::fabs(value) < least; least /= 10) {
        ++decimals;
    }
    return formatNumber(value, {NumberForm::Decimals, decimals, decimalSign, false});
}

std::string withUnit(const std::string& number, std::string_view unit) {
    return unit.empty() ? number : number + kThinSpace + std::string(unit);
}

std::string shortestNumber(double value) {
    if (!std::isfinite(value)) {
        return std::isnan(value) ? "nan" : (value < 0 ? "-inf" : "inf");
    }
    if (value == 0) {
        return "0";
    }
    int significant = 1;
    while (significant < kMostDigits && toSignificant(value, significant) != value) {
        ++significant;
    }
    const int exponent = exponentOf(value, significant);
    constexpr int kLargestPositional = 20; // 1e21 and above, 1e-7 and below get a power of ten
    constexpr int kSmallestPositional = -6;
    if (exponent > kLargestPositional || exponent < kSmallestPositional) {
        return tidyExponent(printScientific(value, significant).text);
    }
    return printFixed(value, std::max(significant - 1 - exponent, 0)).text;
}

std::string significantNumber(double value, int digits) {
    if (!std::isfinite(value)) {
        return shortestNumber(value);
    }
    return shortestNumber(toSignificant(value, std::clamp(digits, 1, kMostDigits)));
}

std::string fileNumber(double value, int lastPlace) {
    const NumberStyle left{
        .form = NumberForm::Significant, .digits = kFileDigits, .lastPlace = lastPlace};
    return significantNumber(roundedTo(value, left), kFileDigits);
}

int lastPlaceOf(double size, double error) {
    constexpr int kAll = NumberStyle{}.lastPlace;
    const double off = size * error;
    return off > 0 ? std::clamp(static_cast<int>(std::floor(-std::log10(off))), -kAll, kAll) : kAll;
}

double roundedTo(double value, const NumberStyle& style) {
    if (!std::isfinite(value)) {
        return value;
    }
    NumberStyle plain = style;
    plain.decimalSign = '.';
    const double size = std::strtod(withoutSign(std::fabs(value), plain).c_str(), nullptr);
    return value < 0 && size != 0 ? -size : size;
}

bool isWrittenInFull(double value, const NumberStyle& style) {
    return std::fabs(roundedTo(value, style) - value) <= kResidual * std::fabs(value);
}

} // namespace gusset
