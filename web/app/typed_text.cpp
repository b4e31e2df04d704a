#include "app/typed_text.hpp"

#include "report/number.hpp"

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

} // namespace gusset
