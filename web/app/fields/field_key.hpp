#pragma once
// A field as the page's scripts name it: "joint.3.x". They keep the text and hand it back; only
// these two know what it means.

#include "app/state/field_id.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace gusset {

[[nodiscard]] std::string keyOf(const FieldId&);
// None: no field has this key. Whether its row or its case is there, the model knows.
[[nodiscard]] std::optional<FieldId> fieldOf(std::string_view key);

} // namespace gusset
