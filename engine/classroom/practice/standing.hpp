#pragma once
// Where a student stands: what can be found from a joint, or from the whole truss, with the forces
// found so far.

#include "classroom/exercise/answers.hpp"

#include <vector>

namespace gusset {

// Which forces a student has a value for, whether right or not.
struct HasFound {
    std::vector<bool> reactions; // of each restraint
    std::vector<bool> forces;    // of each member
};
[[nodiscard]] HasFound foundIn(const Answers&);

// What is unknown on a free body, and how much of it the body's equations give.
struct Standing {
    std::vector<MemberOrRestraint> unknowns; // reactions, then members
    std::vector<MemberOrRestraint> given;    // of these, what its equations determine
};
// Precondition for all: the structure is structureOf(the truss).
[[nodiscard]] Standing standingAt(const Structure&, const HasFound&, JointId);
[[nodiscard]] Standing standingOfWhole(const Structure&, const HasFound&);
[[nodiscard]] Standing standingOfPart(const Structure&, const HasFound&,
                                      const std::vector<JointId>& joints);
// What is known, by the number of the unknown.
[[nodiscard]] std::vector<bool> knownIn(const HasFound&);

// The joints that give something, those that give all their unknowns first.
[[nodiscard]] std::vector<JointId> usefulJoints(const Structure&, const HasFound&);

} // namespace gusset
