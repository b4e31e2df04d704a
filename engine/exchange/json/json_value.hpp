#pragma once
// JSON read into plain data, within bounds, as it may come from a stranger. Keys keep their order
// and numbers their digits, so that what this version does not know is written back unchanged.

#include "core/outcome.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace gusset {

struct JsonValue {
    enum class Kind { Null, Boolean, Number, Text, Array, Object };
    Kind kind = Kind::Null;
    bool boolean = false;
    double number = 0;
    std::string text{}; // of a Text; of a Number, its digits as read
    std::vector<JsonValue> items{};
    std::vector<std::pair<std::string, JsonValue>> members{}; // keys are unique

    [[nodiscard]] const JsonValue* find(std::string_view key) const; // null if absent
    [[nodiscard]] bool isWhole() const;                              // a whole number within ±2^53
};

// The text under a key of an object; empty if there is none.
[[nodiscard]] std::string textUnder(const JsonValue& object, std::string_view key);
// The number under a key; `otherwise` if there is none.
[[nodiscard]] double numberUnder(const JsonValue& object, std::string_view key,
                                 double otherwise = 0);
[[nodiscard]] bool isYes(const JsonValue& object, std::string_view key); // true stands there

[[nodiscard]] JsonValue numberValue(double); // with the fewest digits that read back the same

struct JsonBounds {
    int depth = 24;
    std::size_t values = 1'000'000;
};

// RFC 8259. Fails on a syntax error, a duplicate key, a number out of range or input beyond the
// bounds, and reports the place in the structure and in the text.
[[nodiscard]] Outcome<JsonValue> parseJson(std::string_view text, const JsonBounds& = {});

// On one line, without spaces.
[[nodiscard]] std::string jsonText(const JsonValue&);

} // namespace gusset
