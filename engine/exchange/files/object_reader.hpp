#pragma once
// Reads the keys of one JSON object, each once and with its type checked; keys left over at the end
// are unknown to this version and kept. The only way from JSON values to the model.

#include "exchange/json/json_value.hpp"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// What the reader finds wrong (errors) or worth knowing (notes), up to the number reported at once.
// Invisible characters in text quoted from the file are spelled out.
class IssueList {
public:
    void error(IssueCode, Statement at, Statement says);
    void note(IssueCode, Statement at, Statement says);

    [[nodiscard]] bool isFull() const;
    [[nodiscard]] const Issues& errors() const { return errors_; }
    [[nodiscard]] const Issues& notes() const { return notes_; }

private:
    Issues errors_;
    Issues notes_;
};

// The words that a key may take, in the order of the enum's values; unused places at the end are
// empty.
using WordList = std::array<std::string_view, 5>;

template <class Value>
std::string_view wordOf(const WordList& words, Value value) {
    return words[static_cast<std::size_t>(value)];
}

class ObjectReader {
public:
    // A value that is not an object is reported as an error at its place, and read as an empty
    // object.
    ObjectReader(const JsonValue&, std::string place, IssueList&);

    [[nodiscard]] bool has(std::string_view key) const { return value_.find(key) != nullptr; }
    [[nodiscard]] const std::string& place() const { return place_; }
    [[nodiscard]] std::string placeOf(std::string_view key) const;

    // Leave `into` unchanged if the key is absent or of another type. A wrong type is an error, as
    // is a missing key that is needed.
    void read(std::string_view key, bool isNeeded, double& into);
    void read(std::string_view key, bool isNeeded, std::optional<double>& into);
    void read(std::string_view key, bool isNeeded, std::string& into);
    // The index of the key's word; if it is none of them, an error that lists them, and `fallback`.
    [[nodiscard]] std::size_t word(std::string_view key, const WordList&, std::size_t fallback);
    [[nodiscard]] const JsonValue* object(std::string_view key); // null if absent
    [[nodiscard]] const std::vector<JsonValue>& list(std::string_view key, bool isNeeded = false);
    [[nodiscard]] const JsonValue* any(std::string_view key); // marks it as read

    // The keys that have not been read, as JSON text, with a note for each; "" if there are none.
    [[nodiscard]] std::string rest();
    // Reads the object under a key, if there is one, and returns its rest().
    template <class Read>
    [[nodiscard]] std::string inner(std::string_view key, const Read& read) {
        const JsonValue* value = object(key);
        if (!value) {
            return "";
        }
        ObjectReader reader(*value, placeOf(key), issues_);
        read(reader);
        return reader.rest();
    }

    [[nodiscard]] IssueList& issues() { return issues_; }

private:
    const JsonValue* take(std::string_view key, JsonValue::Kind, bool isNeeded = false);

    const JsonValue& value_;
    std::string place_;
    IssueList& issues_;
    std::vector<std::string_view> asked_;
};

} // namespace gusset
