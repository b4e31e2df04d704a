#pragma once
// Which types a variant holds, asked of the type itself.

#include <type_traits>
#include <variant>

namespace gusset {

template <class Kind, class Kinds>
inline constexpr bool isOneOf = false;
template <class Kind, class... Kinds>
inline constexpr bool isOneOf<Kind, std::variant<Kinds...>> = (std::is_same_v<Kind, Kinds> || ...);

} // namespace gusset
