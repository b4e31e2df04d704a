#pragma once
// JSON read into plain data, within bounds: it may be a stranger's. Keys keep their order and
// numbers their digits, so that what this version does not know is written back as it came.

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
    std::string text{}; // of a Text; of a Number its digits as they came
    std::vector<JsonValue> items{};
    std::vector<std::pair<std::string, JsonValue>> members{}; // each key once

    [[nodiscard]] const JsonValue* find(std::string_view key) const; // null: not there
    [[nodiscard]] bool isWhole() const;                              // a whole number within ±2^53
};

[[nodiscard]] JsonValue numberValue(double); // with as few digits as bring it back

struct JsonBounds {
    int depth = 24;
    std::size_t values = 1'000'000;
};

// RFC 8259. Fails with the place in the structure and in the text: a syntax fault, a key twice, a
// number out of range, more than the bounds allow.
[[nodiscard]] Outcome<JsonValue> parseJson(std::string_view text, const JsonBounds& = {});

// On one line, without spaces.
[[nodiscard]] std::string jsonText(const JsonValue&);

} // namespace gusset
