#include "model/truss/check_settings.hpp"

namespace gusset {

Issues faultsOf(const CheckSettings& settings) {
    Issues faults;
    for (const CheckNumber& number : kCheckNumbers) {
        const double value = settings.*number.value;
        const bool fits = value >= number.least && value <= number.most;
        if (fits || (number.orNone && value == 0)) {
            continue;
        }
        faults.push_back({IssueCode::OutOfRange, "checks." + std::string(number.key),
                          std::string(number.says) + " must be from " + number.range +
                              (number.orNone ? ", or 0 for no limit" : "")});
    }
    return faults;
}

} // namespace gusset
