#pragma once
// Reads the model from a JSON value in the form of the model file.

#include "exchange/files/model_file.hpp"
#include "exchange/json/json_value.hpp"

namespace gusset {

[[nodiscard]] Outcome<Reading> readModelValue(const JsonValue&);

} // namespace gusset
