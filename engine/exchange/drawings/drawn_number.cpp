#include "exchange/drawings/drawn_number.hpp"

#include "core/number.hpp"
#include "core/utf8.hpp"
#include "exchange/drawings/lines_found.hpp"
#include "phrases/faults/traced.hpp"

#include <charconv>
#include <cmath>
#include <cstdlib>
#include <string>

namespace gusset {

namespace {

constexpr std::size_t kLongestNumber = 100; // characters

} // namespace

std::string_view withoutSpaces(std::string_view text) {
    constexpr std::string_view kBlanks = " \t\r\n\f";
    const std::size_t first = text.find_first_not_of(kBlanks);
    return first == text.npos ? std::string_view()
                              : text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

std::string asUtf8(std::string_view text) {
    if (!faultOfUtf8(text)) {
        return std::string(text);
    }
    std::string letters;
    for (const char byte : text) {
        appendCharacter(letters, static_cast<unsigned char>(byte));
    }
    return letters;
}

std::optional<double> drawnNumber(std::string_view text) {
    const std::string digits(withoutSpaces(text));
    if (digits.empty() || digits.size() > kLongestNumber ||
        digits.find_first_not_of("0123456789+-.eE") != digits.npos) {
        return std::nullopt;
    }
    char* end = nullptr;
    const double value = std::strtod(digits.c_str(), &end);
    const bool isWhole = end == digits.c_str() + digits.size();
    return isWhole && std::abs(value) <= kLargestDrawn ? std::optional(value) : std::nullopt;
}

std::optional<int> drawnWhole(std::string_view text) {
    const std::string_view digits = withoutSpaces(text);
    int value = 0;
    const char* end = digits.data() + digits.size();
    const auto [stop, error] = std::from_chars(digits.data(), end, value);
    return error == std::errc() && stop == end && !digits.empty() ? std::optional(value)
                                                                  : std::nullopt;
}

Statement measured(double value) { return formatMeasured(value, '.'); }

Statement placeAt(Vec2 at) {
    return statement(phrase::kAtPoint, {{"x", measured(at.x)}, {"y", measured(at.y)}});
}

} // namespace gusset
