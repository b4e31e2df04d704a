#pragma once
// Requests to the programs of the classroom's pages.

#include "exchange/json/json_value.hpp"
#include "support/files.hpp"

#include <string>
#include <utility>

namespace gusset::support {

inline JsonValue textValue(std::string text) {
    JsonValue value{JsonValue::Kind::Text, {}, {}, {}, {}, {}};
    value.text = std::move(text);
    return value;
}

// The footbridge of the examples, asking for this.
inline std::string bridgeAsking(const std::string& exercise) {
    std::string text = repositoryFile("site/examples/footbridge.json");
    text.insert(text.find_last_of('}'), ",\"exercise\":" + exercise);
    return text;
}

} // namespace gusset::support
