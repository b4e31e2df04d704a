#include "classroom/marking/written.hpp"

#include "core/number.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <string>
#include <utility>

namespace gusset {

namespace {

// A student writes no more than this; what has more was computed.
constexpr int kMostDigits = 6;

// Whether exchanging two digits next to each other gives this number.
bool givesByExchange(std::string text, double number, double within) {
    for (std::size_t i = 0; i + 1 < text.size(); ++i) {
        const std::size_t next = text[i + 1] == '.' ? i + 2 : i + 1;
        if (text[i] == '.' || next >= text.size() || text[i] == text[next]) {
            continue;
        }
        std::swap(text[i], text[next]);
        if (std::abs(std::strtod(text.c_str(), nullptr) - number) <= within) {
            return true;
        }
        std::swap(text[i], text[next]);
    }
    return false;
}

} // namespace

Rounding roundingOf(const std::vector<std::optional<double>>& written) {
    Rounding rounding;
    for (const std::optional<double>& value : written) {
        if (!value || *value == 0) {
            continue;
        }
        const std::string text = significantNumber(std::abs(*value), kMostDigits);
        const std::size_t point = text.find('.');
        const std::size_t power = text.find('e');
        if (power != std::string::npos) {
            continue;
        }
        const int decimals =
            point == std::string::npos ? 0 : static_cast<int>(text.size() - point - 1);
        const int whole = static_cast<int>(std::floor(std::log10(std::abs(*value)))) + 1;
        rounding.decimals = std::max(rounding.decimals, decimals);
        // Noughts at the end of a whole number may only keep its place.
        const std::size_t last = text.find_last_not_of('0');
        const int noughts =
            point == std::string::npos ? static_cast<int>(text.size() - last - 1) : 0;
        rounding.figures = std::max(rounding.figures, whole + decimals - noughts);
    }
    rounding.figures = std::min(rounding.figures, kMostDigits);
    return rounding;
}

double roundingError(const Rounding& rounding, double value) {
    const double last = 0.5 * std::pow(10.0, -rounding.decimals);
    if (value == 0) {
        return last;
    }
    const double first = std::floor(std::log10(std::abs(value)));
    return std::max(last, 0.5 * std::pow(10.0, first - rounding.figures + 1));
}

bool isDigitSwap(const Rounding& rounding, double written, double meant, double within) {
    if (written * meant <= 0) {
        return false;
    }
    // With its noughts, which may be among the exchanged: 11.08 for 11.80, and 1.5 for 10.5. The
    // digits are put back where they were, as only these are known exactly.
    NumberStyle style;
    style.form = NumberForm::Significant;
    style.digits = rounding.figures;
    const std::string text = formatNumber(std::abs(written), style);
    style.digits = std::max(rounding.figures - 1, 1);
    const std::string behindNought = '0' + formatNumber(std::abs(written), style);
    return givesByExchange(text, std::abs(meant), within) ||
           givesByExchange(behindNought, std::abs(meant), within);
}

} // namespace gusset
