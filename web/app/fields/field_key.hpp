#pragma once
// A field as the page's scripts name it: "joint.3.x". The scripts keep the text and return it; only
// these two functions know what it means.

#include "app/state/field_id.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace gusset {

[[nodiscard]] std::string keyOf(const FieldId&);
// None: no field has this key. Whether its row or its case exists is for the model to say.
[[nodiscard]] std::optional<FieldId> fieldOf(std::string_view key);

} // namespace gusset
