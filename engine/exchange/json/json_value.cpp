#include "exchange/json/json_value.hpp"

#include "core/number.hpp"
#include "exchange/json/json_text.hpp"

#include <cmath>

namespace gusset {

const JsonValue* JsonValue::find(std::string_view key) const {
    for (const auto& [name, value] : members) {
        if (name == key) {
            return &value;
        }
    }
    return nullptr;
}

bool JsonValue::isWhole() const {
    constexpr double kLargestExact = 9007199254740992.0;
    return kind == Kind::Number && std::abs(number) <= kLargestExact &&
           number == std::floor(number);
}

std::string textUnder(const JsonValue& object, std::string_view key) {
    const JsonValue* value = object.find(key);
    return value && value->kind == JsonValue::Kind::Text ? value->text : std::string{};
}

double numberUnder(const JsonValue& object, std::string_view key, double otherwise) {
    const JsonValue* value = object.find(key);
    return value && value->kind == JsonValue::Kind::Number ? value->number : otherwise;
}

bool isYes(const JsonValue& object, std::string_view key) {
    const JsonValue* value = object.find(key);
    return value && value->kind == JsonValue::Kind::Boolean && value->boolean;
}

JsonValue numberValue(double number) {
    return {.kind = JsonValue::Kind::Number, .number = number, .text = shortestNumber(number)};
}

namespace {

void write(JsonText& out, const JsonValue& value) {
    switch (value.kind) {
    case JsonValue::Kind::Null:
        out.null();
        break;
    case JsonValue::Kind::Boolean:
        out.boolean(value.boolean);
        break;
    case JsonValue::Kind::Number:
        out.digits(value.text);
        break;
    case JsonValue::Kind::Text:
        out.text(value.text);
        break;
    case JsonValue::Kind::Array:
        out.beginArray();
        for (const JsonValue& item : value.items) {
            write(out, item);
        }
        out.endArray();
        break;
    case JsonValue::Kind::Object:
        out.beginObject();
        for (const auto& [key, member] : value.members) {
            out.key(key);
            write(out, member);
        }
        out.endObject();
        break;
    }
}

} // namespace

std::string jsonText(const JsonValue& value) {
    JsonText out(Layout::Compact);
    write(out, value);
    return out.take();
}

} // namespace gusset
