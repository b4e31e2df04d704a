#pragma once
// One thing of the drawing, of any kind.

#include "core/ids.hpp"
#include "model/edit/edit.hpp"
#include "model/truss/truss.hpp"

#include <cstddef>
#include <optional>
#include <variant>

namespace gusset {

using ThingId = std::variant<JointId, MemberId, SupportId, LoadId>;
using Hit = std::optional<ThingId>; // what lies under the pointer; none: empty paper

// The id, if the thing is of that kind; else a null id.
template <class Id>
[[nodiscard]] Id hitOf(const Hit& hit) {
    const auto* id = hit ? std::get_if<Id>(&*hit) : nullptr;
    return id ? *id : Id{};
}

[[nodiscard]] int rowOf(const ThingId&); // in its table
[[nodiscard]] bool isThere(const Truss&, const ThingId&);

// Where it is, in length units; for what extends along members, its middle. Precondition: isThere.
[[nodiscard]] Vec2 middleOf(const Truss&, const ThingId&);

[[nodiscard]] Things thingsOf(const Hit&);
[[nodiscard]] std::size_t countOf(const Things&);
[[nodiscard]] bool holds(const Things&, const ThingId&);
[[nodiscard]] Hit onlyOne(const Things&); // none if there are several, or none

} // namespace gusset
