#pragma once
// Whether a type is one of a variant's alternatives.

#include <type_traits>
#include <variant>

namespace gusset {

template <class Kind, class Kinds>
inline constexpr bool isOneOf = false;
template <class Kind, class... Kinds>
inline constexpr bool isOneOf<Kind, std::variant<Kinds...>> = (std::is_same_v<Kind, Kinds> || ...);

} // namespace gusset
