#pragma once
// Parts of a truss whose equilibrium a student can have written, and what they give. Private to
// classroom/marking.

#include "statics/equilibrium/structure.hpp"

#include <array>
#include <optional>
#include <vector>

namespace gusset {

// Reactions are numbered first, then members.
inline constexpr int kGivenLoad = -1;
struct ActingForce {
    int of = kGivenLoad; // number of an unknown
    Vec2 along;          // unit vector on the body for a value of +1; of a load, the force itself
    Vec2 at;             // m
};
struct PartOfTruss {
    std::vector<JointId> joints;
    std::vector<ActingForce> forces;
};
[[nodiscard]] PartOfTruss partOf(const Structure&, const std::vector<Vec2>& loads,
                                 const std::vector<JointId>& joints);

// An equation: a sum of forces along `along`, plus moments about `centre`, if it takes any.
struct Sum {
    Vec2 along{};
    bool takesMoments = false; // about `centre`, and then no sum of forces
    Vec2 centre{};             // m
};
[[nodiscard]] double shareIn(const Sum&, const ActingForce&);
// By another direction or arm.
[[nodiscard]] double shareIn(const Sum&, Vec2 along, Vec2 at);

// The equation of a part that holds no unknown but this one; none if there is none.
[[nodiscard]] std::optional<Sum> sumFor(const PartOfTruss&, const std::vector<bool>& known,
                                        int unknown, double extent);

} // namespace gusset
