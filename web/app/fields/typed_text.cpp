#include "app/fields/typed_text.hpp"

#include "core/number.hpp"

#include <algorithm>

namespace gusset {

std::string typedNumber(const Truss& truss, double value) {
    return typedNumbers(truss, shortestNumber(value));
}

std::string typedNumbers(const Truss& truss, std::string withPoints) {
    if (truss.classSettings.decimalSign == ',') {
        std::replace(withPoints.begin(), withPoints.end(), ',', ';');
        std::replace(withPoints.begin(), withPoints.end(), '.', ',');
    }
    return withPoints;
}

std::string withPoints(const Truss& truss, std::string typed) {
    const auto isFigure = [&](std::size_t i) {
        return i < typed.size() && typed[i] >= '0' && typed[i] <= '9';
    };
    for (std::size_t i = 1; truss.classSettings.decimalSign == ',' && i < typed.size(); ++i) {
        if (typed[i] == ',' && isFigure(i - 1) && isFigure(i + 1)) {
            typed[i] = '.';
        }
    }
    return typed;
}

} // namespace gusset
