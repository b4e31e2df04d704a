#include "ui/fit.hpp"

#include "core/number.hpp"
#include "core/signs.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>

namespace gusset {
namespace {

// The fewest significant figures of a number that is rounded to fit into a cell.
constexpr int kLeastFigures = 3;
constexpr int kLeastPlainFigures = 4; // if only decimals are dropped

struct ReadNumber {
    double value = 0;
    char decimalSign = '.';
    int decimals = 0;
    int figures = 0; // counted from the first non-zero one
    bool hasPower = false;
};

std::optional<ReadNumber> readNumber(std::string_view text) {
    ReadNumber number;
    std::string ascii(text);
    if (const std::string minus = kMinus; ascii.starts_with(minus)) {
        ascii.replace(0, minus.size(), "-");
    }
    const std::size_t sign = ascii.find_first_of(".,");
    const std::size_t power = ascii.find('e');
    number.hasPower = power != std::string::npos;
    const std::size_t end = std::min(power, ascii.size());
    if (sign != std::string::npos) {
        number.decimalSign = ascii[sign];
        ascii[sign] = '.';
        number.decimals = static_cast<int>(end - sign) - 1;
    }
    const std::size_t first = ascii.find_first_of("123456789");
    for (std::size_t i = first; i < end; ++i) {
        number.figures += ascii[i] == '.' ? 0 : 1;
    }
    if (ascii.find_first_of("0123456789") == std::string::npos ||
        ascii.find_first_not_of("-.e0123456789") != std::string::npos) {
        return {};
    }
    char* after = nullptr;
    number.value = std::strtod(ascii.c_str(), &after);
    return *after == '\0' ? std::optional(number) : std::nullopt;
}

// Longest first.
std::vector<std::string> shorterForms(const ReadNumber& number) {
    std::vector<std::string> forms;
    for (int decimals = number.decimals - 1; !number.hasPower && decimals >= 0; --decimals) {
        if (number.figures - number.decimals + decimals >= kLeastPlainFigures) {
            forms.push_back(formatNumber(
                number.value, {NumberForm::Decimals, decimals, number.decimalSign, true}));
        }
    }
    for (int figures = number.figures; figures >= kLeastFigures; --figures) {
        forms.push_back(formatPowerOfTen(number.value, figures, number.decimalSign));
    }
    return forms;
}

struct Sums {
    double lack = 0;
    double give = 0;
};

double over(const ColumnWish& wish, double width) { return wish.need > 0 ? width - wish.need : 0; }

// Moves room to these columns from those that have more than they need.
void help(std::span<const ColumnWish> wishes, bool numbers, std::vector<double>& widths) {
    Sums sums;
    const auto isHelped = [&](std::size_t i) {
        return wishes[i].isNumber == numbers && over(wishes[i], widths[i]) < 0;
    };
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        const double more = over(wishes[i], widths[i]);
        sums.lack += isHelped(i) ? -more : 0;
        sums.give += std::max(more, 0.0);
    }
    const double moved = std::min(sums.lack, sums.give);
    for (std::size_t i = 0; moved > 0 && i < wishes.size(); ++i) {
        const double more = over(wishes[i], widths[i]);
        if (isHelped(i)) {
            widths[i] -= more * moved / sums.lack;
        } else if (more > 0) {
            widths[i] -= more * moved / sums.give;
        }
    }
}

} // namespace

int decimalsIn(std::string_view text) {
    const std::size_t sign = text.find_first_of(".,");
    if (sign == std::string_view::npos || !isNumberText(text)) {
        return 0;
    }
    const std::string_view after = text.substr(sign + 1);
    const bool plain = after.find_first_not_of("0123456789") == std::string_view::npos;
    return plain ? static_cast<int>(after.size()) : 0;
}

bool isNumberText(std::string_view text) { return readNumber(text).has_value(); }

FittedNumber fitNumber(std::string_view text, double room, std::size_t faces,
                       const WidthIn& widthIn) {
    for (std::size_t face = 0; face < faces; ++face) {
        if (widthIn(face, text) <= room) {
            return {std::string(text), face};
        }
    }
    const std::size_t last = faces - 1;
    FittedNumber fitted{std::string(text), last};
    if (const std::optional<ReadNumber> number = readNumber(text)) {
        for (std::string& form : shorterForms(*number)) {
            const bool fits = widthIn(last, form) <= room;
            if (fits || widthIn(last, form) < widthIn(last, fitted.text)) {
                fitted.text = std::move(form);
            }
            if (fits) {
                return fitted;
            }
        }
    }
    fitted.shrunk = std::max(room, 0.0) / widthIn(last, fitted.text);
    return fitted;
}

std::vector<double> columnWidths(std::span<const ColumnWish> wishes, double room) {
    double least = 0;
    double shares = 0;
    for (const ColumnWish& wish : wishes) {
        least += wish.least;
        shares += wish.share;
    }
    const double spare = std::max(0.0, room - least);
    std::vector<double> widths;
    for (const ColumnWish& wish : wishes) {
        widths.push_back(wish.least + (shares > 0 ? spare * wish.share / shares : 0));
    }
    help(wishes, true, widths);
    help(wishes, false, widths);
    return widths;
}

std::vector<std::vector<std::size_t>> columnBlocks(std::span<const float> widths, float room) {
    std::vector<std::vector<std::size_t>> blocks;
    float used = 0;
    for (std::size_t c = 0; c < widths.size(); ++c) {
        const bool isFull = !blocks.empty() && blocks.back().size() > 1 && used + widths[c] > room;
        if (blocks.empty()) {
            blocks.emplace_back();
        } else if (isFull) {
            blocks.push_back({0});
            used = widths.front();
        }
        blocks.back().push_back(c);
        used += widths[c];
    }
    return blocks;
}

std::size_t lettersIn(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char byte) {
        return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
    }));
}

} // namespace gusset
