#include "app/fields/check_field.hpp"

#include "app/fields/cell_text.hpp"
#include "model/quantity/quantity_input.hpp"
#include "report/results/results_text.hpp"

#include <algorithm>

namespace gusset {
namespace {

bool isNone(const Truss& truss, const CheckField& field) {
    return checkNumberOf(field).orNone && truss.checks.*field.number == 0;
}

} // namespace

const CheckNumber& checkNumberOf(const CheckField& field) {
    return *std::find_if(kCheckNumbers.begin(), kCheckNumbers.end(),
                         [&](const CheckNumber& it) { return it.value == field.number; });
}

std::string checkText(const Truss& truss, const CheckField& field) {
    return isNone(truss, field) ? std::string{} : shortestNumber(truss.checks.*field.number);
}

std::string checkLook(const Truss& truss, const CheckField& field) {
    return isNone(truss, field) ? std::string{}
                                : formatNumber(truss.checks.*field.number, typedStyleOf(truss));
}

Outcome<Edit> checkEdit(const Truss& truss, const CheckField& field, const std::string& typed) {
    CheckSettings settings = truss.checks;
    const std::string text = trimmed(typed);
    if (text.empty()) {
        settings.*field.number = checkNumberOf(field).orNone ? 0 : CheckSettings{}.*field.number;
        return Edit(SetChecks{settings});
    }
    const Outcome<double> value = readNumber(text);
    if (!value) {
        return value.issues();
    }
    settings.*field.number = value.value();
    return Edit(SetChecks{settings});
}

} // namespace gusset
