#pragma once
// Typed positions in the vectors of a Truss. An id is valid for one revision of the model: an edit
// that removes things renumbers those after them. Never a raw int, never a pointer.

#include <compare>
#include <cstddef>
#include <variant>

namespace gusset {

template <class Tag>
struct Id {
    int index = -1; // -1: none

    [[nodiscard]] constexpr bool valid() const { return index >= 0; }
    [[nodiscard]] constexpr std::size_t at() const { return static_cast<std::size_t>(index); }
    friend constexpr auto operator<=>(const Id&, const Id&) = default;
};

using JointId = Id<struct JointTag>;
using MemberId = Id<struct MemberTag>;
using SupportId = Id<struct SupportTag>;
using LoadId = Id<struct LoadTag>;
// In Structure::restraints (statics/equilibrium/structure): a pin has two, a roller one.
using RestraintId = Id<struct RestraintTag>;

// What holds a joint, and whose force is asked for: a member, or a support in one direction.
using MemberOrRestraint = std::variant<MemberId, RestraintId>;

} // namespace gusset
