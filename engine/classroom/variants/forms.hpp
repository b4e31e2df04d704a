#pragma once
// A truss to begin with where there is none: a simple form with the wished number of joints and of
// zero members.

#include "core/outcome.hpp"
#include "model/truss/truss.hpp"

#include <cstdint>
#include <optional>

namespace gusset {

enum class Held {
    AtEnds, // a pin and a roller under the ends: triangles, with posts that carry nothing where
            // such are wished, or posts and diagonals
    AtWall, // a bracket: a pin and a roller on its upright end; an even number of joints
};
struct FormWishes {
    int joints = 7;
    std::optional<int> zeros; // members that carry nothing; none: any number
    Held held = Held::AtEnds;
};
inline constexpr int kFewestJoints = 4;
inline constexpr int kMostJoints = 40;

// In m and kN, with friendly slopes, and one to three loads downward. An issue, instead, names the
// wish to blame and the nearest that can be met.
[[nodiscard]] Outcome<Truss> makeForm(const FormWishes&, std::uint64_t seed);

} // namespace gusset
