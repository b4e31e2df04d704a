#include "app/fields/check_cells.hpp"

#include "app/fields/cell_readers.hpp"
#include "app/state/commit.hpp"
#include "model/quantity/quantity_input.hpp"
#include "report/results/results_text.hpp"

namespace gusset {

namespace {

constexpr std::string_view kPrefix = "checks.";

bool isNone(const Truss& truss, const CheckNumber& number) {
    return number.orNone && truss.checks.*number.value == 0;
}

} // namespace

std::string keyOf(const CheckNumber& number) {
    return std::string(kPrefix) + std::string(number.key);
}

const CheckNumber* checkNumberOf(const std::string& key) {
    for (const CheckNumber& number : kCheckNumbers) {
        if (keyOf(number) == key) {
            return &number;
        }
    }
    return nullptr;
}

std::string checkText(const Truss& truss, const CheckNumber& number) {
    return isNone(truss, number) ? std::string{} : shortestNumber(truss.checks.*number.value);
}

std::string checkLook(const Truss& truss, const CheckNumber& number) {
    return isNone(truss, number) ? std::string{}
                                 : formatNumber(truss.checks.*number.value, typedStyleOf(truss));
}

Outcome<Edit> checkEdit(const Truss& truss, const CheckNumber& number, const std::string& typed) {
    CheckSettings settings = truss.checks;
    const std::string text = trimmed(typed);
    if (text.empty()) {
        settings.*number.value = number.orNone ? 0 : CheckSettings{}.*number.value;
        return Edit(SetChecks{settings});
    }
    const Outcome<double> value = readNumber(text);
    if (!value) {
        return value.issues();
    }
    settings.*number.value = value.value();
    return Edit(SetChecks{settings});
}

bool finishCheckField(const AppState& state, const FieldDone& done, Actions& actions) {
    const CheckNumber* number = checkNumberOf(done.key);
    if (!number) {
        return false;
    }
    if (state.field.key == done.key || state.field.key.empty()) { // not one that was begun since
        actions.push_back(EndField{});
    }
    if (done.how == FieldEnd::GivenUp || done.text == checkText(state.truss, *number)) {
        return true;
    }
    commitOrSay(checkEdit(state.truss, *number, done.text), actions);
    return true;
}

} // namespace gusset
