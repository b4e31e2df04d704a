#include "model/quantity/quantity_input.hpp"

#include "core/angle.hpp"
#include "model/quantity/quantity_reader.hpp"
#include "model/quantity/quantity_tokens.hpp"
#include "phrases/faults/quantities.hpp"

namespace gusset {

namespace {

// The field for a unit type.
template <class Unit>
QuantityField fieldOf(Unit field, std::optional<Unit> (*named)(std::string_view)) {
    QuantityField it;
    if (field == Unit::Plain) {
        it.convert = [](double, std::string_view) { return std::nullopt; };
        it.remedy = phrase::kModelHasNoUnit;
        return it;
    }
    it.convert = [field, named](double value, std::string_view unit) -> std::optional<double> {
        const std::optional<Unit> found = named(unit);
        return found ? std::optional(converted(value, *found, field)) : std::nullopt;
    };
    it.remedy = statement(phrase::kThereAreUnits, {{"units", unitList(field)}});
    return it;
}

std::optional<ForceUnit> typedForceUnit(std::string_view word) {
    const std::string name = lowered(word);
    if (name == "lb" || name == "lbs") {
        return ForceUnit::lbf;
    }
    if (name == "kips" || name == "k") {
        return ForceUnit::kip;
    }
    for (const ForceUnit unit :
         {ForceUnit::N, ForceUnit::kN, ForceUnit::MN, ForceUnit::lbf, ForceUnit::kip}) {
        if (name == lowered(symbolOf(unit))) {
            return unit;
        }
    }
    return std::nullopt;
}

std::optional<LengthUnit> typedLengthUnit(std::string_view word) {
    const std::string name = lowered(word);
    if (name == "'" || name == "feet" || name == "foot") {
        return LengthUnit::ft;
    }
    if (name == "\"" || name == "inch" || name == "inches") {
        return LengthUnit::in;
    }
    return name.empty() ? std::nullopt : lengthUnitNamed(name);
}

std::optional<StressUnit> typedStressUnit(std::string_view word) {
    const std::string name = lowered(word);
    for (const StressUnit unit : {StressUnit::MPa, StressUnit::GPa, StressUnit::psi,
                                  StressUnit::ksi, StressUnit::kPa, StressUnit::Pa}) {
        if (name == lowered(symbolOf(unit))) {
            return unit;
        }
    }
    return std::nullopt;
}

} // namespace

Outcome<double> readNumber(std::string_view text) {
    QuantityField field;
    field.convert = [](double, std::string_view) { return std::nullopt; };
    field.remedy = phrase::kTypeNumberAlone;
    return readQuantity(text, field);
}

Outcome<double> readForce(std::string_view text, ForceUnit unit) {
    return readQuantity(text, fieldOf(unit, typedForceUnit));
}

Outcome<double> readLength(std::string_view text, LengthUnit unit) {
    QuantityField field = fieldOf(unit, typedLengthUnit);
    field.isLength = true;
    return readQuantity(text, field);
}

Outcome<double> readStress(std::string_view text, StressUnit unit) {
    return readQuantity(text, fieldOf(unit, typedStressUnit));
}

Outcome<double> readAngle(std::string_view text) {
    QuantityField field;
    field.convert = [](double value, std::string_view unit) -> std::optional<double> {
        const std::string name = lowered(unit);
        if (name == "deg" || name == "degrees") {
            return value;
        }
        return name == "rad" ? std::optional(toDegrees(value)) : std::nullopt;
    };
    field.remedy = phrase::kTypeDegrees;
    return readQuantity(text, field);
}

namespace {

// The position of the comma, semicolon or @ that separates two numbers; npos if there is none.
std::size_t separatorIn(std::string_view text) {
    const std::size_t clear = text.find_first_of("@;");
    if (clear != std::string_view::npos) {
        return clear;
    }
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool isDecimal = i > 0 && i + 1 < text.size() && text[i - 1] >= '0' &&
                               text[i - 1] <= '9' && text[i + 1] >= '0' && text[i + 1] <= '9';
        if (text[i] == ',' && !isDecimal) {
            return i;
        }
    }
    return std::string_view::npos;
}

template <class Unit>
Outcome<TypedVector> readVector(std::string_view typed, Unit unit,
                                Outcome<double> (*readPart)(std::string_view, Unit)) {
    const std::string plain = withPlainSigns(typed);
    const std::string_view text = plain;
    const std::size_t separator = separatorIn(text);
    if (separator == std::string_view::npos) {
        return Issue{IssueCode::Syntax, "input", phrase::kNeedsTwoNumbers};
    }
    TypedVector vector;
    vector.angled = text[separator] == '@';
    const std::string_view behind = text.substr(separator + 1);
    const Outcome<double> first = readPart(text.substr(0, separator), unit);
    const Outcome<double> second = vector.angled ? readAngle(behind) : readPart(behind, unit);
    if (!first) {
        return first.issues();
    }
    if (!second) {
        return second.issues();
    }
    vector.first = first.value();
    vector.second = second.value();
    return vector;
}

} // namespace

Outcome<TypedVector> readForceVector(std::string_view text, ForceUnit field) {
    return readVector(text, field, readForce);
}

Outcome<TypedVector> readLengthVector(std::string_view text, LengthUnit field) {
    return readVector(text, field, readLength);
}

bool isVector(std::string_view text) {
    return separatorIn(withPlainSigns(text)) != std::string_view::npos;
}

} // namespace gusset
