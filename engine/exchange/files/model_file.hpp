#pragma once
// The model file (see site/help and the JSON Schema): reading and writing.

#include "exchange/json/json_text.hpp"
#include "model/truss/truss.hpp"

#include <string>
#include <string_view>

namespace gusset {

struct Reading {
    Truss truss;
    Issues notes; // unknown keys, which are kept, and cleaned names
};

inline constexpr std::size_t kLargestFile = 8u << 20; // bytes

// Checks syntax, types, references and everything that validate() reports as an error. At most 20
// issues, each with its place.
[[nodiscard]] Outcome<Reading> readModel(std::string_view json);

[[nodiscard]] std::string writeModel(const Truss&, Layout = Layout::Indented);

} // namespace gusset
