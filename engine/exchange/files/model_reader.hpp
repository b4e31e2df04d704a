#pragma once
// From a JSON value in the form of the model file to the model.

#include "exchange/files/model_file.hpp"
#include "exchange/json/json_value.hpp"

namespace gusset {

[[nodiscard]] Outcome<Reading> readModelValue(const JsonValue&);

} // namespace gusset
