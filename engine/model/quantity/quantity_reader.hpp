#pragma once
// Expressions with units, for the fields of quantity_input.

#include "core/outcome.hpp"

#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace gusset {

// Converts a number from a typed unit to the field's unit; nothing when the unit is not allowed
// here.
using UnitReader = std::function<std::optional<double>(double, std::string_view unit)>;

struct QuantityField {
    UnitReader convert;
    Statement remedy{}; // for messages: which units may be typed
    bool isLength = false;
};

[[nodiscard]] std::string lowered(std::string_view word); // ASCII letters

[[nodiscard]] Outcome<double> readQuantity(std::string_view text, const QuantityField&);

} // namespace gusset
