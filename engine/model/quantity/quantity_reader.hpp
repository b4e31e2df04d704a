#pragma once
// Expressions with units, for the fields of quantity_input.

#include "core/outcome.hpp"

#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace gusset {

// Turns a number in a unit that was typed into the field's unit; nothing when it is no unit here.
using UnitReader = std::function<std::optional<double>(double, std::string_view unit)>;

struct QuantityField {
    UnitReader convert;
    std::string unitsSay; // for messages: what may be typed
    bool isLength = false;
};

[[nodiscard]] std::string lowered(std::string_view word); // ASCII letters

[[nodiscard]] Outcome<double> readQuantity(std::string_view text, const QuantityField&);

} // namespace gusset
