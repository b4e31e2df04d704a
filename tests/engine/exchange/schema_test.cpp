// The published JSON Schema agrees with the engine's tables for every field.
#include "exchange/files/format_words.hpp"
#include "exchange/json/json_value.hpp"
#include "model/truss/fields.hpp"
#include "model/truss/limits.hpp"
#include "support/files.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <set>

using namespace gusset;

namespace {

using Keys = std::set<std::string>;

JsonValue schema() {
    return parseJson(support::repositoryFile("site/schema/model.schema.json")).value();
}

const JsonValue& at(const JsonValue& object, std::string_view key) {
    INFO("the key " << key);
    const JsonValue* found = object.find(key);
    REQUIRE(found);
    return *found;
}

const JsonValue& definition(const JsonValue& whole, std::string_view name) {
    return at(at(whole, "$defs"), name);
}

std::string textAt(const JsonValue& object, std::string_view key) {
    const JsonValue* found = object.find(key);
    return found ? found->text : "";
}

Keys keysOf(const JsonValue& properties) {
    Keys keys;
    for (const auto& [key, value] : properties.members) {
        if (value.kind == JsonValue::Kind::Object) { // false: another kind of load has it
            keys.insert(key);
        }
    }
    return keys;
}

Keys textsOf(const JsonValue* list) {
    Keys texts;
    for (const JsonValue& item : list ? list->items : std::vector<JsonValue>{}) {
        texts.insert(item.text);
    }
    return texts;
}

std::string refTo(std::string_view name) { return "#/$defs/" + std::string(name); }

const char* nameOf(Limits limits) {
    return limits == Limits::Size ? "size" : limits == Limits::Positive ? "positive" : "number";
}

// The words for the unit in a description, in lower case.
const char* wordsOf(Quantity quantity) {
    switch (quantity) {
    case Quantity::Force:
        return "force units";
    case Quantity::Length:
        return "length units";
    case Quantity::ForcePerLength:
        return "force units per length unit";
    case Quantity::Displacement:
        return "displacement units";
    case Quantity::SectionLength:
        return "section units";
    case Quantity::SectionArea:
        return "section units squared";
    case Quantity::Stress:
        return "stress units";
    case Quantity::None:
        break;
    }
    return "";
}

void compareNumber(const JsonValue& property, Limits limits, Quantity quantity) {
    CHECK(textAt(property, "$ref") == refTo(nameOf(limits)));
    std::string says = textAt(property, "description");
    std::transform(says.begin(), says.end(), says.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    if (!says.empty()) {
        CHECK(says.find(wordsOf(quantity)) != std::string::npos);
    }
}

template <class Thing>
Thing ownerOf(const Field<Thing>&);
template <class Table>
using OwnerOf = decltype(ownerOf(std::declval<typename Table::value_type>()));

// The properties of an object are those of the table and `others`, of which `alsoNeeded` are
// required.
template <class Table>
void compare(const JsonValue& object, const Table& table, Keys others = {}, Keys alsoNeeded = {}) {
    const JsonValue& properties = at(object, "properties");
    const OwnerOf<Table> thing{};
    eachField(table, thing, [&](const FieldValue& field) {
        INFO("the field " << field.key);
        others.insert(std::string(field.key));
        const bool isNeeded = field.presence != Presence::Usual;
        if (isNeeded) {
            alsoNeeded.insert(std::string(field.key));
        }
        const JsonValue& property = at(properties, field.key);
        const std::string ref = textAt(property, "$ref");
        if (field.text) {
            CHECK(ref == (isNeeded ? refTo("name") : ""));
            CHECK((isNeeded || property.find("enum") || textAt(property, "type") == "string"));
        } else if (field.joint) {
            CHECK(ref == refTo("name"));
        } else if (field.path) {
            CHECK(ref == refTo("path"));
        } else {
            compareNumber(property, field.limits, field.quantity);
        }
    });
    CHECK(keysOf(properties) == others);
    CHECK(textsOf(object.find("required")) == alsoNeeded);
}

Keys wordsOf(const WordList& words) {
    Keys keys(words.begin(), words.end());
    keys.erase("");
    return keys;
}

template <class Unit>
void compareSetting(const JsonValue& whole, const JsonValue& property,
                    const UnitField<Unit>& field) {
    const bool isLength = std::is_same_v<Unit, LengthUnit>;
    CHECK(textAt(property, "$ref") == (isLength ? refTo("lengthUnit") : ""));
    CHECK(textAt(property, "default") == symbolOf(Units{}.*field.value));
    const JsonValue& list = isLength ? definition(whole, "lengthUnit") : property;
    for (const std::string& symbol : textsOf(list.find("enum"))) {
        CHECK(field.named(symbol).has_value());
    }
    const std::string all = unitList(Unit{}); // and "" for none
    const auto commas = static_cast<std::size_t>(std::count(all.begin(), all.end(), ','));
    CHECK(textsOf(list.find("enum")).size() == commas + 2);
}
template <class Settings, class Value>
void compareSetting(const JsonValue&, const JsonValue& property,
                    const WordField<Settings, Value>& field) {
    CHECK(textsOf(property.find("enum")) == wordsOf(field.words));
    const Value usual = Settings{}.*field.value;
    if constexpr (std::is_same_v<Value, char>) {
        CHECK(textAt(property, "default") == std::string(1, usual));
    } else {
        CHECK(textAt(property, "default") == wordOf(field.words, usual));
    }
}
void compareSetting(const JsonValue&, const JsonValue& property, const DigitsField& field) {
    CHECK(at(property, "maximum").number == kMostDigits);
    CHECK(at(property, "default").number == ClassSettings{}.*field.value);
}

template <class Fields>
void compareSettings(const JsonValue& whole, const JsonValue& object, const Fields& fields,
                     Keys others = {}) {
    const JsonValue& properties = at(object, "properties");
    eachSetting(fields, [&](const auto& field) {
        INFO("the setting " << field.key);
        others.insert(std::string(field.key));
        compareSetting(whole, at(properties, field.key), field);
    });
    CHECK(keysOf(properties) == others);
}

} // namespace

TEST_CASE("The schema has the fields of every kind of thing, and no others") {
    const JsonValue whole = schema();
    compare(definition(whole, "joint"), kFields<Joint>);
    const JsonValue& member = definition(whole, "member");
    compare(member, kFields<Member>, {"K"});
    compare(at(at(member, "properties"), "K"), kFields<LengthFactors>);
    compare(definition(whole, "material"), kFields<Material>);
    const JsonValue& section = definition(whole, "section"); // a shape also has its dimensions
    compare(section, kFields<Section>, {"holes"});
    compare(at(at(section, "properties"), "holes"), kFields<Holes>);
    compare(definition(whole, "combination"), kFields<Combination>, {"factors"}, {"factors"});
    const JsonValue& moving = definition(whole, "moving");
    compare(moving, kFields<MovingLoad>, {"axles", "uniform"});
    compare(at(at(at(moving, "properties"), "axles"), "items"), kFields<Axle>);
    compare(at(at(moving, "properties"), "uniform"), kFields<MovingUniform>);
}

TEST_CASE("The schema has the fields of every kind of support and load") {
    const JsonValue whole = schema();
    const std::vector<JsonValue>& supports = at(definition(whole, "support"), "oneOf").items;
    REQUIRE(supports.size() == 2);
    compare(supports[0], kFields<Support>, {"kind", "settle"}, {"kind"});
    const JsonValue& settle = at(at(supports[0], "properties"), "settle");
    compare(settle, kPinSettleFields);
    compare(supports[1], kRollerFields, {"joint", "kind"}, {"joint", "kind"});
    const JsonValue& load = definition(whole, "load");
    compare(load, kFields<Load>);
    const std::vector<JsonValue>& kinds = at(load, "oneOf").items;
    REQUIRE(kinds.size() == 5);
    compare(kinds[0], kFields<JointForce>);
    compare(kinds[1], kFields<MemberForce>, {"member"}, {"member"});
    compare(kinds[2], kFields<AngledForce>);
    compare(kinds[3], kFields<ChordLoad>);
    compare(kinds[4], kFields<SelfWeight>, {"selfWeight"}, {"selfWeight"});
}

TEST_CASE("The schema has the words, units and numbers of the settings, with their defaults") {
    const JsonValue whole = schema();
    compareSettings(whole, definition(whole, "units"), kUnitFields);
    const JsonValue& classSettings = definition(whole, "class");
    compareSettings(whole, classSettings, kClassFields, {"numbers"});
    compareSettings(whole, at(at(classSettings, "properties"), "numbers"), kNumbersFields);
    const JsonValue& checks = definition(whole, "checks");
    Keys numbers;
    for (const CheckNumber& number : kCheckNumbers) {
        INFO("the number " << number.key);
        numbers.insert(std::string(number.key));
        const JsonValue& property = at(at(checks, "properties"), number.key);
        CHECK(at(property, "default").number == CheckSettings{}.*number.value);
        const JsonValue& range =
            number.orNone ? at(definition(whole, "limitOrNone"), "anyOf").items.at(1) : property;
        CHECK(at(range, "minimum").number == number.least);
        CHECK(at(range, "maximum").number == number.most);
    }
    numbers.insert("held");
    compareSettings(whole, checks, kCheckFields, numbers);
}

TEST_CASE("The schema has the limits of numbers and names") {
    const JsonValue whole = schema();
    CHECK(at(definition(whole, "number"), "minimum").number == -kLargestNumber);
    CHECK(at(definition(whole, "number"), "maximum").number == kLargestNumber);
    CHECK(at(definition(whole, "size"), "minimum").number == kSmallestSize);
    CHECK(at(definition(whole, "size"), "maximum").number == kLargestSize);
    CHECK(at(definition(whole, "name"), "maxLength").number == double(kLongestLabel));
}
