#include "exchange/settings_reader.hpp"

#include "exchange/format_words.hpp"
#include "model/validate/validate.hpp"

#include <algorithm>

namespace gusset {

namespace {

template <class Unit>
Unit readUnit(ObjectReader& units, std::string_view key,
              std::optional<Unit> (*unitNamed)(std::string_view), Unit fallback) {
    if (!units.has(key)) {
        return fallback;
    }
    const std::string given = units.text(key);
    const std::optional<Unit> unit = unitNamed(given);
    if (!unit) {
        units.issues().error(IssueCode::OutOfRange, units.placeOf(key),
                             "no unit \"" + given + "\" here: there are " + unitList(fallback) +
                                 " and \"\" for none");
    }
    return unit.value_or(fallback);
}

int readDigits(ObjectReader& numbers, int fallback) {
    const double digits = numbers.number("digits", fallback);
    if (digits != static_cast<int>(std::clamp(digits, 0.0, double{kMostDigits}))) {
        numbers.issues().error(IssueCode::OutOfRange, numbers.placeOf("digits"),
                               "must be a whole number from 0 to " + std::to_string(kMostDigits));
        return fallback;
    }
    return static_cast<int>(digits);
}

void readNumbers(ObjectReader& settings, ClassSettings& into) {
    if (const JsonValue* value = settings.object("numbers")) {
        ObjectReader numbers(*value, settings.placeOf("numbers"), settings.issues());
        into.form = readWord(numbers, "form", kFormWords, into.form);
        into.digits = readDigits(numbers, into.digits);
        into.decimalSign = readWord(numbers, "sign", kSignWords, into.decimalSign);
        into.carry = readWord(numbers, "carry", kCarryWords, into.carry);
        into.unknownNumbers = numbers.rest();
    }
}

} // namespace

Units readUnits(ObjectReader& model) {
    Units units;
    if (const JsonValue* value = model.object("units")) {
        ObjectReader object(*value, "units", model.issues());
        units.force = readUnit(object, "force", forceUnitNamed, units.force);
        units.length = readUnit(object, "length", lengthUnitNamed, units.length);
        units.section = readUnit(object, "section", lengthUnitNamed, units.section);
        units.stress = readUnit(object, "stress", stressUnitNamed, units.stress);
        units.displacement = readUnit(object, "displacement", lengthUnitNamed, units.displacement);
        units.unknown = object.rest();
    }
    return units;
}

ClassSettings readClassSettings(ObjectReader& model) {
    ClassSettings settings;
    if (const JsonValue* value = model.object("class")) {
        ObjectReader object(*value, "class", model.issues());
        settings.moments = readWord(object, "moments", kMomentWords, settings.moments);
        settings.angles = readWord(object, "angles", kAngleWords, settings.angles);
        settings.axes = readWord(object, "axes", kAxisWords, settings.axes);
        settings.symbols = readWord(object, "symbols", kSymbolWords, settings.symbols);
        settings.senses = readWord(object, "senses", kSenseWords, settings.senses);
        readNumbers(object, settings);
        settings.unknown = object.rest();
    }
    return settings;
}

CheckSettings readCheckSettings(ObjectReader& model) {
    CheckSettings settings;
    if (const JsonValue* value = model.object("checks")) {
        ObjectReader object(*value, "checks", model.issues());
        settings.formula = readWord(object, "formula", kFormulaWords, settings.formula);
        settings.curve = readWord(object, "curve", kCurveWords, settings.curve);
        settings.safety = readWord(object, "safety", kSafetyWords, settings.safety);
        for (const CheckNumber& number : kCheckNumbers) {
            settings.*number.value = object.number(number.key, settings.*number.value);
        }
        settings.unknown = object.rest();
    }
    return settings;
}

} // namespace gusset
