#pragma once
// Parts of a truss whose equilibrium a student can have written, and what they give. Shared by
// marking and practice.

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
    JointId joint{};     // of the part, where it acts
};
struct PartOfTruss {
    std::vector<JointId> joints;
    std::vector<ActingForce> forces;
};
[[nodiscard]] PartOfTruss partOf(const Structure&, const std::vector<Vec2>& loads,
                                 const std::vector<JointId>& joints);

[[nodiscard]] std::vector<JointId> allJoints(const Structure&);
[[nodiscard]] MemberOrRestraint unknownNumbered(const Structure&, int number);

// An equation: a sum of forces along `along`, or of moments about `centre`.
struct Sum {
    Vec2 along{};
    bool takesMoments = false;
    Vec2 centre{}; // m
};
// Shares of unit forces below this are only rounding error.
inline constexpr double kNoShare = 1e-9;
[[nodiscard]] double shareIn(const Sum&, const ActingForce&);
// By another direction or arm.
[[nodiscard]] double shareIn(const Sum&, Vec2 along, Vec2 at);

// An equation of a part that holds no unknown but this one; none if there is none.
[[nodiscard]] std::optional<Sum> sumFor(const PartOfTruss&, const std::vector<bool>& known,
                                        int unknown, double extent);
// Equations that one would write for this unknown, and that hold no other: the plain ones, the one
// that it has most part in first; or else along the line across another, or moments about where
// others meet.
[[nodiscard]] std::vector<Sum> sumsFor(const Structure&, const PartOfTruss&,
                                       const std::vector<bool>& known, int unknown);
// The equations that one would write without thinking: ΣF_x and ΣF_y, and moments about each
// support of a part that is more than a joint.
[[nodiscard]] std::vector<Sum> plainSums(const Structure&, const PartOfTruss&);
// Of these, those that hold this unknown and no other.
[[nodiscard]] std::vector<Sum> plainSumsFor(const Structure&, const PartOfTruss&,
                                            const std::vector<bool>& known, int unknown);

} // namespace gusset
