#pragma once
// Parts of validate(), and how places in a model are written.

#include "core/outcome.hpp"
#include "model/truss.hpp"

#include <string>

namespace gusset {

// "members[3]"
[[nodiscard]] inline std::string placeOf(const std::string& list, std::size_t index) {
    return list + "[" + std::to_string(index) + "]";
}

// The errors of validate() alone.
[[nodiscard]] Issues errorsOf(const Truss&);

// Allowed, and perhaps not meant: joints on one spot or without a member, members that cross or run
// through a joint. Precondition: the model has no errors.
[[nodiscard]] Issues suspicious(const Truss&);

} // namespace gusset
