#include "exchange/json/language_file.hpp"

#include "exchange/json/json_value.hpp"
#include "phrases/faults/reading.hpp"

#include <memory>
#include <set>
#include <string>
#include <unordered_map>

namespace gusset {

namespace {

using Table = std::unordered_map<std::string, std::string>;

std::set<std::string_view> partsOf(std::string_view sentence) {
    std::set<std::string_view> parts;
    forEachPiece(
        sentence, [](std::string_view) {}, [&](std::string_view part) { parts.insert(part); });
    return parts;
}

bool isClosed(std::string_view sentence) {
    bool inside = false;
    for (const char c : sentence) {
        if (c == '{' || c == '}') {
            if (inside == (c == '{')) {
                return false;
            }
            inside = !inside;
        }
    }
    return !inside;
}

bool fits(std::string_view translation, std::string_view english) {
    if (!isClosed(translation) || !isClosed(english)) {
        return false;
    }
    const auto known = partsOf(english);
    for (const std::string_view part : partsOf(translation)) {
        if (!known.contains(part)) {
            return false;
        }
    }
    return true;
}

} // namespace

Outcome<PhraseBook> readLanguage(std::string_view json) {
    Outcome<JsonValue> whole = parseJson(json);
    if (!whole) {
        return whole.issues();
    }
    auto table = std::make_shared<Table>();
    for (auto& [english, translation] : std::move(whole).value().members) {
        if (translation.kind != JsonValue::Kind::Text || !fits(translation.text, english)) {
            return Issue{IssueCode::WrongType, english, phrase::kOtherParts};
        }
        if (!translation.text.empty()) {
            table->emplace(english, translation.text);
        }
    }
    return PhraseBook{[table](const char* english) {
        const auto found = table->find(english);
        return found == table->end() ? english : found->second.c_str();
    }};
}

} // namespace gusset
