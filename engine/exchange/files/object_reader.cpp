#include "exchange/files/object_reader.hpp"

#include "model/validate/characters.hpp"
#include "model/validate/validate.hpp"
#include "phrases/faults/reading.hpp"

#include <algorithm>
#include <utility>

namespace gusset {

void IssueList::error(IssueCode code, Statement at, Statement says) {
    if (!isFull()) {
        errors_.push_back({code, spelledOut(std::move(at)), spelledOut(std::move(says))});
    }
}

void IssueList::note(IssueCode code, Statement at, Statement says) {
    if (notes_.size() < kMostIssues) {
        notes_.push_back({code, spelledOut(std::move(at)), spelledOut(std::move(says))});
    }
}

bool IssueList::isFull() const { return errors_.size() >= kMostIssues; }

namespace {

Statement nameOf(JsonValue::Kind kind) {
    switch (kind) {
    case JsonValue::Kind::Null:
        return phrase::kKindNull;
    case JsonValue::Kind::Boolean:
        return phrase::kKindBoolean;
    case JsonValue::Kind::Number:
        return phrase::kKindNumber;
    case JsonValue::Kind::Text:
        return phrase::kKindText;
    case JsonValue::Kind::Array:
        return phrase::kKindList;
    case JsonValue::Kind::Object:
        break;
    }
    return statement(phrase::kKindObject, {{"braces", "{ }"}});
}

Statement wrongType(JsonValue::Kind wanted, JsonValue::Kind given) {
    return statement(phrase::kMustBeKind, {{"wanted", nameOf(wanted)}, {"given", nameOf(given)}});
}

const std::vector<JsonValue> kNoItems;

} // namespace

ObjectReader::ObjectReader(const JsonValue& value, std::string place, IssueList& issues)
    : value_(value), place_(std::move(place)), issues_(issues) {
    if (value.kind != JsonValue::Kind::Object) {
        issues.error(IssueCode::WrongType,
                     place_.empty() ? Statement(phrase::kPlaceModel) : Statement(place_),
                     wrongType(JsonValue::Kind::Object, value.kind));
    }
}

std::string ObjectReader::placeOf(std::string_view key) const {
    const std::string name = key.empty() ? "\"\"" : std::string(key); // an empty key needs a name
    return place_.empty() ? name : place_ + "." + name;
}

const JsonValue* ObjectReader::any(std::string_view key) {
    asked_.push_back(key);
    return value_.find(key);
}

const JsonValue* ObjectReader::take(std::string_view key, JsonValue::Kind kind, bool isNeeded) {
    const JsonValue* found = any(key);
    if (!found && isNeeded && value_.kind == JsonValue::Kind::Object) {
        issues_.error(IssueCode::Missing, placeOf(key),
                      statement(phrase::kMissingKind, {{"wanted", nameOf(kind)}}));
    } else if (found && found->kind != kind) {
        issues_.error(IssueCode::WrongType, placeOf(key), wrongType(kind, found->kind));
        return nullptr;
    }
    return found;
}

void ObjectReader::read(std::string_view key, bool isNeeded, double& into) {
    if (const JsonValue* found = take(key, JsonValue::Kind::Number, isNeeded)) {
        into = found->number + 0.0; // turns -0 into 0
    }
}

void ObjectReader::read(std::string_view key, bool isNeeded, std::optional<double>& into) {
    if (const JsonValue* found = take(key, JsonValue::Kind::Number, isNeeded)) {
        into = found->number + 0.0;
    }
}

void ObjectReader::read(std::string_view key, bool isNeeded, std::string& into) {
    if (const JsonValue* found = take(key, JsonValue::Kind::Text, isNeeded)) {
        into = found->text;
    }
}

std::size_t ObjectReader::word(std::string_view key, const WordList& words, std::size_t fallback) {
    const JsonValue* given = take(key, JsonValue::Kind::Text);
    if (!given) {
        return fallback;
    }
    std::string known;
    for (std::size_t i = 0; i < words.size() && !words[i].empty(); ++i) {
        if (words[i] == given->text) {
            return i;
        }
        known += (known.empty() ? "\"" : ", \"") + std::string(words[i]) + "\"";
    }
    issues_.error(IssueCode::OutOfRange, placeOf(key),
                  statement(phrase::kUnknownWord, {{"word", given->text}, {"words", known}}));
    return fallback;
}

const JsonValue* ObjectReader::object(std::string_view key) {
    return take(key, JsonValue::Kind::Object);
}

const std::vector<JsonValue>& ObjectReader::list(std::string_view key, bool isNeeded) {
    const JsonValue* found = take(key, JsonValue::Kind::Array, isNeeded);
    return found ? found->items : kNoItems;
}

std::string ObjectReader::rest() {
    JsonValue left{.kind = JsonValue::Kind::Object};
    for (const auto& [key, value] : value_.members) {
        if (std::find(asked_.begin(), asked_.end(), key) == asked_.end()) {
            issues_.note(IssueCode::UnknownKey, placeOf(key),
                         statement(phrase::kUnknownKey, {{"key", key}}));
            left.members.emplace_back(key, value);
        }
    }
    return left.members.empty() ? std::string() : jsonText(left);
}

} // namespace gusset
