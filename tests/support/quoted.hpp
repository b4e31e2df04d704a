#pragma once
// A text as JSON, with its quotes.

#include "exchange/json/json_value.hpp"

#include <string>

namespace gusset::support {

[[nodiscard]] inline std::string quoted(const std::string& text) {
    JsonValue value;
    value.kind = JsonValue::Kind::Text;
    value.text = text;
    return jsonText(value);
}

} // namespace gusset::support
