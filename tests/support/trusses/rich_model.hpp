#pragma once
// Models that use everything the file format has.

#include "model/truss/truss.hpp"

#include <cstdint>
#include <string>

namespace gusset::support {

// A model file that has every key of the format at least once, and unknown keys in every place.
[[nodiscard]] std::string everyKeyOfTheFormat();

// A random truss with random labels, sections, cases, settlements and unknown keys. Valid.
[[nodiscard]] Truss randomRichTruss(std::uint64_t seed);

} // namespace gusset::support
