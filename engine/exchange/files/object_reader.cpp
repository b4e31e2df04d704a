#include "exchange/files/object_reader.hpp"

#include "model/validate/characters.hpp"
#include "model/validate/validate.hpp"

#include <algorithm>

namespace gusset {

void IssueList::error(IssueCode code, std::string_view at, std::string_view says) {
    if (!isFull()) {
        errors_.push_back({code, spelled(at), spelled(says)});
    }
}

void IssueList::note(IssueCode code, std::string_view at, std::string_view says) {
    if (notes_.size() < kMostIssues) {
        notes_.push_back({code, spelled(at), spelled(says)});
    }
}

bool IssueList::isFull() const { return errors_.size() >= kMostIssues; }

namespace {

const char* nameOf(JsonValue::Kind kind) {
    switch (kind) {
    case JsonValue::Kind::Null:
        return "null";
    case JsonValue::Kind::Boolean:
        return "true or false";
    case JsonValue::Kind::Number:
        return "a number";
    case JsonValue::Kind::Text:
        return "text in quotes";
    case JsonValue::Kind::Array:
        return "a list in [ ]";
    case JsonValue::Kind::Object:
        return "an object in { }";
    }
    return "";
}

std::string wrongType(JsonValue::Kind wanted, JsonValue::Kind given) {
    return std::string("must be ") + nameOf(wanted) + ", not " + nameOf(given);
}

const std::vector<JsonValue> kNoItems;

} // namespace

ObjectReader::ObjectReader(const JsonValue& value, std::string place, IssueList& issues)
    : value_(value), place_(std::move(place)), issues_(issues) {
    if (value.kind != JsonValue::Kind::Object) {
        issues.error(IssueCode::WrongType, place_.empty() ? "the model" : place_,
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
                      std::string("is missing: it must be ") + nameOf(kind));
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
                  "\"" + given->text + "\" has no meaning here: there are " + known);
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
                         "the key \"" + key + "\" is unknown here; it is kept");
            left.members.emplace_back(key, value);
        }
    }
    return left.members.empty() ? std::string() : jsonText(left);
}

} // namespace gusset
