#include "exchange/settings_reader.hpp"

#include "exchange/format_words.hpp"

#include <algorithm>

namespace gusset {

namespace {

template <class Unit>
void readSetting(ObjectReader& object, const UnitField<Unit>& field, Units& units) {
    if (!object.has(field.key)) {
        return;
    }
    const std::string given = object.text(field.key);
    const std::optional<Unit> unit = field.named(given);
    if (!unit) {
        object.issues().error(IssueCode::OutOfRange, object.placeOf(field.key),
                              "no unit \"" + given + "\" here: there are " + unitList(Unit{}) +
                                  " and \"\" for none");
    }
    units.*field.value = unit.value_or(units.*field.value);
}

template <class Settings, class Value>
void readSetting(ObjectReader& object, const WordField<Settings, Value>& field,
                 Settings& settings) {
    Value& value = settings.*field.value;
    if constexpr (std::is_same_v<Value, char>) {
        value = field.words[object.word(field.key, field.words, 0)].front();
    } else {
        value = Value(object.word(field.key, field.words, std::size_t(value)));
    }
}

void readSetting(ObjectReader& object, const DigitsField& field, ClassSettings& settings) {
    const double digits = object.number(field.key, settings.*field.value);
    if (digits == static_cast<int>(std::clamp(digits, 0.0, double{kMostDigits}))) {
        settings.*field.value = static_cast<int>(digits);
        return;
    }
    object.issues().error(IssueCode::OutOfRange, object.placeOf(field.key),
                          "must be a whole number from 0 to " + std::to_string(kMostDigits));
}

template <class Fields, class Settings>
void readSettings(ObjectReader& object, const Fields& fields, Settings& settings) {
    eachSetting(fields, [&](const auto& field) { readSetting(object, field, settings); });
}

} // namespace

Units readUnits(ObjectReader& model) {
    Units units;
    if (const JsonValue* value = model.object("units")) {
        ObjectReader object(*value, "units", model.issues());
        readSettings(object, kUnitFields, units);
        units.unknown = object.rest();
    }
    return units;
}

ClassSettings readClassSettings(ObjectReader& model) {
    ClassSettings settings;
    if (const JsonValue* value = model.object("class")) {
        ObjectReader object(*value, "class", model.issues());
        readSettings(object, kClassFields, settings);
        if (const JsonValue* numbers = object.object("numbers")) {
            ObjectReader inner(*numbers, object.placeOf("numbers"), object.issues());
            readSettings(inner, kNumbersFields, settings);
            settings.unknownNumbers = inner.rest();
        }
        settings.unknown = object.rest();
    }
    return settings;
}

CheckSettings readCheckSettings(ObjectReader& model) {
    CheckSettings settings;
    if (const JsonValue* value = model.object("checks")) {
        ObjectReader object(*value, "checks", model.issues());
        readSettings(object, kCheckFields, settings);
        for (const CheckNumber& number : kCheckNumbers) {
            settings.*number.value = object.number(number.key, settings.*number.value);
        }
        settings.unknown = object.rest();
    }
    return settings;
}

} // namespace gusset
