#pragma once
// From a JSON value in the form of the model file to the model.

#include "exchange/json.hpp"
#include "exchange/json_value.hpp"

namespace gusset {

[[nodiscard]] Outcome<Reading> readModelValue(const JsonValue&);

} // namespace gusset
