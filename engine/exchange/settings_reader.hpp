#pragma once
// "units" and "class" of the model file.

#include "exchange/object_reader.hpp"
#include "model/class_settings.hpp"
#include "model/units.hpp"

namespace gusset {

[[nodiscard]] Units readUnits(ObjectReader& model);
[[nodiscard]] ClassSettings readClassSettings(ObjectReader& model);

} // namespace gusset
