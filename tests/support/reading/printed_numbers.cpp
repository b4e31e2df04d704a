#include "support/reading/printed_numbers.hpp"

#include "core/signs.hpp"

#include <algorithm>
#include <cmath>

namespace gusset::support {

namespace {

// Given numbers are exact or have this many significant figures, and at least two more than the
// class writes.
double givenStep(const PrintedNumbers& numbers, const Digits& digits) {
    const int figures = std::max(numbers.settings.digits + 2, 4);
    const int shown = digits.value == 0 ? 1 : digits.leading + digits.decimals + 1;
    return digits.value == 0 || (digits.decimals > 0 && shown > figures)
               ? 0
               : digits.figureStep(figures);
}

double classStep(const PrintedNumbers& numbers, const Digits& digits) {
    const ClassSettings& settings = numbers.settings;
    return settings.form == NumberForm::Significant && digits.value != 0
               ? digits.figureStep(settings.digits)
               : std::pow(10.0, -settings.digits);
}

// Half a unit of the last place that the class writes; trailing zeros may have been dropped.
double stepOf(const PrintedNumbers& numbers, const Digits& digits, NumberPlace place) {
    constexpr double kRatioStep = 1e-4; // four decimals, as in tables
    switch (place) {
    case NumberPlace::Degrees:
        return 0.01;
    case NumberPlace::Fraction:
        return digits.decimals == 0 ? 0 : givenStep(numbers, digits);
    case NumberPlace::Factor:
        return digits.decimals > 4 ? givenStep(numbers, digits)
                                   : std::max(givenStep(numbers, digits), kRatioStep);
    case NumberPlace::Value:
        break;
    }
    return std::max(givenStep(numbers, digits), classStep(numbers, digits));
}

} // namespace

std::string withoutSign(const std::string& text) {
    return text.rfind(kMinus, 0) == 0 ? text.substr(std::string(kMinus).size()) : text;
}

std::string numberAt(const Formula& formula, std::size_t at) {
    std::string text;
    for (; at < formula.size(); ++at) {
        const Token& token = formula[at];
        if (token.kind == TokenKind::Number) {
            text += withoutSign(token.text);
        } else if (token.kind == TokenKind::Root) {
            text += "\u221A" + token.text;
        } else if (token.kind == TokenKind::Fraction) {
            text += withoutSign(token.text) +
                    (token.rootAbove.empty() ? "" : "\u221A" + token.rootAbove) + "/" + token.below;
        } else {
            break;
        }
    }
    return text;
}

void takeNumbers(std::set<std::string>& set, const Formula& formula) {
    for (std::size_t i = 0; i < formula.size(); ++i) {
        if (i == 0 || numberAt(formula, i - 1).empty()) {
            set.insert(numberAt(formula, i));
        }
    }
}

NumberReader resultReader(const PrintedNumbers& numbers) {
    return [&numbers](const std::string& text, NumberPlace place) -> std::optional<Rounded> {
        const auto digits = digitsOf(text.substr(0, text.find("\u00B0")));
        if (!digits) {
            return std::nullopt;
        }
        return Rounded{digits->value,
                       0.5 * stepOf(numbers, *digits, place) + kNoise * std::fabs(digits->value)};
    };
}

NumberReader termReader(const PrintedNumbers& numbers) {
    return [&numbers](const std::string& text, NumberPlace place) {
        auto number = resultReader(numbers)(text, place);
        const bool load = numbers.loads.count(withoutSign(text)) > 0;
        const bool result = numbers.results.count(withoutSign(text)) > 0;
        const bool carried = result && numbers.carriesRounded();
        if (numbers.solving.count(withoutSign(text)) > 0) {
            return number; // carried in full
        }
        const bool given = load && (!result || carried); // else perhaps a result in full precision
        if (!number || place != NumberPlace::Value || !(given || carried)) {
            return number;
        }
        number->slack = given ? 0.5 * givenStep(numbers, *digitsOf(text)) : 0;
        number->slack += kNoise * std::fabs(number->value);
        return number;
    };
}

} // namespace gusset::support
