#pragma once
// "units", "class" and "checks" of the model file.

#include "exchange/object_reader.hpp"
#include "model/truss/check_settings.hpp"
#include "model/truss/class_settings.hpp"
#include "model/truss/units.hpp"

namespace gusset {

[[nodiscard]] Units readUnits(ObjectReader& model);
[[nodiscard]] ClassSettings readClassSettings(ObjectReader& model);
[[nodiscard]] CheckSettings readCheckSettings(ObjectReader& model);

} // namespace gusset
